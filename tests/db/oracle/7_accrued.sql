-- General running costs fall on the days evenly, a year's amount by days gone of the days in that year; so does what
-- tools wear, over their years.
INSERT INTO enter (pot, overhead)
  WITH RECURSIVE
    year (number) AS (SELECT 2000 UNION ALL SELECT number + 1 FROM year WHERE number < 2100),
    span AS (SELECT unixepoch(number || '-01-01') / 86400 AS first, unixepoch((number + 1) || '-01-01') / 86400 AS next
      FROM year),
    setting AS (SELECT per_year, "from", LEAD("from", 1, (SELECT day + 1 FROM as_of)) OVER (ORDER BY "from", key) AS until
      FROM overhead WHERE "from" <= (SELECT day FROM as_of)),
    piece AS (SELECT per_year, MAX("from", first) - first AS start, MIN(until, next) - first AS stop, next - first AS days
      FROM setting JOIN span ON first < until AND next > "from")
  SELECT 'period', share(per_year, stop, days) - share(per_year, start, days) FROM piece;
INSERT INTO enter (pot, overhead)
  SELECT 'period', CASE WHEN gone <= day THEN price ELSE share(price, MIN(day - bought + 1, life), life) END
  FROM (SELECT *, unixepoch(86400 * bought, 'unixepoch', years || ' years') / 86400 - bought AS life FROM equipment), as_of
  WHERE bought <= day;
