-- Every fact as steps, with what puts them in order: day, phase of the day, then content (a best before or a time,
-- quantity, money), kind and key; `sub` counts the steps of one fact.
CREATE TEMP TABLE fact_step (
  day INTEGER NOT NULL, phase INTEGER NOT NULL, first INTEGER NOT NULL DEFAULT 9000000000000000000,
  second INTEGER NOT NULL DEFAULT 0, third INTEGER NOT NULL DEFAULT 0, kind INTEGER NOT NULL DEFAULT 0,
  fact INTEGER NOT NULL, sub INTEGER NOT NULL,
  what TEXT NOT NULL, pot TEXT, to_pot TEXT, lot INTEGER, material INTEGER, quantity INTEGER, taken INTEGER, of INTEGER,
  sale INTEGER, apart INTEGER, ready INTEGER, best_before INTEGER, top INTEGER, bottom INTEGER, materials INTEGER,
  labour INTEGER, energy INTEGER, overhead INTEGER, minutes INTEGER
);

-- Already here: phase 1. Deliveries 2, later words on them 3.
INSERT INTO fact_step (day, phase, first, second, third, fact, sub, what, lot, material, quantity, ready, best_before)
  SELECT x.date, 1, COALESCE(x.best_before, 9000000000000000000), x.amount, COALESCE(x.cost, 0), x.key, 1, 'receive',
    x.lot, h.material, h.quantity, x.date, x.best_before
  FROM already_here AS x JOIN held AS h ON h.kind = 'already_here' AND h.key = x.key;
INSERT INTO fact_step (day, phase, first, second, third, fact, sub, what, pot, lot, materials, labour, minutes)
  SELECT x.date, 1, COALESCE(x.best_before, 9000000000000000000), x.amount, COALESCE(x.cost, 0), x.key, s.n, s.what,
    'lot ' || x.lot, x.lot, COALESCE(x.cost, 0), COALESCE(t.labour, 0), t.minutes
  FROM already_here AS x LEFT JOIN hours AS t ON t.kind = 'already_here' AND t.key = x.key,
    (SELECT 2 AS n, 'enter' AS what UNION ALL SELECT 3, 'latest') AS s;

CREATE TEMP VIEW delivered AS
  SELECT x.*, d.date, MIN(COALESCE(x.best_before, 9000000000000000000)) OVER (PARTITION BY x.head) AS first,
    SUM(x.amount) OVER (PARTITION BY x.head) AS second, d.carriage + SUM(x.price) OVER (PARTITION BY x.head) AS third
  FROM delivery_line AS x JOIN delivery AS d ON d.key = x.head;
INSERT INTO fact_step (day, phase, first, second, third, fact, sub, what, lot, material, quantity, ready, best_before)
  SELECT x.date, 2, x.first, x.second, x.third, x.head, 3 * x.position, 'receive', x.lot, h.material, h.quantity, x.date,
    COALESCE(x.best_before, x.date + m.shelf_life_days)
  FROM delivered AS x JOIN held AS h ON h.kind = 'delivery_line' AND h.key = x.key JOIN material AS m ON m.key = h.material;
INSERT INTO fact_step (day, phase, first, second, third, fact, sub, what, pot, lot, materials)
  SELECT x.date, 2, x.first, x.second, x.third, x.head, 3 * x.position + s.n, s.what, 'lot ' || x.lot, x.lot, p.cost
  FROM delivered AS x JOIN landed AS p ON p.line = x.key,
    (SELECT 1 AS n, 'enter' AS what UNION ALL SELECT 2, 'latest') AS s;
INSERT INTO fact_step (day, phase, third, fact, sub, what, lot, materials)
  SELECT c.date, 3, c.amount, c.key, p.n, 'correct', p.lot, p.part
  FROM cost_correction AS c JOIN corrected AS p ON p.correction = c.key;

-- Sown 4, tended 5, harvested 6, lost of a bed 7, ended 19.
CREATE TEMP VIEW ended AS SELECT planting, MIN(date) AS date FROM planting_end GROUP BY planting;
INSERT INTO fact_step (day, phase, second, fact, sub, what, to_pot, lot, material, quantity)
  SELECT p.sown, 4, SUM(u.amount) OVER (PARTITION BY u.head), u.head, u.position, 'take', 'bed ' || u.head, u.lot,
    h.material, h.quantity
  FROM planting_use AS u JOIN planting AS p ON p.key = u.head JOIN held AS h ON h.kind = 'planting_use' AND h.key = u.key;
INSERT INTO fact_step (day, phase, second, third, kind, fact, sub, what, pot, materials, labour, minutes)
  SELECT b.date, 4, COALESCE(b.time, 0), COALESCE(b.cost, 0), 1, b.key, 1, 'enter', 'bed ' || b.planting, b.cost,
    t.labour, t.minutes
  FROM standing_bed AS b LEFT JOIN hours AS t ON t.kind = 'standing_bed' AND t.key = b.key;
