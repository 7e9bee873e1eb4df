-- One thing that happened. Which columns it fills depends on `what`.
CREATE TEMP TABLE step (
  n INTEGER PRIMARY KEY, what TEXT NOT NULL, day INTEGER NOT NULL, pot TEXT, to_pot TEXT, lot INTEGER, material INTEGER,
  quantity INTEGER, taken INTEGER, of INTEGER, sale INTEGER, apart INTEGER, ready INTEGER, best_before INTEGER,
  top INTEGER, bottom INTEGER, materials INTEGER, labour INTEGER, energy INTEGER, overhead INTEGER, minutes INTEGER
);

CREATE TEMP TRIGGER step_enter AFTER INSERT ON step WHEN NEW.what = 'enter' BEGIN
  INSERT INTO enter VALUES (NEW.pot, NEW.materials, NEW.labour, NEW.energy, NEW.overhead, NEW.minutes);
END;
CREATE TEMP TRIGGER step_flow AFTER INSERT ON step WHEN NEW.what = 'flow' BEGIN
  INSERT INTO flow VALUES (NEW.pot, NEW.to_pot, NEW.taken, NEW.of);
END;
CREATE TEMP TRIGGER step_take AFTER INSERT ON step WHEN NEW.what = 'take' BEGIN
  INSERT INTO want VALUES (NEW.n, NEW.day, NEW.material, NEW.lot, NEW.quantity, COALESCE(NEW.sale, 0), NEW.to_pot,
                           COALESCE(NEW.apart, 0), NEW.top, NEW.bottom);
END;
CREATE TEMP TRIGGER step_receive AFTER INSERT ON step WHEN NEW.what = 'receive' BEGIN
  INSERT INTO shelf (lot, material, arrival, received, left, came, ready, best_before)
  VALUES (NEW.lot, NEW.material, (SELECT COUNT(*) FROM shelf), NEW.quantity, NEW.quantity, NEW.quantity, NEW.ready,
          NEW.best_before);
END;
CREATE TEMP TRIGGER step_latest AFTER INSERT ON step WHEN NEW.what = 'latest' BEGIN
  INSERT OR REPLACE INTO latest_goods
  SELECT s.material, s.left, p.materials, p.labour, p.energy, p.overhead, p.minutes
  FROM shelf AS s JOIN pot AS p ON p.name = 'lot ' || s.lot WHERE s.lot = NEW.lot AND s.left > 0;
END;
-- A later word on the price: what is still here of the line takes its part, the period the rest.
CREATE TEMP TRIGGER step_correct AFTER INSERT ON step WHEN NEW.what = 'correct' BEGIN
  INSERT INTO enter (pot, materials) SELECT 'period', NEW.materials - share(NEW.materials, left, received)
    FROM shelf WHERE lot = NEW.lot;
  INSERT INTO enter (pot, materials) SELECT 'lot ' || lot, share(NEW.materials, left, received)
    FROM shelf WHERE lot = NEW.lot;
END;
-- A by-product takes what it would cost to buy off the bed's cost, and no more than all of it.
CREATE TEMP TRIGGER step_credit AFTER INSERT ON step WHEN NEW.what = 'credit' BEGIN
  INSERT INTO flow SELECT NEW.pot, NEW.to_pot, MIN(NEW.taken, full), full FROM (
    SELECT materials + labour + energy + overhead AS full FROM pot WHERE name = NEW.pot) WHERE full > 0;
