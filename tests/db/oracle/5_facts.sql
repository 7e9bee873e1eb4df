-- Vats 8: what went in, heat, hands. Watt-hours of water: kilograms x 4.186 kJ / 3.6 x rise / efficiency.
CREATE TEMP VIEW begun AS
  SELECT v.key, v.date, COALESCE((SELECT MIN(1440 * s.begun + s.begun_minute - s.begun_utc_offset) FROM vat_step AS s
      WHERE s.head = v.key), 9000000000000000000) AS first,
    COALESCE((SELECT SUM(u.amount) FROM vat_use AS u WHERE u.head = v.key), 0) AS second FROM vat AS v;
INSERT INTO fact_step (day, phase, first, second, fact, sub, what, to_pot, lot, material, quantity)
  SELECT v.date, 8, v.first, v.second, v.key, u.position, 'take', 'vat ' || v.key, u.lot, h.material, h.quantity
  FROM vat_use AS u JOIN begun AS v ON v.key = u.head JOIN held AS h ON h.kind = 'vat_use' AND h.key = u.key;
INSERT INTO fact_step (day, phase, first, second, fact, sub, what, pot, energy)
  SELECT v.date, 8, v.first, v.second, v.key, 100 + x.position, 'enter', 'vat ' || v.key, (2 * x.wh * (
      SELECT per_kwh FROM tariff WHERE source = x.source AND "from" <= v.date ORDER BY "from" DESC, key DESC LIMIT 1)
      + 1000) / 2000
  FROM (SELECT *, COALESCE(energy, (2 * water * (heated_to - heated_from) * 2093 * COALESCE(efficiency_bottom, 1)
        + COALESCE(efficiency_top, 1) * 18000000000) / (2 * COALESCE(efficiency_top, 1) * 18000000000)) AS wh
      FROM vat_heat) AS x JOIN begun AS v ON v.key = x.head;
INSERT INTO fact_step (day, phase, first, second, fact, sub, what, pot, materials, labour, minutes)
  SELECT v.date, 8, v.first, v.second, v.key, 200 + s.position, 'enter', 'vat ' || v.key, h.materials, h.labour, h.minutes
  FROM vat_step AS s JOIN begun AS v ON v.key = s.head JOIN hours AS h ON h.kind = 'vat_step' AND h.key = s.key;

-- Dried 9. The hands go to the first vat on the plate; all that the vats held goes into the powder, but for what was
-- seen and lost, or is lost where nothing came of it.
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, lot, material, quantity, ready)
  SELECT d.date, 9, d.amount, COALESCE(d.time, 0), d.key, s.n, s.what, d.lot, h.material, h.quantity, d.date
  FROM drying AS d JOIN held AS h ON h.kind = 'drying' AND h.key = d.key,
    (SELECT 1 AS n, 'receive' AS what UNION ALL SELECT 900, 'latest') AS s;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, pot, materials, labour, minutes)
  SELECT d.date, 9, COALESCE(d.amount, 0), COALESCE(d.time, 0), d.key, 2, 'enter', 'vat ' || v.vat, h.materials, h.labour,
    h.minutes
  FROM drying AS d JOIN drying_vat AS v ON v.head = d.key AND v.position = (
      SELECT MIN(position) FROM drying_vat WHERE head = d.key) JOIN hours AS h ON h.kind = 'drying' AND h.key = d.key;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, pot, to_pot, taken, of)
  SELECT d.date, 9, d.amount, COALESCE(d.time, 0), d.key, 1 + 2 * v.position, 'flow', 'vat ' || v.vat, 'lost', l.quantity,
    l.quantity + h.quantity
  FROM drying AS d JOIN drying_vat AS v ON v.head = d.key JOIN held AS l ON l.kind = 'drying lost' AND l.key = d.key
    JOIN held AS h ON h.kind = 'drying' AND h.key = d.key;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, pot, to_pot, taken, of)
  SELECT d.date, 9, COALESCE(d.amount, 0), COALESCE(d.time, 0), d.key, 2 + 2 * v.position, 'flow', 'vat ' || v.vat,
    CASE WHEN d.lot IS NULL THEN 'lost' ELSE 'lot ' || d.lot END, 1, 1
  FROM drying AS d JOIN drying_vat AS v ON v.head = d.key;

