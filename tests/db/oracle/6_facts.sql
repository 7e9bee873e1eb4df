-- What a channel keeps, by the day: the latest word on each.
CREATE TEMP VIEW channel AS
  SELECT *, LEAD("from", 1, 9999999) OVER (PARTITION BY channel ORDER BY "from", key) AS until FROM channel_fee;

-- Sold 14: fairs, other sales (of powder too), and bars out to a shop. Fees, stalls, travel, postage and selling hours
-- are the period's.
CREATE TEMP VIEW stood AS
  SELECT f.*, (SELECT COALESCE(SUM(taken - back), 0) FROM fair_line WHERE head = f.key) AS went,
    (SELECT COALESCE(SUM(MAX(0, taken - back)), 0) FROM fair_line WHERE head = f.key) AS sold FROM fair AS f;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, to_pot, lot, material, quantity, sale, apart)
  SELECT f.date, 14, f.went, f.fee, f.key, x.position, 'take', 'sold', x.lot, x.bar, 1000 * MAX(0, x.taken - x.back), 1, 1
  FROM fair_line AS x JOIN stood AS f ON f.key = x.head;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, pot, overhead)
  SELECT f.date, 14, f.went, f.fee, f.key, 500, 'enter', 'period', f.fee + COALESCE(f.travel, 0)
    + COALESCE((2 * COALESCE(f.card_takings, 0) * card.share_top + card.share_bottom) / (2 * card.share_bottom), 0)
    + COALESCE(card.per_payment * COALESCE(f.card_payments, 0), 0)
    + COALESCE((2 * COALESCE(f.cash_in_tin - COALESCE(f.change_float, 0), 0) * cash.share_top + cash.share_bottom)
        / (2 * cash.share_bottom), 0)
    + COALESCE(cash.per_bar, card.per_bar, 0) * f.sold
  FROM stood AS f LEFT JOIN channel AS card ON card.channel = 'card' AND f.date >= card."from" AND f.date < card.until
    LEFT JOIN channel AS cash ON cash.channel = 'cash' AND f.date >= cash."from" AND f.date < cash.until;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, pot, materials, labour, minutes)
  SELECT f.date, 14, f.went, f.fee, f.key, 600 + t.position, 'enter', 'period', h.materials, h.labour, h.minutes
  FROM fair_time AS t JOIN stood AS f ON f.key = t.head JOIN hours AS h ON h.kind = 'fair_time' AND h.key = t.key;

CREATE TEMP VIEW sent AS
  SELECT s.*, (SELECT COALESCE(SUM(bars), 0) FROM sale_line WHERE head = s.key) AS went,
    (SELECT COALESCE(SUM(price), 0) FROM sale_line WHERE head = s.key) + p.price AS prices, p.amount AS powder,
    (SELECT COALESCE(SUM(price * bars), 0) FROM sale_line WHERE head = s.key) + p.price + COALESCE(s.postage_paid, 0)
      AS takings
  FROM sale AS s JOIN (SELECT s.key, COALESCE(SUM(x.price), 0) AS price, COALESCE(SUM(x.amount), 0) AS amount
    FROM sale AS s LEFT JOIN sale_powder AS x ON x.head = s.key GROUP BY s.key) AS p ON p.key = s.key;
INSERT INTO fact_step (day, phase, second, third, kind, fact, sub, what, to_pot, lot, material, quantity, sale, apart)
  SELECT s.date, 14, s.went + s.powder, s.prices, 1, s.key, x.position, 'take', 'sold', x.lot, x.bar, 1000 * x.bars, 1, 1
  FROM sale_line AS x JOIN sent AS s ON s.key = x.head;
-- Powder after the bars; it pays fees by its price, and no bag.
INSERT INTO fact_step (day, phase, second, third, kind, fact, sub, what, to_pot, lot, material, quantity, sale, apart)
  SELECT s.date, 14, s.went + s.powder, s.prices, 1, s.key, 400 + x.position, 'take', 'sold', x.lot, x.pigment,
    h.quantity, 1, 1
  FROM sale_powder AS x JOIN sent AS s ON s.key = x.head JOIN held AS h ON h.kind = 'sale_powder' AND h.key = x.key;
INSERT INTO fact_step (day, phase, second, third, kind, fact, sub, what, pot, overhead)
  SELECT s.date, 14, s.went + s.powder, s.prices, 1, s.key, 500, 'enter', 'period', COALESCE(s.postage, 0)
    + COALESCE((2 * s.takings * c.share_top + c.share_bottom) / (2 * c.share_bottom), 0) + COALESCE(c.per_payment, 0)
    + COALESCE(c.per_bar, 0) * s.went
  FROM sent AS s LEFT JOIN channel AS c ON c.channel = s.channel AND s.date >= c."from" AND s.date < c.until;
INSERT INTO fact_step (day, phase, second, third, kind, fact, sub, what, pot, materials, labour, minutes)
  SELECT s.date, 14, s.went + s.powder, s.prices, 1, s.key, 600, 'enter', 'period', h.materials, h.labour, h.minutes
  FROM sent AS s JOIN hours AS h ON h.kind = 'sale' AND h.key = s.key;

INSERT INTO fact_step (day, phase, second, third, kind, fact, sub, what, to_pot, lot, material, quantity, sale, apart)
  SELECT date, 14, bars, price, 2, key, 1, 'take', 'out ' || key, lot, bar, 1000 * bars, 1, 1 FROM out_at_shop;
