-- What the facts come to before anything moves: quantities as they are held, money for hours, the price of goods.

-- In base units as the material is held, by its density where it was stated the other way; a spoon by its own.
CREATE TEMP TABLE held (kind TEXT NOT NULL, key INTEGER NOT NULL, material INTEGER NOT NULL, quantity INTEGER NOT NULL,
                        PRIMARY KEY (kind, key)) WITHOUT ROWID;
INSERT INTO held
  SELECT a.kind, a.key, m.key,
    CASE WHEN m.held_as = 'mass' AND a.unit IN ('tsp', 'tbsp', 'us tsp', 'us tbsp', 'us cup')
              AND m.spoon_density_top IS NOT NULL
         THEN (2 * a.amount * m.spoon_density_top + m.spoon_density_bottom) / (2 * m.spoon_density_bottom)
         WHEN m.held_as = 'mass' AND a.unit NOT IN ('mg', 'g', 'kg', 'oz', 'lb')
         THEN (2 * a.amount * m.density_top + m.density_bottom) / (2 * m.density_bottom)
         WHEN m.held_as = 'volume' AND a.unit IN ('mg', 'g', 'kg', 'oz', 'lb')
         THEN (2 * a.amount * m.density_bottom + m.density_top) / (2 * m.density_top)
         ELSE a.amount END
  FROM (SELECT 'already_here' AS kind, x.key, l.material, x.amount, x.amount_unit AS unit
          FROM already_here AS x JOIN lot AS l ON l.key = x.lot
        UNION ALL SELECT 'delivery_line', x.key, l.material, x.amount, x.amount_unit
          FROM delivery_line AS x JOIN lot AS l ON l.key = x.lot
        UNION ALL SELECT 'harvest', x.key, l.material, x.amount, x.amount_unit FROM harvest AS x JOIN lot AS l ON l.key = x.lot
        UNION ALL SELECT 'seed_kept', x.key, l.material, x.amount, x.amount_unit
          FROM seed_kept AS x JOIN lot AS l ON l.key = x.lot
        UNION ALL SELECT 'drying', x.key, l.material, x.amount, x.amount_unit FROM drying AS x JOIN lot AS l ON l.key = x.lot
        UNION ALL SELECT 'drying lost', x.key, l.material, x.lost, x.lost_unit FROM drying AS x JOIN lot AS l ON l.key = x.lot
          WHERE x.lost IS NOT NULL
        UNION ALL SELECT 'planting_use', key, material, amount, amount_unit FROM planting_use
        UNION ALL SELECT 'tending_use', key, material, amount, amount_unit FROM tending_use
        UNION ALL SELECT 'vat_use', key, material, amount, amount_unit FROM vat_use
        UNION ALL SELECT 'batch_use', key, material, amount, amount_unit FROM batch_use
        UNION ALL SELECT 'sale_powder', key, pigment, amount, amount_unit FROM sale_powder
        UNION ALL SELECT 'wrapping_use', key, material, amount, amount_unit FROM wrapping_use
        UNION ALL SELECT 'loss', key, material, amount, amount_unit FROM loss
        UNION ALL SELECT 'count_line', key, material, counted, counted_unit FROM count_line WHERE counted IS NOT NULL
        UNION ALL SELECT 'offer', key, material, pack, pack_unit FROM offer) AS a
  JOIN material AS m ON m.key = a.material;

-- Everybody's time: `place` is the pot it goes to. Nobody named: the first of the shop's own people.
CREATE TEMP TABLE spent (kind TEXT NOT NULL, key INTEGER NOT NULL, day INTEGER NOT NULL, person INTEGER, time INTEGER);
INSERT INTO spent
  SELECT kind, key, day, COALESCE(who, (
      SELECT p.key FROM person AS p WHERE COALESCE((SELECT standing FROM pay WHERE person = p.key AND "from" <= day
        ORDER BY "from" DESC, key DESC LIMIT 1), 'own') = 'own' ORDER BY p.code LIMIT 1)), time
  FROM (SELECT 'already_here' AS kind, key, date AS day, who, time FROM already_here
        UNION ALL SELECT 'standing_bed', key, date, who, time FROM standing_bed
        UNION ALL SELECT 'tending', key, date, who, time FROM tending
        UNION ALL SELECT 'harvest', key, date, who, time FROM harvest
        UNION ALL SELECT 'seed_kept', key, date, who, time FROM seed_kept
        UNION ALL SELECT 'vat_step', s.key, v.date, s.who, s.hands_on FROM vat_step AS s JOIN vat AS v ON v.key = s.head
        UNION ALL SELECT 'drying', key, date, who, time FROM drying
        UNION ALL SELECT 'batch_time', t.key, b.date, t.who, t.time FROM batch_time AS t JOIN batch AS b ON b.key = t.head
        UNION ALL SELECT 'cut', key, date, who, time FROM cut
        UNION ALL SELECT 'wrapping', key, date, who, time FROM wrapping
        UNION ALL SELECT 'fair_time', t.key, f.date, t.who, t.time FROM fair_time AS t JOIN fair AS f ON f.key = t.head
        UNION ALL SELECT 'sale', key, date, who, time FROM sale
        UNION ALL SELECT 'sitting', key, date, who, time FROM sitting
        UNION ALL SELECT 'work', key, date, who, time FROM work)
  WHERE time > 0;