-- Poured 10, poured off from another 11.
CREATE TEMP VIEW poured AS
  SELECT b.*, CASE WHEN b.split_from IS NULL THEN 10 ELSE 11 END AS phase,
    COALESCE((SELECT SUM(u.amount) FROM batch_use AS u WHERE u.head = b.key), 0) AS used FROM batch AS b;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, to_pot, lot, material, quantity)
  SELECT b.date, b.phase, b.used, b.loaves, b.key, u.position, 'take', 'batch ' || b.key, u.lot, h.material, h.quantity
  FROM batch_use AS u JOIN poured AS b ON b.key = u.head JOIN held AS h ON h.kind = 'batch_use' AND h.key = u.key;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, pot, to_pot, taken, of)
  SELECT b.date, b.phase, b.used, b.loaves, b.key, 100, 'flow', 'batch ' || b.split_from, 'batch ' || b.key,
    b.split_share_top, b.split_share_bottom FROM poured AS b WHERE b.split_from IS NOT NULL;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, pot, materials, labour, minutes)
  SELECT b.date, b.phase, b.used, b.loaves, b.key, 200 + t.position, 'enter', 'batch ' || b.key, h.materials, h.labour,
    h.minutes
  FROM batch_time AS t JOIN poured AS b ON b.key = t.head JOIN hours AS h ON h.kind = 'batch_time' AND h.key = t.key;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, pot, materials, labour, minutes)
  SELECT b.date, b.phase, b.used, b.loaves, b.key, 300, 'enter', 'batch ' || b.key, h.materials, h.labour, h.minutes
  FROM sitting AS s JOIN sitting_at AS a ON a.head = s.key JOIN poured AS b ON b.key = a.batch
    JOIN hours AS h ON h.kind = 'sitting' AND h.key = s.key;

-- Cut 12: usual rejects stay in the cost of the good bars, the rest is lost; overhead by the good bar.
CREATE TEMP VIEW sliced AS
  SELECT c.*, 1000 * c.bars AS cut, 1000 * c.rejected AS bad, MIN(1000 * c.rejected, COALESCE((
      SELECT (2000 * c.bars * n.rate_top + n.rate_bottom) / (2 * n.rate_bottom) FROM normal_loss AS n
      WHERE n.of = 'batch' AND n."from" <= c.date ORDER BY n."from" DESC, n.key DESC LIMIT 1), 0)) AS usual,
    (SELECT o.key FROM overhead AS o WHERE o."from" <= c.date ORDER BY o."from" DESC, o.key DESC LIMIT 1) AS overhead,
    COALESCE((SELECT SUM(e.price / MAX(e.years, 1)) FROM equipment AS e WHERE e.bought <= c.date AND e.dye_only = 'no'
      AND c.date < unixepoch(86400 * e.bought, 'unixepoch', e.years || ' years') / 86400
      AND (e.gone IS NULL OR e.gone > c.date)), 0) AS wear
  FROM cut AS c;
INSERT INTO fact_step (day, phase, first, second, third, fact, sub, what, pot, materials, labour, minutes)
  SELECT c.date, 12, c.cured, c.bars, c.rejected, c.key, 1, 'enter', 'batch ' || c.batch, h.materials, h.labour, h.minutes
  FROM cut AS c JOIN hours AS h ON h.kind = 'cut' AND h.key = c.key;
INSERT INTO fact_step (day, phase, first, second, third, fact, sub, what, pot, to_pot, taken, of)
  SELECT date, 12, cured, bars, rejected, key, 2, 'flow', 'batch ' || batch, 'lost',
    CASE WHEN bad = cut THEN 1 ELSE bad - usual END, CASE WHEN bad = cut THEN 1 ELSE cut - usual END FROM sliced;
INSERT INTO fact_step (day, phase, first, second, third, fact, sub, what, pot, to_pot, lot, material, quantity, ready, taken,
                       of)
  SELECT c.date, 12, c.cured, c.bars, c.rejected, c.key, s.n, s.what, 'batch ' || c.batch, 'lot ' || c.lot, c.lot,
    l.material, c.cut - c.bad, c.cured, 1, 1
  FROM sliced AS c JOIN lot AS l ON l.key = c.lot,
    (SELECT 3 AS n, 'receive' AS what UNION ALL SELECT 4, 'flow' UNION ALL SELECT 7, 'latest') AS s WHERE c.bad < c.cut;
INSERT INTO fact_step (day, phase, first, second, third, fact, sub, what, pot, overhead)
  SELECT c.date, 12, c.cured, c.bars, c.rejected, c.key, s.n, 'enter', CASE s.n WHEN 5 THEN 'lot ' || c.lot ELSE 'period' END,
    s.sign * ((2 * (o.per_year + c.wear) * (c.bars - c.rejected) + o.normal_bars) / (2 * o.normal_bars))
  FROM sliced AS c JOIN overhead AS o ON o.key = c.overhead, (SELECT 5 AS n, 1 AS sign UNION ALL SELECT 6, -1) AS s
  WHERE c.bad < c.cut AND o.normal_bars > 0;

-- Wrapped 13.
CREATE TEMP VIEW wrapped AS SELECT w.*, (SELECT COALESCE(SUM(amount), 0) FROM wrapping_use WHERE head = w.key) AS used
  FROM wrapping AS w;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, to_pot, lot, material, quantity)
  SELECT w.date, 13, w.used, w.bars, w.key, u.position, 'take', 'lot ' || w.lot, u.lot, h.material, h.quantity
  FROM wrapping_use AS u JOIN wrapped AS w ON w.key = u.head JOIN held AS h ON h.kind = 'wrapping_use' AND h.key = u.key;
INSERT INTO fact_step (day, phase, second, third, fact, sub, what, pot, materials, labour, minutes)
  SELECT w.date, 13, w.used, w.bars, w.key, 900, 'enter', 'lot ' || w.lot, h.materials, h.labour, h.minutes
  FROM wrapped AS w JOIN hours AS h ON h.kind = 'wrapping' AND h.key = w.key;