-- What became of them 15: sold there, the shop keeping its share, or back. Returned by customers 16.
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, lot, quantity)
  SELECT s.date, 15, s.sold, s.back, s.key, w.n, w.what, s.out, 1000 * CASE w.n WHEN 1 THEN s.sold ELSE s.back END
  FROM out_settled AS s, (SELECT 1 AS n, 'sold there' AS what UNION ALL SELECT 2, 'back') AS w;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, pot, overhead)
  SELECT s.date, 15, s.sold, s.back, s.key, 3, 'enter', 'period',
    (2 * o.price * s.sold * o.share_top + o.share_bottom) / (2 * o.share_bottom)
  FROM out_settled AS s JOIN out_at_shop AS o ON o.key = s.out WHERE o.share_top IS NOT NULL;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, to_pot, lot, quantity)
  SELECT date, 16, bars, refund, key, 1, 'return', CASE fit WHEN 'spoiled' THEN 'lost' ELSE 'lot ' || lot END, lot,
    1000 * bars FROM returned;

-- Lost or given 17, counted 20: the usual share of what came to a lot stays in the cost of the rest.
CREATE TEMP VIEW usual AS
  SELECT *, LEAD("from", 1, 9999999) OVER (PARTITION BY of ORDER BY "from", key) AS until FROM normal_loss;
INSERT INTO fact_step (day, phase, second, fact, sub, what, to_pot, lot, material, quantity, top, bottom)
  SELECT x.date, 17, x.amount, x.key, 1, 'take',
    CASE WHEN x.reason IN ('given', 'sample', 'own use', 'test') THEN 'given' ELSE 'lost' END, x.lot, h.material, h.quantity,
    CASE WHEN x.reason NOT IN ('given', 'sample', 'own use', 'test') THEN u.rate_top END, u.rate_bottom
  FROM loss AS x JOIN held AS h ON h.kind = 'loss' AND h.key = x.key JOIN material AS m ON m.key = h.material
    LEFT JOIN usual AS u ON u.of = m.kind AND x.date >= u."from" AND x.date < u.until;
INSERT INTO fact_step (day, phase, second, fact, sub, what, to_pot, lot, material, quantity, top, bottom)
  SELECT c.date, 20, SUM(x.counted) OVER (PARTITION BY c.key), c.key, x.position, 'count',
    CASE WHEN x.reason IN ('given', 'sample', 'own use', 'test') THEN 'given' ELSE 'lost' END, x.lot, h.material, h.quantity,
    CASE WHEN COALESCE(x.reason, 'other') NOT IN ('given', 'sample', 'own use', 'test') THEN u.rate_top END, u.rate_bottom
  FROM count_line AS x JOIN count AS c ON c.key = x.head JOIN held AS h ON h.kind = 'count_line' AND h.key = x.key
    JOIN material AS m ON m.key = h.material
    LEFT JOIN usual AS u ON u.of = m.kind AND c.date >= u."from" AND c.date < u.until;

-- Hours that belong to nothing else 19, and bills for the dye alone: the part that growing made necessary is shared by
-- the vats in hand, by number; with none in hand, and for what was spent either way, it is the period's.
INSERT INTO fact_step (day, phase, second, fact, sub, what, pot, materials, labour, minutes)
  SELECT w.date, 19, w.time, w.key, 1, 'enter', 'period', h.materials, h.labour, h.minutes
  FROM work AS w JOIN hours AS h ON h.kind = 'work' AND h.key = w.key;
CREATE TEMP VIEW dye_bill AS
  SELECT *, CASE WHEN avoidable_top IS NULL THEN amount
    ELSE (2 * amount * avoidable_top + avoidable_bottom) / (2 * avoidable_bottom) END AS avoided
  FROM paid_out WHERE dye_only <> 'no';
CREATE TEMP TABLE billed_vat AS
  SELECT p.key AS bill, p.avoided, v.key AS vat, ROW_NUMBER() OVER bill AS n, COUNT(*) OVER (PARTITION BY p.key) AS vats
  FROM dye_bill AS p JOIN vat AS v ON v.date <= p.date AND (p.colour IS NULL OR v.colour = p.colour)
  WHERE p.dye_only = 'vat' AND NOT EXISTS (SELECT 1 FROM drying_vat AS j JOIN drying AS d ON d.key = j.head
    WHERE j.vat = v.key AND d.date <= p.date)
  WINDOW bill AS (PARTITION BY p.key ORDER BY v.key);
INSERT INTO fact_step (day, phase, third, fact, sub, what, pot, overhead)
  WITH RECURSIVE part (bill, n, vat, vats, given, rest) AS (
    SELECT bill, n, vat, vats, share(avoided, 1, vats), avoided - share(avoided, 1, vats) FROM billed_vat WHERE n = 1
    UNION ALL SELECT b.bill, b.n, b.vat, b.vats, share(p.rest, 1, b.vats - b.n + 1),
      p.rest - share(p.rest, 1, b.vats - b.n + 1) FROM part AS p JOIN billed_vat AS b ON b.bill = p.bill AND b.n = p.n + 1)
  SELECT d.date, 19, d.amount, d.key, part.n, 'enter', 'vat ' || part.vat, part.given
  FROM part JOIN dye_bill AS d ON d.key = part.bill;
INSERT INTO fact_step (day, phase, third, fact, sub, what, pot, overhead)
  SELECT date, 19, amount, key, 900, 'enter', 'period',
    amount - CASE WHEN EXISTS (SELECT 1 FROM billed_vat AS b WHERE b.bill = d.key) THEN avoided ELSE 0 END
  FROM dye_bill AS d;

INSERT INTO step (what, day, pot, to_pot, lot, material, quantity, taken, of, sale, apart, ready, best_before, top, bottom,
                  materials, labour, energy, overhead, minutes)
  SELECT what, day, pot, to_pot, lot, material, quantity, taken, of, sale, apart, ready, best_before, top, bottom, materials,
    labour, energy, overhead, minutes
  FROM fact_step WHERE day <= (SELECT day FROM as_of) ORDER BY day, phase, first, second, third, kind, fact, sub;