CREATE TEMP VIEW tended AS
  SELECT t.*, CASE WHEN e.date < t.date THEN 'period' ELSE 'bed ' || t.planting END AS pot,
    COALESCE((SELECT SUM(amount) FROM tending_use WHERE head = t.key), 0) AS fed
  FROM tending AS t LEFT JOIN ended AS e ON e.planting = t.planting;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, to_pot, lot, material, quantity)
  SELECT t.date, 5, t.fed, COALESCE(t.time, 0), t.key, u.position, 'take', t.pot, u.lot, h.material, h.quantity
  FROM tending_use AS u JOIN tended AS t ON t.key = u.head JOIN held AS h ON h.kind = 'tending_use' AND h.key = u.key;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, pot, materials, labour, minutes)
  SELECT t.date, 5, t.fed, COALESCE(t.time, 0), t.key, 900, 'enter', t.pot, h.materials, h.labour, h.minutes
  FROM tended AS t JOIN hours AS h ON h.kind = 'tending' AND h.key = t.key;

-- Square centimetres in hand on a day, before anything lost on it.
CREATE TEMP VIEW bed_area AS
  SELECT p.key AS planting, COALESCE(p.area, b.area) AS area FROM planting AS p JOIN bed AS b ON b.key = p.bed;
CREATE TEMP VIEW cuts AS
  SELECT x.*, COALESCE(SUM(x.amount) OVER (PARTITION BY x.planting ORDER BY x.date, x.amount, COALESCE(x.time, 0), x.key
      ROWS BETWEEN UNBOUNDED PRECEDING AND 1 PRECEDING), 0) AS cut_before,
    COALESCE((SELECT e.amount FROM expected_total AS e WHERE e.planting = x.planting AND e.date <= x.date
        ORDER BY e.date DESC, e.key DESC LIMIT 1), p.expected,
      pl.usual * (a.area - COALESCE((SELECT SUM(l.area) FROM bed_lost AS l WHERE l.planting = x.planting
        AND l.date < x.date), 0)) / 10000 * MAX(pl.crops, 1)) AS expected
  FROM harvest AS x JOIN planting AS p ON p.key = x.planting JOIN plant AS pl ON pl.key = p.plant
    JOIN bed_area AS a ON a.planting = x.planting;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, pot, to_pot, lot, material, quantity, ready, taken, of)
  SELECT x.date, 6, x.amount, COALESCE(x.time, 0), x.key, s.n, s.what, 'bed ' || x.planting, 'lot ' || x.lot, x.lot,
    h.material, h.quantity, x.date, x.amount, MAX(x.amount, x.expected - x.cut_before)
  FROM cuts AS x JOIN held AS h ON h.kind = 'harvest' AND h.key = x.key,
    (SELECT 1 AS n, 'receive' AS what UNION ALL SELECT 2, 'flow' UNION ALL SELECT 4, 'latest') AS s;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, pot, materials, labour, minutes)
  SELECT x.date, 6, x.amount, COALESCE(x.time, 0), x.key, 3, 'enter', 'lot ' || x.lot, h.materials, h.labour, h.minutes
  FROM harvest AS x JOIN hours AS h ON h.kind = 'harvest' AND h.key = x.key;
-- What so much seed would cost to buy, by the newest offer.
INSERT INTO fact_step (day, phase, second, third, kind, fact, sub, what, pot, to_pot, lot, material, quantity, ready, taken)
  SELECT x.date, 6, x.amount, COALESCE(x.time, 0), 1, x.key, s.n, s.what, 'bed ' || x.planting, 'lot ' || x.lot, x.lot,
    h.material, h.quantity, x.date, (
      SELECT o.price * h.quantity / oh.quantity FROM offer AS o JOIN held AS oh ON oh.kind = 'offer' AND oh.key = o.key
      WHERE o.material = h.material AND o.noted <= x.date AND o."from" <= x.date ORDER BY o."from" DESC, o.key DESC LIMIT 1)
  FROM seed_kept AS x JOIN held AS h ON h.kind = 'seed_kept' AND h.key = x.key,
    (SELECT 1 AS n, 'receive' AS what UNION ALL SELECT 2, 'credit' UNION ALL SELECT 4, 'latest') AS s;
INSERT INTO fact_step (day, phase, second, third, kind, fact, sub, what, pot, materials, labour, minutes)
  SELECT x.date, 6, x.amount, COALESCE(x.time, 0), 1, x.key, 3, 'enter', 'lot ' || x.lot, h.materials, h.labour, h.minutes
  FROM seed_kept AS x JOIN hours AS h ON h.kind = 'seed_kept' AND h.key = x.key;
INSERT INTO fact_step (day, phase, second, fact, sub, what, pot, to_pot, taken, of)
  SELECT l.date, 7, l.area, l.key, 1, 'flow', 'bed ' || l.planting, 'lost', MIN(l.area, l.in_hand), l.in_hand
  FROM (SELECT b.*, a.area - COALESCE(SUM(b.area) OVER (PARTITION BY b.planting ORDER BY b.date, b.area, b.key
      ROWS BETWEEN UNBOUNDED PRECEDING AND 1 PRECEDING), 0) AS in_hand
    FROM bed_lost AS b JOIN bed_area AS a ON a.planting = b.planting) AS l;
INSERT INTO fact_step (day, phase, fact, sub, what, pot, to_pot, taken, of)
  SELECT e.date, 19, e.planting, 1, 'flow', 'bed ' || e.planting, CASE WHEN EXISTS (
      SELECT 1 FROM harvest AS h WHERE h.planting = e.planting AND h.date <= e.date) THEN 'period' ELSE 'lost' END, 1, 1
  FROM ended AS e;