END;
-- Bars out at a shop, piece by piece as they went: sold there, or back on the shelf.
CREATE TEMP TABLE settle (out INTEGER NOT NULL, lot INTEGER NOT NULL, quantity INTEGER NOT NULL, sold INTEGER NOT NULL);
CREATE TEMP TRIGGER settles AFTER INSERT ON settle BEGIN
  INSERT INTO flow SELECT 'out ' || out || ' ' || lot, CASE WHEN NEW.sold THEN 'sold ' ELSE 'lot ' END || lot,
    NEW.quantity, bars FROM out_piece WHERE out = NEW.out AND lot = NEW.lot;
  UPDATE out_piece SET bars = bars - NEW.quantity WHERE out = NEW.out AND lot = NEW.lot;
  UPDATE shelf SET left = left + NEW.quantity, came = came + NEW.quantity WHERE lot = NEW.lot AND NOT NEW.sold;
  INSERT INTO bars_sold SELECT NEW.lot, NEW.quantity WHERE NEW.sold
    ON CONFLICT (lot) DO UPDATE SET bars = bars + excluded.bars;
END;
CREATE TEMP TRIGGER step_settle AFTER INSERT ON step WHEN NEW.what IN ('sold there', 'back') BEGIN
  INSERT INTO settle SELECT out, lot, MIN(bars, NEW.quantity - before), NEW.what = 'sold there' FROM (
    SELECT out, lot, bars, n, COALESCE(SUM(bars) OVER (ORDER BY n ROWS BETWEEN UNBOUNDED PRECEDING AND 1 PRECEDING), 0)
      AS before FROM out_piece WHERE out = NEW.lot AND bars > 0)
  WHERE before < NEW.quantity ORDER BY n;
END;
-- Bars a customer brought back, at the cost at which bars of their lot were sold.
CREATE TEMP TRIGGER step_return AFTER INSERT ON step WHEN NEW.what = 'return' BEGIN
  INSERT INTO flow SELECT 'sold ' || lot, NEW.to_pot, NEW.quantity, bars FROM bars_sold WHERE lot = NEW.lot;
  UPDATE bars_sold SET bars = bars - NEW.quantity WHERE lot = NEW.lot;
  UPDATE shelf SET came = came + NEW.quantity, left = left + CASE WHEN NEW.to_pot = 'lost' THEN 0 ELSE NEW.quantity END
    WHERE lot = NEW.lot;
END;
-- What was counted against what should be there: less is lost, more is found at the latest goods' cost.
CREATE TEMP TRIGGER step_count AFTER INSERT ON step WHEN NEW.what = 'count' BEGIN
  INSERT INTO want SELECT NEW.n, NEW.day, NEW.material, NEW.lot, SUM(left) - NEW.quantity, 0, NEW.to_pot, 0, NEW.top,
      NEW.bottom
    FROM shelf WHERE material = NEW.material AND (NEW.lot IS NULL OR lot = NEW.lot) HAVING SUM(left) > NEW.quantity;
  INSERT INTO found SELECT COALESCE(NEW.lot, (SELECT lot FROM shelf WHERE material = NEW.material
      ORDER BY left > 0 DESC, arrival DESC LIMIT 1)), NEW.material, NEW.quantity - SUM(left)
    FROM shelf WHERE material = NEW.material AND (NEW.lot IS NULL OR lot = NEW.lot) HAVING SUM(left) < NEW.quantity;
END;
CREATE TEMP TABLE found (lot INTEGER NOT NULL, material INTEGER NOT NULL, quantity INTEGER NOT NULL);
CREATE TEMP TRIGGER founds AFTER INSERT ON found BEGIN
  UPDATE shelf SET received = received + NEW.quantity, left = left + NEW.quantity, came = came + NEW.quantity,
    found = found + NEW.quantity WHERE lot = NEW.lot;
  INSERT INTO enter SELECT way.pot, way.sign * share(materials, NEW.quantity, quantity),
      way.sign * share(labour, NEW.quantity, quantity), way.sign * share(energy, NEW.quantity, quantity),
      way.sign * share(overhead, NEW.quantity, quantity), way.sign * share(minutes, NEW.quantity, quantity)
    FROM latest_goods, (SELECT 'lost' AS pot, -1 AS sign UNION ALL SELECT 'lot ' || NEW.lot, 1) AS way
    WHERE material = NEW.material;
END;