-- Of the shop's own people it is labour and minutes, of paid ones a wage among the materials.
CREATE TEMP TABLE hours (kind TEXT NOT NULL, key INTEGER NOT NULL, materials INTEGER, labour INTEGER, minutes INTEGER,
                         PRIMARY KEY (kind, key)) WITHOUT ROWID;
INSERT INTO hours
  SELECT s.kind, s.key, CASE WHEN p.standing = 'paid' THEN (2 * p.per_hour * s.time + 60000000) / 120000000 END,
    CASE WHEN p.standing = 'own' THEN (2 * p.per_hour * s.time + 60000000) / 120000000 END,
    CASE WHEN p.standing = 'own' THEN s.time END
  FROM spent AS s JOIN (SELECT key, standing, person, "from", per_hour, LEAD("from", 1, 9999999) OVER (
      PARTITION BY person ORDER BY "from", key) AS until FROM pay) AS p
    ON p.person = s.person AND s.day >= p."from" AND s.day < p.until;

-- Price and carriage of every delivered line. The weights left from each line on come from a window; what is left of
-- the carriage goes from line to line.
CREATE TEMP TABLE landed (line INTEGER PRIMARY KEY, cost INTEGER NOT NULL);
INSERT INTO landed
  WITH RECURSIVE weighed AS (
      SELECT x.key, x.head, x.position, x.price, d.carriage, d.share_by,
        CASE WHEN m.held_as = 'count' THEN 0 ELSE h.quantity END AS weight
      FROM delivery_line AS x JOIN delivery AS d ON d.key = x.head JOIN held AS h ON h.kind = 'delivery_line' AND h.key = x.key
      JOIN material AS m ON m.key = h.material),
    parts AS (SELECT *, ROW_NUMBER() OVER line AS n,
        CASE WHEN share_by = 'value' AND SUM(price) OVER bill > 0 THEN price
             WHEN SUM(weight) OVER bill > 0 THEN weight ELSE 1 END AS part
      FROM weighed WINDOW bill AS (PARTITION BY head), line AS (PARTITION BY head ORDER BY position)),
    shared AS (SELECT *, SUM(part) OVER (PARTITION BY head ORDER BY n
        ROWS BETWEEN CURRENT ROW AND UNBOUNDED FOLLOWING) AS parts_left FROM parts),
    given (head, n, line, price, carriage, rest) AS (
      SELECT head, n, key, price, share(carriage, part, parts_left), carriage - share(carriage, part, parts_left)
        FROM shared WHERE n = 1
      UNION ALL
      SELECT s.head, s.n, s.key, s.price, share(g.rest, s.part, s.parts_left),
        g.rest - share(g.rest, s.part, s.parts_left)
      FROM given AS g JOIN shared AS s ON s.head = g.head AND s.n = g.n + 1)
  SELECT line, price + carriage FROM given;

-- What a later word on a delivery gives to each of its lines, by price.
CREATE TEMP TABLE corrected (correction INTEGER NOT NULL, lot INTEGER NOT NULL, n INTEGER NOT NULL, part INTEGER NOT NULL);
INSERT INTO corrected
  WITH RECURSIVE lines AS (
      SELECT c.key, x.lot, x.price, CASE c.correction WHEN 'less' THEN -c.amount ELSE c.amount END AS amount,
        ROW_NUMBER() OVER line AS n,
        SUM(x.price) OVER (PARTITION BY c.key ORDER BY x.position ROWS BETWEEN CURRENT ROW AND UNBOUNDED FOLLOWING) AS left
      FROM cost_correction AS c JOIN delivery_line AS x ON x.head = c.delivery
      WINDOW line AS (PARTITION BY c.key ORDER BY x.position)),
    given (key, lot, n, part, rest) AS (
      SELECT key, lot, n, share(amount, price, left), amount - share(amount, price, left) FROM lines WHERE n = 1
      UNION ALL
      SELECT l.key, l.lot, l.n, share(g.rest, l.price, l.left), g.rest - share(g.rest, l.price, l.left)
      FROM given AS g JOIN lines AS l ON l.key = g.key AND l.n = g.n + 1)
  SELECT key, lot, n, part FROM given;
