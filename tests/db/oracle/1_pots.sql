-- The sample shop's cost, a second time and in plain SQL: where each unit of money and each minute stands.
--
-- A pot holds cost: 'lot 7' (by its key), 'bed 7', 'vat 7', 'batch 7', 'out 7 12' (bars of lot 12 at a shop), 'sold 12'
-- (of lot 12), 'lost', 'given', 'period'. What happened is put into `step` in order; a trigger for each kind of
-- step moves goods between shelves and cost between pots. share(rest, taken, left) is the one function SQL lacks.

CREATE TEMP TABLE pot (
  name TEXT PRIMARY KEY,
  materials INTEGER NOT NULL DEFAULT 0, labour INTEGER NOT NULL DEFAULT 0, energy INTEGER NOT NULL DEFAULT 0,
  overhead INTEGER NOT NULL DEFAULT 0, minutes INTEGER NOT NULL DEFAULT 0
);
CREATE TEMP TABLE enter (
  pot TEXT NOT NULL, materials INTEGER, labour INTEGER, energy INTEGER, overhead INTEGER, minutes INTEGER
);
CREATE TEMP TRIGGER enters AFTER INSERT ON enter BEGIN
  INSERT OR IGNORE INTO pot (name) VALUES (NEW.pot);
  UPDATE pot SET materials = materials + COALESCE(NEW.materials, 0), labour = labour + COALESCE(NEW.labour, 0),
                 energy = energy + COALESCE(NEW.energy, 0), overhead = overhead + COALESCE(NEW.overhead, 0),
                 minutes = minutes + COALESCE(NEW.minutes, 0)
  WHERE name = NEW.pot;
END;

-- `taken` out of `of` parts of what is in a pot go into another.
CREATE TEMP TABLE flow (from_pot TEXT NOT NULL, to_pot TEXT NOT NULL, taken INTEGER NOT NULL, of INTEGER NOT NULL);
CREATE TEMP TRIGGER flows AFTER INSERT ON flow BEGIN
  INSERT OR IGNORE INTO pot (name) VALUES (NEW.from_pot), (NEW.to_pot);
  UPDATE pot SET materials = pot.materials + way.sign * share(source.materials, NEW.taken, NEW.of),
                 labour = pot.labour + way.sign * share(source.labour, NEW.taken, NEW.of),
                 energy = pot.energy + way.sign * share(source.energy, NEW.taken, NEW.of),
                 overhead = pot.overhead + way.sign * share(source.overhead, NEW.taken, NEW.of),
                 minutes = pot.minutes + way.sign * share(source.minutes, NEW.taken, NEW.of)
  FROM (SELECT * FROM pot WHERE name = NEW.from_pot) AS source,
       (SELECT NEW.from_pot AS name, -1 AS sign UNION ALL SELECT NEW.to_pot, 1) AS way
  WHERE pot.name = way.name;
END;

-- What is on the shelf of each lot. `came`: all that ever came to it, returns too; `found`: of it at counts.
CREATE TEMP TABLE shelf (
  lot INTEGER PRIMARY KEY, material INTEGER NOT NULL, arrival INTEGER NOT NULL, received INTEGER NOT NULL,
  left INTEGER NOT NULL, came INTEGER NOT NULL, found INTEGER NOT NULL DEFAULT 0, usual_lost INTEGER NOT NULL DEFAULT 0,
  ready INTEGER NOT NULL, best_before INTEGER
);
CREATE TEMP TABLE bars_sold (lot INTEGER PRIMARY KEY, bars INTEGER NOT NULL);
CREATE TEMP TABLE out_piece (n INTEGER PRIMARY KEY, out INTEGER NOT NULL, lot INTEGER NOT NULL, bars INTEGER NOT NULL);
-- What the latest goods of a material cost.
CREATE TEMP TABLE latest_goods (
  material INTEGER PRIMARY KEY, quantity INTEGER, materials INTEGER, labour INTEGER, energy INTEGER, overhead INTEGER,
  minutes INTEGER
);

-- Goods wanted from the shelf: of one lot, or of those open first, then by best before, then as they came. For sale
-- those cured and not held go before all others.
CREATE TEMP TABLE want (
  n INTEGER PRIMARY KEY, day INTEGER NOT NULL, material INTEGER NOT NULL, lot INTEGER, quantity INTEGER NOT NULL,
  sale INTEGER, to_pot TEXT NOT NULL, apart INTEGER, usual_top INTEGER, usual_bottom INTEGER
);
CREATE TEMP TABLE draw (want INTEGER NOT NULL, lot INTEGER NOT NULL, quantity INTEGER NOT NULL);
CREATE TEMP TRIGGER wants AFTER INSERT ON want BEGIN
  INSERT INTO draw
  SELECT NEW.n, lot, MIN(left, NEW.quantity - before) FROM (
    SELECT s.lot, s.left, COALESCE(SUM(s.left) OVER (ORDER BY
        NEW.sale AND EXISTS (SELECT 1 FROM hold AS h WHERE h.lot = s.lot AND h.date <= NEW.day AND NOT EXISTS (
            SELECT 1 FROM release AS r WHERE r.lot = h.lot AND r.date BETWEEN h.date AND NEW.day)),
        NEW.sale AND s.ready > NEW.day, s.left = s.received, s.best_before IS NULL, s.best_before, s.arrival
        ROWS BETWEEN UNBOUNDED PRECEDING AND 1 PRECEDING), 0) AS before
    FROM shelf AS s WHERE s.material = NEW.material AND s.left > 0 AND (NEW.lot IS NULL OR s.lot = NEW.lot))
  WHERE before < NEW.quantity ORDER BY before;
END;

-- Usual losses stay in the cost of what is left; the rest leaves at the unit cost after the usual part is taken out.
CREATE TEMP TRIGGER draws AFTER INSERT ON draw BEGIN
  INSERT INTO flow
  SELECT 'lot ' || NEW.lot, to_pot || CASE WHEN apart THEN ' ' || NEW.lot ELSE '' END,
         CASE WHEN NEW.quantity = left THEN 1 ELSE NEW.quantity - usual END,
         CASE WHEN NEW.quantity = left THEN 1 ELSE left - usual END
  FROM (SELECT w.to_pot, w.apart, s.left, CASE WHEN w.usual_top IS NULL THEN 0 ELSE MIN(NEW.quantity, MAX(0,
            (2 * (s.came - s.found) * w.usual_top + w.usual_bottom) / (2 * w.usual_bottom) - s.usual_lost)) END AS usual
        FROM want AS w, shelf AS s WHERE w.n = NEW.want AND s.lot = NEW.lot);
  UPDATE shelf SET left = left - NEW.quantity, usual_lost = usual_lost + (
    SELECT CASE WHEN w.usual_top IS NULL THEN 0 ELSE MIN(NEW.quantity, MAX(0,
        (2 * (shelf.came - shelf.found) * w.usual_top + w.usual_bottom) / (2 * w.usual_bottom) - shelf.usual_lost)) END
    FROM want AS w WHERE w.n = NEW.want)
  WHERE lot = NEW.lot;
  INSERT INTO bars_sold SELECT NEW.lot, NEW.quantity FROM want WHERE n = NEW.want AND to_pot = 'sold'
    ON CONFLICT (lot) DO UPDATE SET bars = bars + excluded.bars;
  INSERT INTO out_piece (out, lot, bars) SELECT substr(to_pot, 5), NEW.lot, NEW.quantity FROM want
    WHERE n = NEW.want AND to_pot LIKE 'out %';
END;
