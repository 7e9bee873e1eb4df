-- The shop file (.dyestead): what the maker has recorded, and nothing that could be worked out from it.
--
-- One table for each kind of fact and one for each kind of line; the kinds are described in
-- domain/facts/, and a test holds the columns here against the field lists there.
--   key       never changes; code is what people read, and may rename
--   head      (of a line) the fact it belongs to; position 1, 2, 3 ... within it
--   days      INTEGER, days since 1970-01-01
--   money     INTEGER, millionths of the shop's currency; never above 10^12 units
--   amounts   INTEGER, in the base unit of the kind (mg, microlitre, thousandth of a piece, cm2, Wh), never above
--             10^12; _unit is the unit typed (domain/values/unit.h; '' for pieces), _mark how surely it is known
--   time      INTEGER, millionths of a minute, never above a century; _unit and _mark likewise
--   shares, strengths, densities   as typed: _top / _bottom; what is part of a whole is never above it
--   moments   INTEGER day and _minute by the clock on the wall, _utc_offset the minutes it is ahead of UTC
--   temperature in tenths of a degree Celsius, acidity in hundredths of pH
--   NULL      not known, or none
-- The limits in the CHECKs are those of the gate where values are read (domain/text/amounts.h).
-- References are checked when a transaction ends. Indexes stand on references only.

PRAGMA page_size = 4096;
PRAGMA encoding = 'UTF-8';
PRAGMA application_id = 0x44594531;  -- DYE1
PRAGMA user_version = 4;

-- Beside the facts --------------------------------------------------------------------------------

-- The file's own random name, which it keeps when it is moved; exactly one row.
CREATE TABLE file (
  key INTEGER PRIMARY KEY CHECK (key = 1),
  id TEXT NOT NULL CHECK (length(id) = 32)
) STRICT;

-- For each table of facts: its rows, and the sum (modulo 2^64) of a hash of each row's contents.
CREATE TABLE seal (
  key INTEGER PRIMARY KEY,
  table_name TEXT NOT NULL,
  row_count INTEGER NOT NULL CHECK (row_count >= 0),
  sum INTEGER NOT NULL
) STRICT;

-- The log of changes; it only grows. An undo is a new entry that names the one it reverts.
CREATE TABLE change (
  id INTEGER PRIMARY KEY,
  at INTEGER NOT NULL,         -- seconds since 1970-01-01 UTC
  title_code TEXT NOT NULL,
  title_args TEXT NOT NULL,    -- CSV rows: name,value
  changeset BLOB NOT NULL,     -- of SQLite's session extension, over the tables of facts
  reverts INTEGER REFERENCES change DEFERRABLE INITIALLY DEFERRED,
  schema INTEGER NOT NULL,     -- user_version when it was made
  seal_before INTEGER NOT NULL,
  seal_after INTEGER NOT NULL
) STRICT;
CREATE INDEX change_reverts ON change (reverts);

-- Forms half filled in; neither logged nor sealed.
CREATE TABLE draft (
  key INTEGER PRIMARY KEY,
  form TEXT NOT NULL,
  field TEXT NOT NULL,
  typed TEXT NOT NULL
) STRICT;

-- Facts -------------------------------------------------------------------------------------------

-- The shop itself; exactly one. shown_as_of holds a demonstration or a closed shop at one day.
CREATE TABLE shop (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  name TEXT NOT NULL CHECK (name <> ''),
  currency TEXT NOT NULL CHECK (currency <> ''),
  shown_as_of INTEGER CHECK (shown_as_of BETWEEN -719528 AND 2932896),
  year_begins INTEGER CHECK (year_begins BETWEEN 0 AND 1000000000)
) STRICT;

-- Who works here.
CREATE TABLE person (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  name TEXT NOT NULL CHECK (name <> '')
) STRICT;

-- What an hour of somebody is to bring (own) or costs (paid), from a day on.
CREATE TABLE pay (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  "from" INTEGER NOT NULL CHECK ("from" BETWEEN -719528 AND 2932896),
  person INTEGER NOT NULL REFERENCES person DEFERRABLE INITIALLY DEFERRED,
  standing TEXT NOT NULL CHECK (standing IN ('own', 'paid')),
  per_hour INTEGER CHECK (per_hour BETWEEN 0 AND 1000000000000000000)
) STRICT;
CREATE INDEX pay_person ON pay (person);

-- What a kilowatt-hour of a heat source costs, from a day on.
CREATE TABLE tariff (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  "from" INTEGER NOT NULL CHECK ("from" BETWEEN -719528 AND 2932896),
  source TEXT NOT NULL CHECK (source IN ('electricity', 'gas', 'wood', 'sun')),
  per_kwh INTEGER NOT NULL CHECK (per_kwh BETWEEN 0 AND 1000000000000000000)
) STRICT;

-- General running costs of a year, and over how many good bars they are spread.
CREATE TABLE overhead (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  "from" INTEGER NOT NULL CHECK ("from" BETWEEN -719528 AND 2932896),
  per_year INTEGER NOT NULL CHECK (per_year BETWEEN 0 AND 1000000000000000000),
  normal_bars INTEGER NOT NULL CHECK (normal_bars BETWEEN 0 AND 1000000000)
) STRICT;

-- The share whose loss is usual, from a day on.
CREATE TABLE normal_loss (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  "from" INTEGER NOT NULL CHECK ("from" BETWEEN -719528 AND 2932896),
  "of" TEXT NOT NULL CHECK ("of" IN ('raw', 'seed', 'harvest', 'pigment', 'bar', 'batch')),
  rate_top INTEGER NOT NULL CHECK (rate_top BETWEEN 0 AND 100000000000),
  rate_bottom INTEGER NOT NULL CHECK (rate_bottom BETWEEN 1 AND 100000000000 AND rate_top <= rate_bottom)
) STRICT;

-- The sales tax inside shelf prices, from a day on.
CREATE TABLE sales_tax (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  "from" INTEGER NOT NULL CHECK ("from" BETWEEN -719528 AND 2932896),
  rate_top INTEGER NOT NULL CHECK (rate_top BETWEEN 0 AND 100000000000),
  rate_bottom INTEGER NOT NULL CHECK (rate_bottom BETWEEN 1 AND 100000000000)
) STRICT;

-- What it costs to be paid through a channel, from a day on.
CREATE TABLE channel_fee (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  "from" INTEGER NOT NULL CHECK ("from" BETWEEN -719528 AND 2932896),
  channel TEXT NOT NULL CHECK (channel IN ('cash', 'card', 'online', 'wholesale', 'other')),
  share_top INTEGER CHECK (share_top BETWEEN 0 AND 100000000000),
  share_bottom INTEGER CHECK (share_bottom BETWEEN 1 AND 100000000000 AND share_top <= share_bottom),
  per_payment INTEGER CHECK (per_payment BETWEEN 0 AND 1000000000000000000),
  per_bar INTEGER CHECK (per_bar BETWEEN 0 AND 1000000000000000000),
  CHECK ((share_top IS NULL) = (share_bottom IS NULL))
) STRICT;

-- The share of attended waiting that counts as work, from a day on.
CREATE TABLE waiting_share (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  "from" INTEGER NOT NULL CHECK ("from" BETWEEN -719528 AND 2932896),
  share_top INTEGER NOT NULL CHECK (share_top BETWEEN 0 AND 100000000000),
  share_bottom INTEGER NOT NULL CHECK (share_bottom BETWEEN 1 AND 100000000000 AND share_top <= share_bottom)
) STRICT;

-- What sowing is reckoned with, from a day on; of the frosts only day and month count.
CREATE TABLE sowing_rule (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  "from" INTEGER NOT NULL CHECK ("from" BETWEEN -719528 AND 2932896),
  last_frost INTEGER CHECK (last_frost BETWEEN -719528 AND 2932896),
  first_frost INTEGER CHECK (first_frost BETWEEN -719528 AND 2932896),
  germination_top INTEGER CHECK (germination_top BETWEEN 0 AND 100000000000),
  germination_bottom INTEGER CHECK (germination_bottom BETWEEN 1 AND 100000000000 AND germination_top <= germination_bottom),
  reserve_top INTEGER CHECK (reserve_top BETWEEN 0 AND 100000000000),
  reserve_bottom INTEGER CHECK (reserve_bottom BETWEEN 1 AND 100000000000),
  CHECK ((germination_top IS NULL) = (germination_bottom IS NULL)),
  CHECK ((reserve_top IS NULL) = (reserve_bottom IS NULL))
) STRICT;

-- What a price is to bring, from a day on.
CREATE TABLE price_rule (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  "from" INTEGER NOT NULL CHECK ("from" BETWEEN -719528 AND 2932896),
  margin_top INTEGER CHECK (margin_top BETWEEN 0 AND 100000000000),
  margin_bottom INTEGER CHECK (margin_bottom BETWEEN 1 AND 100000000000 AND margin_top <= margin_bottom),
  markup_top INTEGER CHECK (markup_top BETWEEN 0 AND 100000000000),
  markup_bottom INTEGER CHECK (markup_bottom BETWEEN 1 AND 100000000000),
  price_step INTEGER CHECK (price_step BETWEEN 0 AND 1000000000000000000),
  CHECK ((margin_top IS NULL) = (margin_bottom IS NULL)),
  CHECK ((markup_top IS NULL) = (markup_bottom IS NULL))
) STRICT;

-- Money that went out for no delivery.
CREATE TABLE paid_out (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  what TEXT NOT NULL CHECK (what <> ''),
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000000000),
  dye_only TEXT NOT NULL CHECK (dye_only IN ('no', 'garden', 'vat')),
  colour INTEGER REFERENCES colour DEFERRABLE INITIALLY DEFERRED,
  avoidable_top INTEGER CHECK (avoidable_top BETWEEN 0 AND 100000000000),
  avoidable_bottom INTEGER CHECK (avoidable_bottom BETWEEN 1 AND 100000000000 AND avoidable_top <= avoidable_bottom),
  note TEXT CHECK (note <> ''),
  CHECK ((avoidable_top IS NULL) = (avoidable_bottom IS NULL))
) STRICT;
CREATE INDEX paid_out_colour ON paid_out (colour);

-- A tool that wears out evenly over its years.
CREATE TABLE equipment (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  name TEXT NOT NULL CHECK (name <> ''),
  bought INTEGER NOT NULL CHECK (bought BETWEEN -719528 AND 2932896),
  price INTEGER NOT NULL CHECK (price BETWEEN 0 AND 1000000000000000000),
  years INTEGER NOT NULL CHECK (years BETWEEN 0 AND 1000000000),
  dye_only TEXT NOT NULL CHECK (dye_only IN ('no', 'garden', 'vat')),
  gone INTEGER CHECK (gone BETWEEN -719528 AND 2932896)
) STRICT;

-- What is grown for and decided about.
CREATE TABLE colour (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  name TEXT NOT NULL CHECK (name <> ''),
  bought_match INTEGER REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  match_strength_top INTEGER CHECK (match_strength_top BETWEEN 0 AND 100000000000),
  match_strength_bottom INTEGER CHECK (match_strength_bottom BETWEEN 1 AND 100000000000),
  bought_minutes_per_bar INTEGER CHECK (bought_minutes_per_bar BETWEEN 0 AND 52704000000000),
  bought_minutes_per_bar_unit TEXT CHECK (bought_minutes_per_bar_unit IN ('min', 'h')),
  bought_minutes_per_bar_mark TEXT CHECK (bought_minutes_per_bar_mark IN ('measured', 'about', 'method')),
  own_minutes_per_bar INTEGER CHECK (own_minutes_per_bar BETWEEN 0 AND 52704000000000),
  own_minutes_per_bar_unit TEXT CHECK (own_minutes_per_bar_unit IN ('min', 'h')),
  own_minutes_per_bar_mark TEXT CHECK (own_minutes_per_bar_mark IN ('measured', 'about', 'method')),
  own_cost_per_bar INTEGER CHECK (own_cost_per_bar BETWEEN 0 AND 1000000000000000000),
  CHECK ((match_strength_top IS NULL) = (match_strength_bottom IS NULL)),
  CHECK ((bought_minutes_per_bar IS NULL) = (bought_minutes_per_bar_unit IS NULL)
    AND (bought_minutes_per_bar IS NULL) = (bought_minutes_per_bar_mark IS NULL)),
  CHECK ((own_minutes_per_bar IS NULL) = (own_minutes_per_bar_unit IS NULL)
    AND (own_minutes_per_bar IS NULL) = (own_minutes_per_bar_mark IS NULL))
) STRICT;
CREATE INDEX colour_bought_match ON colour (bought_match);

-- Everything a lot can hold.
CREATE TABLE material (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  name TEXT NOT NULL CHECK (name <> ''),
  kind TEXT NOT NULL CHECK (kind IN ('raw', 'seed', 'harvest', 'pigment', 'bar')),
  purpose TEXT CHECK (purpose IN ('oil', 'lye', 'water', 'alkali', 'mordant', 'acid', 'colourant', 'scent', 'wrapping', 'feed', 'other')),
  held_as TEXT NOT NULL CHECK (held_as IN ('mass', 'volume', 'count')),
  density_top INTEGER CHECK (density_top BETWEEN 0 AND 100000000000),
  density_bottom INTEGER CHECK (density_bottom BETWEEN 1 AND 100000000000),
  spoon_density_top INTEGER CHECK (spoon_density_top BETWEEN 0 AND 100000000000),
  spoon_density_bottom INTEGER CHECK (spoon_density_bottom BETWEEN 1 AND 100000000000),
  saponification_top INTEGER CHECK (saponification_top BETWEEN 0 AND 100000000000),
  saponification_bottom INTEGER CHECK (saponification_bottom BETWEEN 1 AND 100000000000),
  colour INTEGER REFERENCES colour DEFERRABLE INITIALLY DEFERRED,
  caution TEXT NOT NULL CHECK (caution IN ('none', 'lye', 'dust', 'hot', 'sensitising', 'invasive')),
  alkali TEXT CHECK (alkali IN ('sodium', 'potassium')),
  purity_top INTEGER CHECK (purity_top BETWEEN 0 AND 100000000000),
  purity_bottom INTEGER CHECK (purity_bottom BETWEEN 1 AND 100000000000 AND purity_top <= purity_bottom),
  shelf_life_days INTEGER CHECK (shelf_life_days BETWEEN 0 AND 1000000000),
  shelf_room INTEGER CHECK (shelf_room BETWEEN 0 AND 1000000000000),
  shelf_room_unit TEXT,
  shelf_room_mark TEXT CHECK (shelf_room_mark IN ('measured', 'about', 'method')),
  CHECK ((density_top IS NULL) = (density_bottom IS NULL)),
  CHECK ((spoon_density_top IS NULL) = (spoon_density_bottom IS NULL)),
  CHECK ((saponification_top IS NULL) = (saponification_bottom IS NULL)),
  CHECK ((purity_top IS NULL) = (purity_bottom IS NULL)),
  CHECK ((shelf_room IS NULL) = (shelf_room_unit IS NULL) AND (shelf_room IS NULL) = (shelf_room_mark IS NULL))
) STRICT;
CREATE INDEX material_colour ON material (colour);

-- The label on the jar. What is in the jar and what it cost is derived, never stored.
CREATE TABLE lot (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  material INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED
) STRICT;
CREATE INDEX lot_material ON lot (material);

-- Who sells to the shop.
CREATE TABLE supplier (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  name TEXT NOT NULL CHECK (name <> ''),
  carriage INTEGER CHECK (carriage BETWEEN 0 AND 1000000000000000000),
  carriage_free_from INTEGER CHECK (carriage_free_from BETWEEN 0 AND 1000000000000000000),
  order_time INTEGER CHECK (order_time BETWEEN 0 AND 52704000000000),
  order_time_unit TEXT CHECK (order_time_unit IN ('min', 'h')),
  order_time_mark TEXT CHECK (order_time_mark IN ('measured', 'about', 'method')),
  note TEXT CHECK (note <> ''),
  CHECK ((order_time IS NULL) = (order_time_unit IS NULL) AND (order_time IS NULL) = (order_time_mark IS NULL))
) STRICT;

-- A supplier's price for a pack, from a day on; noted is the day the maker learned of it.
CREATE TABLE offer (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  noted INTEGER NOT NULL CHECK (noted BETWEEN -719528 AND 2932896),
  "from" INTEGER NOT NULL CHECK ("from" BETWEEN -719528 AND 2932896),
  supplier INTEGER NOT NULL REFERENCES supplier DEFERRABLE INITIALLY DEFERRED,
  material INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  pack INTEGER NOT NULL CHECK (pack BETWEEN 0 AND 1000000000000),
  pack_unit TEXT NOT NULL,
  pack_mark TEXT NOT NULL CHECK (pack_mark IN ('measured', 'about', 'method')),
  price INTEGER NOT NULL CHECK (price BETWEEN 0 AND 1000000000000000000),
  lead_days INTEGER CHECK (lead_days BETWEEN 0 AND 1000000000),
  how_known TEXT CHECK (how_known <> '')
) STRICT;
CREATE INDEX offer_supplier ON offer (supplier);
CREATE INDEX offer_material ON offer (material);

-- A lower price from so many packs on.
CREATE TABLE offer_break (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES offer DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  from_packs INTEGER NOT NULL CHECK (from_packs BETWEEN 0 AND 1000000000),
  price INTEGER NOT NULL CHECK (price BETWEEN 0 AND 1000000000000000000)
) STRICT;
CREATE INDEX offer_break_head ON offer_break (head);

-- Stock that was there before the books began.
CREATE TABLE already_here (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  lot INTEGER NOT NULL REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT NOT NULL,
  amount_mark TEXT NOT NULL CHECK (amount_mark IN ('measured', 'about', 'method')),
  cost INTEGER CHECK (cost BETWEEN 0 AND 1000000000000000000),
  time INTEGER CHECK (time BETWEEN 0 AND 52704000000000),
  time_unit TEXT CHECK (time_unit IN ('min', 'h')),
  time_mark TEXT CHECK (time_mark IN ('measured', 'about', 'method')),
  who INTEGER REFERENCES person DEFERRABLE INITIALLY DEFERRED,
  best_before INTEGER CHECK (best_before BETWEEN -719528 AND 2932896),
  CHECK ((time IS NULL) = (time_unit IS NULL) AND (time IS NULL) = (time_mark IS NULL))
) STRICT;
CREATE INDEX already_here_lot ON already_here (lot);
CREATE INDEX already_here_who ON already_here (who);

-- Goods that came.
CREATE TABLE delivery (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  supplier INTEGER NOT NULL REFERENCES supplier DEFERRABLE INITIALLY DEFERRED,
  carriage INTEGER NOT NULL CHECK (carriage BETWEEN 0 AND 1000000000000000000),
  share_by TEXT NOT NULL CHECK (share_by IN ('value', 'weight')),
  duty INTEGER CHECK (duty BETWEEN 0 AND 1000000000000000000),
  discount INTEGER CHECK (discount BETWEEN 0 AND 1000000000000000000),
  currency TEXT CHECK (currency <> ''),
  rate_top INTEGER CHECK (rate_top BETWEEN 0 AND 100000000000),
  rate_bottom INTEGER CHECK (rate_bottom BETWEEN 1 AND 100000000000),
  ordered INTEGER CHECK (ordered BETWEEN -719528 AND 2932896),
  note TEXT CHECK (note <> ''),
  CHECK ((rate_top IS NULL) = (rate_bottom IS NULL))
) STRICT;
CREATE INDEX delivery_supplier ON delivery (supplier);

-- One kind of goods in a delivery; price is for the whole line.
CREATE TABLE delivery_line (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES delivery DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  lot INTEGER NOT NULL REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT NOT NULL,
  amount_mark TEXT NOT NULL CHECK (amount_mark IN ('measured', 'about', 'method')),
  price INTEGER NOT NULL CHECK (price BETWEEN 0 AND 1000000000000000000),
  tax_top INTEGER CHECK (tax_top BETWEEN 0 AND 100000000000),
  tax_bottom INTEGER CHECK (tax_bottom BETWEEN 1 AND 100000000000),
  supplier_lot TEXT CHECK (supplier_lot <> ''),
  best_before INTEGER CHECK (best_before BETWEEN -719528 AND 2932896),
  CHECK ((tax_top IS NULL) = (tax_bottom IS NULL))
) STRICT;
CREATE INDEX delivery_line_head ON delivery_line (head);
CREATE INDEX delivery_line_lot ON delivery_line (lot);

CREATE TABLE cost_correction (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  delivery INTEGER NOT NULL REFERENCES delivery DEFERRABLE INITIALLY DEFERRED,
  correction TEXT NOT NULL CHECK (correction IN ('more', 'less')),
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000000000),
  note TEXT CHECK (note <> '')
) STRICT;
CREATE INDEX cost_correction_delivery ON cost_correction (delivery);

-- What was spoiled, spilled or given away.
CREATE TABLE loss (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  material INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  lot INTEGER REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT NOT NULL,
  amount_mark TEXT NOT NULL CHECK (amount_mark IN ('measured', 'about', 'method')),
  reason TEXT NOT NULL
    CHECK (reason IN ('spoiled', 'spilled', 'expired', 'other', 'given', 'sample', 'own use', 'test')),
  note TEXT CHECK (note <> '')
) STRICT;
CREATE INDEX loss_material ON loss (material);
CREATE INDEX loss_lot ON loss (lot);

-- A stock-take; the shelf as it stands at the end of the day.
CREATE TABLE "count" (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  note TEXT CHECK (note <> '')
) STRICT;

-- Blank: not counted. Nought: none left. Without a lot: all of the material together.
CREATE TABLE count_line (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES "count" DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  material INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  lot INTEGER REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  counted INTEGER CHECK (counted BETWEEN 0 AND 1000000000000),
  counted_unit TEXT,
  counted_mark TEXT CHECK (counted_mark IN ('measured', 'about', 'method')),
  reason TEXT CHECK (reason IN ('spoiled', 'spilled', 'expired', 'other', 'given', 'sample', 'own use', 'test')),
  CHECK ((counted IS NULL) = (counted_unit IS NULL) AND (counted IS NULL) = (counted_mark IS NULL))
) STRICT;
CREATE INDEX count_line_head ON count_line (head);
CREATE INDEX count_line_material ON count_line (material);
CREATE INDEX count_line_lot ON count_line (lot);

-- A measure of the maker's own: a bucket of water, a scoop of ash.
CREATE TABLE own_measure (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  name TEXT NOT NULL CHECK (name <> ''),
  material INTEGER REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT NOT NULL,
  amount_mark TEXT NOT NULL CHECK (amount_mark IN ('measured', 'about', 'method'))
) STRICT;
CREATE INDEX own_measure_material ON own_measure (material);

-- From the first day of a financial year on.
CREATE TABLE cost_rule (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  "from" INTEGER NOT NULL CHECK ("from" BETWEEN -719528 AND 2932896),
  material INTEGER REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  cost_by TEXT NOT NULL CHECK (cost_by IN ('lot', 'average'))
) STRICT;
CREATE INDEX cost_rule_material ON cost_rule (material);

-- A piece of the garden.
CREATE TABLE bed (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  name TEXT NOT NULL CHECK (name <> ''),
  area INTEGER NOT NULL CHECK (area BETWEEN 0 AND 1000000000000),
  area_unit TEXT NOT NULL,
  area_mark TEXT NOT NULL CHECK (area_mark IN ('measured', 'about', 'method'))
) STRICT;

-- A dye plant: harvest per square metre and crop in a bad, a usual and a good year.
CREATE TABLE plant (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  name TEXT NOT NULL CHECK (name <> ''),
  latin TEXT NOT NULL CHECK (latin <> ''),
  part TEXT NOT NULL CHECK (part <> ''),
  colour INTEGER REFERENCES colour DEFERRABLE INITIALLY DEFERRED,
  low INTEGER NOT NULL CHECK (low BETWEEN 0 AND 1000000000000),
  low_unit TEXT NOT NULL,
  low_mark TEXT NOT NULL CHECK (low_mark IN ('measured', 'about', 'method')),
  usual INTEGER NOT NULL CHECK (usual BETWEEN 0 AND 1000000000000),
  usual_unit TEXT NOT NULL,
  usual_mark TEXT NOT NULL CHECK (usual_mark IN ('measured', 'about', 'method')),
  high INTEGER NOT NULL CHECK (high BETWEEN 0 AND 1000000000000),
  high_unit TEXT NOT NULL,
  high_mark TEXT NOT NULL CHECK (high_mark IN ('measured', 'about', 'method')),
  crops INTEGER NOT NULL CHECK (crops BETWEEN 0 AND 1000000000),
  years_to_first INTEGER NOT NULL CHECK (years_to_first BETWEEN 0 AND 1000000000),
  caution TEXT NOT NULL CHECK (caution IN ('none', 'lye', 'dust', 'hot', 'sensitising', 'invasive')),
  strength_low_top INTEGER CHECK (strength_low_top BETWEEN 0 AND 100000000000),
  strength_low_bottom INTEGER CHECK (strength_low_bottom BETWEEN 1 AND 100000000000),
  strength_usual_top INTEGER CHECK (strength_usual_top BETWEEN 0 AND 100000000000),
  strength_usual_bottom INTEGER CHECK (strength_usual_bottom BETWEEN 1 AND 100000000000),
  strength_high_top INTEGER CHECK (strength_high_top BETWEEN 0 AND 100000000000),
  strength_high_bottom INTEGER CHECK (strength_high_bottom BETWEEN 1 AND 100000000000),
  seed_rate INTEGER CHECK (seed_rate BETWEEN 0 AND 1000000000000),
  seed_rate_unit TEXT,
  seed_rate_mark TEXT CHECK (seed_rate_mark IN ('measured', 'about', 'method')),
  days_to_harvest INTEGER CHECK (days_to_harvest BETWEEN 0 AND 1000000000),
  CHECK ((strength_low_top IS NULL) = (strength_low_bottom IS NULL)),
  CHECK ((strength_usual_top IS NULL) = (strength_usual_bottom IS NULL)),
  CHECK ((strength_high_top IS NULL) = (strength_high_bottom IS NULL)),
  CHECK ((seed_rate IS NULL) = (seed_rate_unit IS NULL) AND (seed_rate IS NULL) = (seed_rate_mark IS NULL))
) STRICT;
CREATE INDEX plant_colour ON plant (colour);

-- A plant in a bed from the day it was sown.
CREATE TABLE planting (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  sown INTEGER NOT NULL CHECK (sown BETWEEN -719528 AND 2932896),
  plant INTEGER NOT NULL REFERENCES plant DEFERRABLE INITIALLY DEFERRED,
  bed INTEGER NOT NULL REFERENCES bed DEFERRABLE INITIALLY DEFERRED,
  area INTEGER CHECK (area BETWEEN 0 AND 1000000000000),
  area_unit TEXT,
  area_mark TEXT CHECK (area_mark IN ('measured', 'about', 'method')),
  expected INTEGER CHECK (expected BETWEEN 0 AND 1000000000000),
  expected_unit TEXT,
  expected_mark TEXT CHECK (expected_mark IN ('measured', 'about', 'method')),
  note TEXT CHECK (note <> ''),
  CHECK ((area IS NULL) = (area_unit IS NULL) AND (area IS NULL) = (area_mark IS NULL)),
  CHECK ((expected IS NULL) = (expected_unit IS NULL) AND (expected IS NULL) = (expected_mark IS NULL))
) STRICT;
CREATE INDEX planting_plant ON planting (plant);
CREATE INDEX planting_bed ON planting (bed);

-- What went into a planting: seed.
CREATE TABLE planting_use (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES planting DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  material INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  lot INTEGER REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT NOT NULL,
  amount_mark TEXT NOT NULL CHECK (amount_mark IN ('measured', 'about', 'method'))
) STRICT;
CREATE INDEX planting_use_head ON planting_use (head);
CREATE INDEX planting_use_material ON planting_use (material);
CREATE INDEX planting_use_lot ON planting_use (lot);

-- A planting that stood before the books began, with what had gone into it.
CREATE TABLE standing_bed (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  planting INTEGER NOT NULL REFERENCES planting DEFERRABLE INITIALLY DEFERRED,
  cost INTEGER CHECK (cost BETWEEN 0 AND 1000000000000000000),
  time INTEGER CHECK (time BETWEEN 0 AND 52704000000000),
  time_unit TEXT CHECK (time_unit IN ('min', 'h')),
  time_mark TEXT CHECK (time_mark IN ('measured', 'about', 'method')),
  who INTEGER REFERENCES person DEFERRABLE INITIALLY DEFERRED,
  CHECK ((time IS NULL) = (time_unit IS NULL) AND (time IS NULL) = (time_mark IS NULL))
) STRICT;
CREATE INDEX standing_bed_planting ON standing_bed (planting);
CREATE INDEX standing_bed_who ON standing_bed (who);

-- Time in the garden.
CREATE TABLE tending (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  planting INTEGER NOT NULL REFERENCES planting DEFERRABLE INITIALLY DEFERRED,
  time INTEGER CHECK (time BETWEEN 0 AND 52704000000000),
  time_unit TEXT CHECK (time_unit IN ('min', 'h')),
  time_mark TEXT CHECK (time_mark IN ('measured', 'about', 'method')),
  who INTEGER REFERENCES person DEFERRABLE INITIALLY DEFERRED,
  what TEXT CHECK (what <> ''),
  CHECK ((time IS NULL) = (time_unit IS NULL) AND (time IS NULL) = (time_mark IS NULL))
) STRICT;
CREATE INDEX tending_planting ON tending (planting);
CREATE INDEX tending_who ON tending (who);

-- What was fed.
CREATE TABLE tending_use (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES tending DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  material INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  lot INTEGER REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT NOT NULL,
  amount_mark TEXT NOT NULL CHECK (amount_mark IN ('measured', 'about', 'method'))
) STRICT;
CREATE INDEX tending_use_head ON tending_use (head);
CREATE INDEX tending_use_material ON tending_use (material);
CREATE INDEX tending_use_lot ON tending_use (lot);

-- A revised expectation of what a planting will give over its whole life.
CREATE TABLE expected_total (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  planting INTEGER NOT NULL REFERENCES planting DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT NOT NULL,
  amount_mark TEXT NOT NULL CHECK (amount_mark IN ('measured', 'about', 'method'))
) STRICT;
CREATE INDEX expected_total_planting ON expected_total (planting);

-- What was cut or dug.
CREATE TABLE harvest (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  planting INTEGER NOT NULL REFERENCES planting DEFERRABLE INITIALLY DEFERRED,
  lot INTEGER NOT NULL REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT NOT NULL,
  amount_mark TEXT NOT NULL CHECK (amount_mark IN ('measured', 'about', 'method')),
  time INTEGER CHECK (time BETWEEN 0 AND 52704000000000),
  time_unit TEXT CHECK (time_unit IN ('min', 'h')),
  time_mark TEXT CHECK (time_mark IN ('measured', 'about', 'method')),
  who INTEGER REFERENCES person DEFERRABLE INITIALLY DEFERRED,
  note TEXT CHECK (note <> ''),
  CHECK ((time IS NULL) = (time_unit IS NULL) AND (time IS NULL) = (time_mark IS NULL))
) STRICT;
CREATE INDEX harvest_planting ON harvest (planting);
CREATE INDEX harvest_lot ON harvest (lot);
CREATE INDEX harvest_who ON harvest (who);

-- Seed kept from a bed: a by-product, worth what it would cost to buy.
CREATE TABLE seed_kept (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  planting INTEGER NOT NULL REFERENCES planting DEFERRABLE INITIALLY DEFERRED,
  lot INTEGER NOT NULL REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT NOT NULL,
  amount_mark TEXT NOT NULL CHECK (amount_mark IN ('measured', 'about', 'method')),
  time INTEGER CHECK (time BETWEEN 0 AND 52704000000000),
  time_unit TEXT CHECK (time_unit IN ('min', 'h')),
  time_mark TEXT CHECK (time_mark IN ('measured', 'about', 'method')),
  who INTEGER REFERENCES person DEFERRABLE INITIALLY DEFERRED,
  CHECK ((time IS NULL) = (time_unit IS NULL) AND (time IS NULL) = (time_mark IS NULL))
) STRICT;
CREATE INDEX seed_kept_planting ON seed_kept (planting);
CREATE INDEX seed_kept_lot ON seed_kept (lot);
CREATE INDEX seed_kept_who ON seed_kept (who);

-- Part of a bed lost: to frost, slugs, the neighbour's ball.
CREATE TABLE bed_lost (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  planting INTEGER NOT NULL REFERENCES planting DEFERRABLE INITIALLY DEFERRED,
  area INTEGER NOT NULL CHECK (area BETWEEN 0 AND 1000000000000),
  area_unit TEXT NOT NULL,
  area_mark TEXT NOT NULL CHECK (area_mark IN ('measured', 'about', 'method')),
  note TEXT CHECK (note <> '')
) STRICT;
CREATE INDEX bed_lost_planting ON bed_lost (planting);

-- How many of a lot of seed came up.
CREATE TABLE germination_try (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  lot INTEGER NOT NULL REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  tried INTEGER NOT NULL CHECK (tried BETWEEN 0 AND 1000000000),
  came_up INTEGER NOT NULL CHECK (came_up BETWEEN 0 AND 1000000000)
) STRICT;
CREATE INDEX germination_try_lot ON germination_try (lot);

-- The planting is done with: dug up, or failed.
CREATE TABLE planting_end (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  planting INTEGER NOT NULL REFERENCES planting DEFERRABLE INITIALLY DEFERRED,
  note TEXT CHECK (note <> '')
) STRICT;
CREATE INDEX planting_end_planting ON planting_end (planting);

-- What an assessor or the law says of a colour.
CREATE TABLE allowed (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  colour INTEGER NOT NULL REFERENCES colour DEFERRABLE INITIALLY DEFERRED,
  "where" TEXT NOT NULL CHECK ("where" <> ''),
  asked TEXT NOT NULL CHECK (asked <> ''),
  answer TEXT NOT NULL CHECK (answer IN ('yes', 'no', 'waiting'))
) STRICT;
CREATE INDEX allowed_colour ON allowed (colour);

CREATE TABLE method (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  name TEXT NOT NULL CHECK (name <> ''),
  colour INTEGER REFERENCES colour DEFERRABLE INITIALLY DEFERRED,
  low INTEGER CHECK (low BETWEEN 0 AND 1000000000000),
  low_unit TEXT,
  low_mark TEXT CHECK (low_mark IN ('measured', 'about', 'method')),
  usual INTEGER CHECK (usual BETWEEN 0 AND 1000000000000),
  usual_unit TEXT,
  usual_mark TEXT CHECK (usual_mark IN ('measured', 'about', 'method')),
  high INTEGER CHECK (high BETWEEN 0 AND 1000000000000),
  high_unit TEXT,
  high_mark TEXT CHECK (high_mark IN ('measured', 'about', 'method')),
  note TEXT CHECK (note <> ''),
  CHECK ((low IS NULL) = (low_unit IS NULL) AND (low IS NULL) = (low_mark IS NULL)),
  CHECK ((usual IS NULL) = (usual_unit IS NULL) AND (usual IS NULL) = (usual_mark IS NULL)),
  CHECK ((high IS NULL) = (high_unit IS NULL) AND (high IS NULL) = (high_mark IS NULL))
) STRICT;
CREATE INDEX method_colour ON method (colour);

-- `times`: done so often (washes). Minutes are those of one time.
CREATE TABLE method_step (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES method DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  what TEXT NOT NULL CHECK (what <> ''),
  temperature_low INTEGER CHECK (temperature_low BETWEEN -100000 AND 100000),
  temperature_high INTEGER CHECK (temperature_high BETWEEN -100000 AND 100000),
  acidity_low INTEGER CHECK (acidity_low BETWEEN -1500 AND 1500),
  acidity_high INTEGER CHECK (acidity_high BETWEEN -1500 AND 1500),
  hands_on INTEGER CHECK (hands_on BETWEEN 0 AND 52704000000000),
  hands_on_unit TEXT CHECK (hands_on_unit IN ('min', 'h')),
  hands_on_mark TEXT CHECK (hands_on_mark IN ('measured', 'about', 'method')),
  hands_on_per_kg INTEGER CHECK (hands_on_per_kg BETWEEN 0 AND 52704000000000),
  hands_on_per_kg_unit TEXT CHECK (hands_on_per_kg_unit IN ('min', 'h')),
  hands_on_per_kg_mark TEXT CHECK (hands_on_per_kg_mark IN ('measured', 'about', 'method')),
  waiting INTEGER CHECK (waiting BETWEEN 0 AND 52704000000000),
  waiting_unit TEXT CHECK (waiting_unit IN ('min', 'h')),
  waiting_mark TEXT CHECK (waiting_mark IN ('measured', 'about', 'method')),
  waiting_high INTEGER CHECK (waiting_high BETWEEN 0 AND 52704000000000),
  waiting_high_unit TEXT CHECK (waiting_high_unit IN ('min', 'h')),
  waiting_high_mark TEXT CHECK (waiting_high_mark IN ('measured', 'about', 'method')),
  watch TEXT NOT NULL CHECK (watch IN ('unattended', 'attended')),
  times INTEGER NOT NULL CHECK (times BETWEEN 0 AND 1000000000),
  caution TEXT NOT NULL CHECK (caution IN ('none', 'lye', 'dust', 'hot', 'sensitising', 'invasive')),
  CHECK ((hands_on IS NULL) = (hands_on_unit IS NULL) AND (hands_on IS NULL) = (hands_on_mark IS NULL)),
  CHECK ((hands_on_per_kg IS NULL) = (hands_on_per_kg_unit IS NULL) AND (hands_on_per_kg IS NULL) = (hands_on_per_kg_mark IS NULL)),
  CHECK ((waiting IS NULL) = (waiting_unit IS NULL) AND (waiting IS NULL) = (waiting_mark IS NULL)),
  CHECK ((waiting_high IS NULL) = (waiting_high_unit IS NULL) AND (waiting_high IS NULL) = (waiting_high_mark IS NULL))
) STRICT;
CREATE INDEX method_step_head ON method_step (head);

CREATE TABLE method_use (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES method DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  material INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT NOT NULL,
  amount_mark TEXT NOT NULL CHECK (amount_mark IN ('measured', 'about', 'method')),
  per TEXT NOT NULL CHECK (per IN ('vat', 'kg', 'litre'))
) STRICT;
CREATE INDEX method_use_head ON method_use (head);
CREATE INDEX method_use_material ON method_use (material);

-- One working of leaf, herb or root.
CREATE TABLE vat (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  colour INTEGER NOT NULL REFERENCES colour DEFERRABLE INITIALLY DEFERRED,
  method INTEGER REFERENCES method DEFERRABLE INITIALLY DEFERRED,
  hands_on INTEGER CHECK (hands_on BETWEEN 0 AND 52704000000000),
  hands_on_unit TEXT CHECK (hands_on_unit IN ('min', 'h')),
  hands_on_mark TEXT CHECK (hands_on_mark IN ('measured', 'about', 'method')),
  waiting INTEGER CHECK (waiting BETWEEN 0 AND 52704000000000),
  waiting_unit TEXT CHECK (waiting_unit IN ('min', 'h')),
  waiting_mark TEXT CHECK (waiting_mark IN ('measured', 'about', 'method')),
  who INTEGER REFERENCES person DEFERRABLE INITIALLY DEFERRED,
  washes INTEGER CHECK (washes BETWEEN 0 AND 1000000000),
  note TEXT CHECK (note <> ''),
  CHECK ((hands_on IS NULL) = (hands_on_unit IS NULL) AND (hands_on IS NULL) = (hands_on_mark IS NULL)),
  CHECK ((waiting IS NULL) = (waiting_unit IS NULL) AND (waiting IS NULL) = (waiting_mark IS NULL))
) STRICT;
CREATE INDEX vat_colour ON vat (colour);
CREATE INDEX vat_method ON vat (method);
CREATE INDEX vat_who ON vat (who);

-- What went into a vat.
CREATE TABLE vat_use (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES vat DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  material INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  lot INTEGER REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT NOT NULL,
  amount_mark TEXT NOT NULL CHECK (amount_mark IN ('measured', 'about', 'method'))
) STRICT;
CREATE INDEX vat_use_head ON vat_use (head);
CREATE INDEX vat_use_material ON vat_use (material);
CREATE INDEX vat_use_lot ON vat_use (lot);

-- Heat given to a vat: energy as metered, or water through a rise of temperature.
CREATE TABLE vat_heat (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES vat DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  source TEXT NOT NULL CHECK (source IN ('electricity', 'gas', 'wood', 'sun')),
  energy INTEGER CHECK (energy BETWEEN 0 AND 1000000000000),
  energy_unit TEXT,
  energy_mark TEXT CHECK (energy_mark IN ('measured', 'about', 'method')),
  water INTEGER CHECK (water BETWEEN 0 AND 1000000000000),
  water_unit TEXT,
  water_mark TEXT CHECK (water_mark IN ('measured', 'about', 'method')),
  heated_from INTEGER CHECK (heated_from BETWEEN -100000 AND 100000),
  heated_to INTEGER CHECK (heated_to BETWEEN -100000 AND 100000),
  efficiency_top INTEGER CHECK (efficiency_top BETWEEN 0 AND 100000000000),
  efficiency_bottom INTEGER CHECK (efficiency_bottom BETWEEN 1 AND 100000000000 AND efficiency_top <= efficiency_bottom),
  CHECK ((energy IS NULL) = (energy_unit IS NULL) AND (energy IS NULL) = (energy_mark IS NULL)),
  CHECK ((water IS NULL) = (water_unit IS NULL) AND (water IS NULL) = (water_mark IS NULL)),
  CHECK ((efficiency_top IS NULL) = (efficiency_bottom IS NULL))
) STRICT;
CREATE INDEX vat_heat_head ON vat_heat (head);

-- What was done at a vat, one step after another, with readings.
CREATE TABLE vat_step (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES vat DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  what TEXT NOT NULL CHECK (what <> ''),
  begun INTEGER CHECK (begun BETWEEN -719528 AND 2932896),
  begun_minute INTEGER CHECK (begun_minute BETWEEN 0 AND 1439),
  begun_utc_offset INTEGER CHECK (begun_utc_offset BETWEEN -840 AND 840),
  who INTEGER REFERENCES person DEFERRABLE INITIALLY DEFERRED,
  hands_on INTEGER CHECK (hands_on BETWEEN 0 AND 52704000000000),
  hands_on_unit TEXT CHECK (hands_on_unit IN ('min', 'h')),
  hands_on_mark TEXT CHECK (hands_on_mark IN ('measured', 'about', 'method')),
  waiting INTEGER CHECK (waiting BETWEEN 0 AND 52704000000000),
  waiting_unit TEXT CHECK (waiting_unit IN ('min', 'h')),
  waiting_mark TEXT CHECK (waiting_mark IN ('measured', 'about', 'method')),
  watch TEXT NOT NULL CHECK (watch IN ('unattended', 'attended')),
  temperature INTEGER CHECK (temperature BETWEEN -100000 AND 100000),
  acidity INTEGER CHECK (acidity BETWEEN -1500 AND 1500),
  method_step INTEGER CHECK (method_step BETWEEN 0 AND 1000000000),
  CHECK ((hands_on IS NULL) = (hands_on_unit IS NULL) AND (hands_on IS NULL) = (hands_on_mark IS NULL)),
  CHECK ((waiting IS NULL) = (waiting_unit IS NULL) AND (waiting IS NULL) = (waiting_mark IS NULL)),
  CHECK ((begun IS NULL) = (begun_minute IS NULL) AND (begun IS NULL) = (begun_utc_offset IS NULL))
) STRICT;
CREATE INDEX vat_step_head ON vat_step (head);
CREATE INDEX vat_step_who ON vat_step (who);

-- The vats on one plate, dried and weighed; no lot: they gave nothing.
CREATE TABLE drying (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  lot INTEGER REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT,
  amount_mark TEXT CHECK (amount_mark IN ('measured', 'about', 'method')),
  dryness TEXT CHECK (dryness IN ('dry', 'damp')),
  lost INTEGER CHECK (lost BETWEEN 0 AND 1000000000000),
  lost_unit TEXT,
  lost_mark TEXT CHECK (lost_mark IN ('measured', 'about', 'method')),
  time INTEGER CHECK (time BETWEEN 0 AND 52704000000000),
  time_unit TEXT CHECK (time_unit IN ('min', 'h')),
  time_mark TEXT CHECK (time_mark IN ('measured', 'about', 'method')),
  who INTEGER REFERENCES person DEFERRABLE INITIALLY DEFERRED,
  note TEXT CHECK (note <> ''),
  CHECK ((amount IS NULL) = (amount_unit IS NULL) AND (amount IS NULL) = (amount_mark IS NULL)),
  CHECK ((lost IS NULL) = (lost_unit IS NULL) AND (lost IS NULL) = (lost_mark IS NULL)),
  CHECK ((time IS NULL) = (time_unit IS NULL) AND (time IS NULL) = (time_mark IS NULL))
) STRICT;
CREATE INDEX drying_into_lot ON drying (lot);  -- drying_lot is a table
CREATE INDEX drying_who ON drying (who);

-- A vat on the plate.
CREATE TABLE drying_vat (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES drying DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  vat INTEGER NOT NULL REFERENCES vat DEFERRABLE INITIALLY DEFERRED
) STRICT;
CREATE INDEX drying_vat_head ON drying_vat (head);
CREATE INDEX drying_vat_vat ON drying_vat (vat);

-- A further lot from the same plate. `worth`: what one gram of it counts for beside one gram of the
-- drying's own lot in sharing the cost; for the same hue its strength, for another what its bars
-- sell for at the same dose. Blank: the same.
CREATE TABLE drying_lot (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES drying DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  lot INTEGER NOT NULL REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT NOT NULL,
  amount_mark TEXT NOT NULL CHECK (amount_mark IN ('measured', 'about', 'method')),
  worth_top INTEGER CHECK (worth_top BETWEEN 0 AND 100000000000),
  worth_bottom INTEGER CHECK (worth_bottom BETWEEN 1 AND 100000000000),
  CHECK ((worth_top IS NULL) = (worth_bottom IS NULL))
) STRICT;
CREATE INDEX drying_lot_head ON drying_lot (head);
CREATE INDEX drying_lot_lot ON drying_lot (lot);

-- How much of a powder gives the shade of one gram of what it is held against.
CREATE TABLE shade_test (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  lot INTEGER NOT NULL REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  against INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  needed_for_same_top INTEGER CHECK (needed_for_same_top BETWEEN 0 AND 100000000000),
  needed_for_same_bottom INTEGER CHECK (needed_for_same_bottom BETWEEN 1 AND 100000000000),
  note TEXT CHECK (note <> ''),
  CHECK ((needed_for_same_top IS NULL) = (needed_for_same_bottom IS NULL))
) STRICT;
CREATE INDEX shade_test_lot ON shade_test (lot);
CREATE INDEX shade_test_against ON shade_test (against);

-- How a loaf is made.
CREATE TABLE recipe (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  name TEXT NOT NULL CHECK (name <> ''),
  superfat_top INTEGER NOT NULL CHECK (superfat_top BETWEEN 0 AND 100000000000),
  superfat_bottom INTEGER NOT NULL CHECK (superfat_bottom BETWEEN 1 AND 100000000000 AND superfat_top <= superfat_bottom),
  lye_concentration_top INTEGER NOT NULL CHECK (lye_concentration_top BETWEEN 0 AND 100000000000),
  lye_concentration_bottom INTEGER NOT NULL CHECK (lye_concentration_bottom BETWEEN 1 AND 100000000000 AND lye_concentration_top <= lye_concentration_bottom),
  bars_per_loaf INTEGER NOT NULL CHECK (bars_per_loaf BETWEEN 0 AND 1000000000),
  declared_weight INTEGER NOT NULL CHECK (declared_weight BETWEEN 0 AND 1000000000000),
  declared_weight_unit TEXT NOT NULL,
  declared_weight_mark TEXT NOT NULL CHECK (declared_weight_mark IN ('measured', 'about', 'method')),
  cure_days INTEGER NOT NULL CHECK (cure_days BETWEEN 0 AND 1000000000),
  oils INTEGER CHECK (oils BETWEEN 0 AND 1000000000000),
  oils_unit TEXT,
  oils_mark TEXT CHECK (oils_mark IN ('measured', 'about', 'method')),
  potassium_share_top INTEGER CHECK (potassium_share_top BETWEEN 0 AND 100000000000),
  potassium_share_bottom INTEGER CHECK (potassium_share_bottom BETWEEN 1 AND 100000000000 AND potassium_share_top <= potassium_share_bottom),
  best_days INTEGER CHECK (best_days BETWEEN 0 AND 1000000000),
  CHECK ((oils IS NULL) = (oils_unit IS NULL) AND (oils IS NULL) = (oils_mark IS NULL)),
  CHECK ((potassium_share_top IS NULL) = (potassium_share_bottom IS NULL))
) STRICT;

-- Oils and scent for one loaf.
CREATE TABLE recipe_part (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES recipe DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  material INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT,
  amount_mark TEXT CHECK (amount_mark IN ('measured', 'about', 'method')),
  share_top INTEGER CHECK (share_top BETWEEN 0 AND 100000000000),
  share_bottom INTEGER CHECK (share_bottom BETWEEN 1 AND 100000000000 AND share_top <= share_bottom),
  CHECK ((amount IS NULL) = (amount_unit IS NULL) AND (amount IS NULL) = (amount_mark IS NULL)),
  CHECK ((share_top IS NULL) = (share_bottom IS NULL))
) STRICT;
CREATE INDEX recipe_part_head ON recipe_part (head);
CREATE INDEX recipe_part_material ON recipe_part (material);

-- What wraps one bar.
CREATE TABLE recipe_wrapping (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES recipe DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  material INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  per_bar INTEGER NOT NULL CHECK (per_bar BETWEEN 0 AND 1000000000000),
  per_bar_unit TEXT NOT NULL,
  per_bar_mark TEXT NOT NULL CHECK (per_bar_mark IN ('measured', 'about', 'method'))
) STRICT;
CREATE INDEX recipe_wrapping_head ON recipe_wrapping (head);
CREATE INDEX recipe_wrapping_material ON recipe_wrapping (material);

-- A recipe in one colouring makes one kind of bar; dose in grams of the colour's standard for a loaf.
CREATE TABLE recipe_colouring (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES recipe DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  colouring TEXT NOT NULL CHECK (colouring IN ('plain', 'bought', 'own')),
  colour INTEGER REFERENCES colour DEFERRABLE INITIALLY DEFERRED,
  dose INTEGER CHECK (dose BETWEEN 0 AND 1000000000000),
  dose_unit TEXT,
  dose_mark TEXT CHECK (dose_mark IN ('measured', 'about', 'method')),
  bar INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  CHECK ((dose IS NULL) = (dose_unit IS NULL) AND (dose IS NULL) = (dose_mark IS NULL))
) STRICT;
CREATE INDEX recipe_colouring_head ON recipe_colouring (head);
CREATE INDEX recipe_colouring_colour ON recipe_colouring (colour);
CREATE INDEX recipe_colouring_bar ON recipe_colouring (bar);

-- Loaves poured.
CREATE TABLE batch (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  recipe INTEGER NOT NULL REFERENCES recipe DEFERRABLE INITIALLY DEFERRED,
  bar INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  loaves INTEGER NOT NULL CHECK (loaves BETWEEN 0 AND 1000000000),
  split_from INTEGER REFERENCES batch DEFERRABLE INITIALLY DEFERRED,
  split_share_top INTEGER CHECK (split_share_top BETWEEN 0 AND 100000000000),
  split_share_bottom INTEGER CHECK (split_share_bottom BETWEEN 1 AND 100000000000 AND split_share_top <= split_share_bottom),
  note TEXT CHECK (note <> ''),
  CHECK ((split_share_top IS NULL) = (split_share_bottom IS NULL))
) STRICT;
CREATE INDEX batch_recipe ON batch (recipe);
CREATE INDEX batch_bar ON batch (bar);
CREATE INDEX batch_split_from ON batch (split_from);

-- What went into a batch.
CREATE TABLE batch_use (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES batch DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  material INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  lot INTEGER REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT NOT NULL,
  amount_mark TEXT NOT NULL CHECK (amount_mark IN ('measured', 'about', 'method'))
) STRICT;
CREATE INDEX batch_use_head ON batch_use (head);
CREATE INDEX batch_use_material ON batch_use (material);
CREATE INDEX batch_use_lot ON batch_use (lot);

-- Bench time of a batch.
CREATE TABLE batch_time (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES batch DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  task TEXT NOT NULL CHECK (task IN ('pour', 'colour', 'other')),
  who INTEGER REFERENCES person DEFERRABLE INITIALLY DEFERRED,
  time INTEGER NOT NULL CHECK (time BETWEEN 0 AND 52704000000000),
  time_unit TEXT NOT NULL CHECK (time_unit IN ('min', 'h')),
  time_mark TEXT NOT NULL CHECK (time_mark IN ('measured', 'about', 'method'))
) STRICT;
CREATE INDEX batch_time_head ON batch_time (head);
CREATE INDEX batch_time_who ON batch_time (who);

-- Bars cut from a batch; saleable from the day cured.
CREATE TABLE cut (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  batch INTEGER NOT NULL REFERENCES batch DEFERRABLE INITIALLY DEFERRED,
  lot INTEGER NOT NULL REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  bars INTEGER NOT NULL CHECK (bars BETWEEN 0 AND 1000000000),
  rejected INTEGER NOT NULL CHECK (rejected BETWEEN 0 AND 1000000000),
  cured INTEGER NOT NULL CHECK (cured BETWEEN -719528 AND 2932896),
  best_before INTEGER CHECK (best_before BETWEEN -719528 AND 2932896),
  ends INTEGER CHECK (ends BETWEEN 0 AND 1000000000000),
  ends_unit TEXT,
  ends_mark TEXT CHECK (ends_mark IN ('measured', 'about', 'method')),
  time INTEGER CHECK (time BETWEEN 0 AND 52704000000000),
  time_unit TEXT CHECK (time_unit IN ('min', 'h')),
  time_mark TEXT CHECK (time_mark IN ('measured', 'about', 'method')),
  who INTEGER REFERENCES person DEFERRABLE INITIALLY DEFERRED,
  note TEXT CHECK (note <> ''),
  CHECK ((ends IS NULL) = (ends_unit IS NULL) AND (ends IS NULL) = (ends_mark IS NULL)),
  CHECK ((time IS NULL) = (time_unit IS NULL) AND (time IS NULL) = (time_mark IS NULL))
) STRICT;
CREATE INDEX cut_batch ON cut (batch);
CREATE INDEX cut_lot ON cut (lot);
CREATE INDEX cut_who ON cut (who);

-- Bars of one lot on the scale together; they go on losing weight.
CREATE TABLE weighing (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  lot INTEGER NOT NULL REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  bars INTEGER NOT NULL CHECK (bars BETWEEN 0 AND 1000000000),
  total INTEGER NOT NULL CHECK (total BETWEEN 0 AND 1000000000000),
  total_unit TEXT NOT NULL,
  total_mark TEXT NOT NULL CHECK (total_mark IN ('measured', 'about', 'method'))
) STRICT;
CREATE INDEX weighing_lot ON weighing (lot);

-- Bars wrapped and labelled.
CREATE TABLE wrapping (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  lot INTEGER NOT NULL REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  bars INTEGER NOT NULL CHECK (bars BETWEEN 0 AND 1000000000),
  time INTEGER CHECK (time BETWEEN 0 AND 52704000000000),
  time_unit TEXT CHECK (time_unit IN ('min', 'h')),
  time_mark TEXT CHECK (time_mark IN ('measured', 'about', 'method')),
  who INTEGER REFERENCES person DEFERRABLE INITIALLY DEFERRED,
  CHECK ((time IS NULL) = (time_unit IS NULL) AND (time IS NULL) = (time_mark IS NULL))
) STRICT;
CREATE INDEX wrapping_lot ON wrapping (lot);
CREATE INDEX wrapping_who ON wrapping (who);

-- What they were wrapped in.
CREATE TABLE wrapping_use (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES wrapping DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  material INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  lot INTEGER REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT NOT NULL,
  amount_mark TEXT NOT NULL CHECK (amount_mark IN ('measured', 'about', 'method'))
) STRICT;
CREATE INDEX wrapping_use_head ON wrapping_use (head);
CREATE INDEX wrapping_use_material ON wrapping_use (material);
CREATE INDEX wrapping_use_lot ON wrapping_use (lot);

-- A lot that must not be sold or used: lye-heavy bars, a recalled oil. All that was made with it is
-- held with it, until released.
CREATE TABLE hold (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  lot INTEGER NOT NULL REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  why TEXT NOT NULL CHECK (why <> '')
) STRICT;
CREATE INDEX hold_lot ON hold (lot);

-- The lot is no longer held, whatever it was held for: by a Hold, or by the program itself.
CREATE TABLE "release" (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  lot INTEGER NOT NULL REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  why TEXT NOT NULL CHECK (why <> '')
) STRICT;
CREATE INDEX release_lot ON "release" (lot);

-- Loaves to be poured on a day; `noted`: when the maker made up their mind.
CREATE TABLE plan (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  noted INTEGER NOT NULL CHECK (noted BETWEEN -719528 AND 2932896),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  recipe INTEGER NOT NULL REFERENCES recipe DEFERRABLE INITIALLY DEFERRED,
  bar INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  loaves INTEGER NOT NULL CHECK (loaves BETWEEN 0 AND 1000000000)
) STRICT;
CREATE INDEX plan_recipe ON plan (recipe);
CREATE INDEX plan_bar ON plan (bar);

-- A day at a stall; cash_in_tin is counted at the end, float included.
CREATE TABLE fair (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  name TEXT NOT NULL CHECK (name <> ''),
  fee INTEGER NOT NULL CHECK (fee BETWEEN 0 AND 1000000000000000000),
  travel INTEGER CHECK (travel BETWEEN 0 AND 1000000000000000000),
  change_float INTEGER CHECK (change_float BETWEEN 0 AND 1000000000000000000),
  cash_in_tin INTEGER CHECK (cash_in_tin BETWEEN 0 AND 1000000000000000000),
  card_takings INTEGER CHECK (card_takings BETWEEN 0 AND 1000000000000000000),
  card_payments INTEGER CHECK (card_payments BETWEEN 0 AND 1000000000),
  ended TEXT NOT NULL CHECK (ended IN ('as usual', 'cut short', 'did not happen')),
  noted INTEGER CHECK (noted BETWEEN -719528 AND 2932896),
  fee_paid INTEGER CHECK (fee_paid BETWEEN -719528 AND 2932896),
  open INTEGER CHECK (open BETWEEN 0 AND 52704000000000),
  open_unit TEXT CHECK (open_unit IN ('min', 'h')),
  open_mark TEXT CHECK (open_mark IN ('measured', 'about', 'method')),
  reductions INTEGER CHECK (reductions BETWEEN 0 AND 1000000000000000000),
  note TEXT CHECK (note <> ''),
  CHECK ((open IS NULL) = (open_unit IS NULL) AND (open IS NULL) = (open_mark IS NULL))
) STRICT;

-- Bars taken to a fair and brought back; no price: the price list.
CREATE TABLE fair_line (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES fair DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  bar INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  lot INTEGER REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  taken INTEGER NOT NULL CHECK (taken BETWEEN 0 AND 1000000000),
  back INTEGER NOT NULL CHECK (back BETWEEN 0 AND 1000000000),
  price INTEGER CHECK (price BETWEEN 0 AND 1000000000000000000)
) STRICT;
CREATE INDEX fair_line_head ON fair_line (head);
CREATE INDEX fair_line_bar ON fair_line (bar);
CREATE INDEX fair_line_lot ON fair_line (lot);

-- So many bars for one price: how many such bundles went.
CREATE TABLE fair_bundle (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES fair DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  what TEXT NOT NULL CHECK (what <> ''),
  bars INTEGER NOT NULL CHECK (bars BETWEEN 0 AND 1000000000),
  price INTEGER NOT NULL CHECK (price BETWEEN 0 AND 1000000000000000000),
  sold INTEGER NOT NULL CHECK (sold BETWEEN 0 AND 1000000000)
) STRICT;
CREATE INDEX fair_bundle_head ON fair_bundle (head);

-- Hours at a fair.
CREATE TABLE fair_time (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES fair DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  who INTEGER REFERENCES person DEFERRABLE INITIALLY DEFERRED,
  time INTEGER NOT NULL CHECK (time BETWEEN 0 AND 52704000000000),
  time_unit TEXT NOT NULL CHECK (time_unit IN ('min', 'h')),
  time_mark TEXT NOT NULL CHECK (time_mark IN ('measured', 'about', 'method'))
) STRICT;
CREATE INDEX fair_time_head ON fair_time (head);
CREATE INDEX fair_time_who ON fair_time (who);

-- Bars sold anywhere but at a fair.
CREATE TABLE sale (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  channel TEXT NOT NULL CHECK (channel IN ('cash', 'card', 'online', 'wholesale', 'other')),
  order_number TEXT CHECK (order_number <> ''),
  buyer TEXT CHECK (buyer <> ''),
  postage INTEGER CHECK (postage BETWEEN 0 AND 1000000000000000000),
  postage_paid INTEGER CHECK (postage_paid BETWEEN 0 AND 1000000000000000000),
  time INTEGER CHECK (time BETWEEN 0 AND 52704000000000),
  time_unit TEXT CHECK (time_unit IN ('min', 'h')),
  time_mark TEXT CHECK (time_mark IN ('measured', 'about', 'method')),
  who INTEGER REFERENCES person DEFERRABLE INITIALLY DEFERRED,
  CHECK ((time IS NULL) = (time_unit IS NULL) AND (time IS NULL) = (time_mark IS NULL))
) STRICT;
CREATE INDEX sale_who ON sale (who);

-- Bars of one kind in a sale; price of one bar.
CREATE TABLE sale_line (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES sale DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  bar INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  lot INTEGER REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  bars INTEGER NOT NULL CHECK (bars BETWEEN 0 AND 1000000000),
  price INTEGER NOT NULL CHECK (price BETWEEN 0 AND 1000000000000000000)
) STRICT;
CREATE INDEX sale_line_head ON sale_line (head);
CREATE INDEX sale_line_bar ON sale_line (bar);
CREATE INDEX sale_line_lot ON sale_line (lot);

-- Powder made here that was sold as it is; price of all of it.
CREATE TABLE sale_powder (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES sale DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  pigment INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  lot INTEGER REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 1000000000000),
  amount_unit TEXT NOT NULL,
  amount_mark TEXT NOT NULL CHECK (amount_mark IN ('measured', 'about', 'method')),
  price INTEGER NOT NULL CHECK (price BETWEEN 0 AND 1000000000000000000)
) STRICT;
CREATE INDEX sale_powder_head ON sale_powder (head);
CREATE INDEX sale_powder_pigment ON sale_powder (pigment);
CREATE INDEX sale_powder_lot ON sale_powder (lot);

-- Bars left at somebody's shop: out, not sold; the shop keeps a share of what they fetch.
CREATE TABLE out_at_shop (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  "where" TEXT NOT NULL CHECK ("where" <> ''),
  bar INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  lot INTEGER REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  bars INTEGER NOT NULL CHECK (bars BETWEEN 0 AND 1000000000),
  price INTEGER NOT NULL CHECK (price BETWEEN 0 AND 1000000000000000000),
  share_top INTEGER CHECK (share_top BETWEEN 0 AND 100000000000),
  share_bottom INTEGER CHECK (share_bottom BETWEEN 1 AND 100000000000 AND share_top <= share_bottom),
  CHECK ((share_top IS NULL) = (share_bottom IS NULL))
) STRICT;
CREATE INDEX out_at_shop_bar ON out_at_shop (bar);
CREATE INDEX out_at_shop_lot ON out_at_shop (lot);

-- What became of bars that were out: sold there, or come back.
CREATE TABLE out_settled (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  out INTEGER NOT NULL REFERENCES out_at_shop DEFERRABLE INITIALLY DEFERRED,
  sold INTEGER NOT NULL CHECK (sold BETWEEN 0 AND 1000000000),
  back INTEGER NOT NULL CHECK (back BETWEEN 0 AND 1000000000),
  note TEXT CHECK (note <> '')
) STRICT;
CREATE INDEX out_settled_out ON out_settled (out);

-- Bars a customer brought or sent back.
CREATE TABLE returned (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  lot INTEGER NOT NULL REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  bars INTEGER NOT NULL CHECK (bars BETWEEN 0 AND 1000000000),
  refund INTEGER NOT NULL CHECK (refund BETWEEN 0 AND 1000000000000000000),
  fit TEXT NOT NULL CHECK (fit IN ('to sell', 'spoiled')),
  note TEXT CHECK (note <> '')
) STRICT;
CREATE INDEX returned_lot ON returned (lot);

-- The price list: the shelf price of a bar from a day on.
CREATE TABLE price (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  "from" INTEGER NOT NULL CHECK ("from" BETWEEN -719528 AND 2932896),
  bar INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  shelf INTEGER NOT NULL CHECK (shelf BETWEEN 0 AND 1000000000000000000)
) STRICT;
CREATE INDEX price_bar ON price (bar);

-- What a shop that sells on is asked for a bar, from a day on.
CREATE TABLE wholesale_price (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  "from" INTEGER NOT NULL CHECK ("from" BETWEEN -719528 AND 2932896),
  bar INTEGER NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  price INTEGER NOT NULL CHECK (price BETWEEN 0 AND 1000000000000000000)
) STRICT;
CREATE INDEX wholesale_price_bar ON wholesale_price (bar);

-- What a colour's own powder would sell for as powder, from a day on.
CREATE TABLE powder_price (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  "from" INTEGER NOT NULL CHECK ("from" BETWEEN -719528 AND 2932896),
  colour INTEGER NOT NULL REFERENCES colour DEFERRABLE INITIALLY DEFERRED,
  pack INTEGER NOT NULL CHECK (pack BETWEEN 0 AND 1000000000000),
  pack_unit TEXT NOT NULL,
  pack_mark TEXT NOT NULL CHECK (pack_mark IN ('measured', 'about', 'method')),
  price INTEGER NOT NULL CHECK (price BETWEEN 0 AND 1000000000000000000)
) STRICT;
CREATE INDEX powder_price_colour ON powder_price (colour);

-- What the maker believes people would pay for a bar of this colour.
CREATE TABLE price_belief (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  colour INTEGER NOT NULL REFERENCES colour DEFERRABLE INITIALLY DEFERRED,
  plain INTEGER CHECK (plain BETWEEN 0 AND 1000000000000000000),
  bought INTEGER CHECK (bought BETWEEN 0 AND 1000000000000000000),
  own INTEGER CHECK (own BETWEEN 0 AND 1000000000000000000)
) STRICT;
CREATE INDEX price_belief_colour ON price_belief (colour);

-- Time at one or several things in one go; shared over them by leaf, area or bars.
CREATE TABLE sitting (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  who INTEGER REFERENCES person DEFERRABLE INITIALLY DEFERRED,
  time INTEGER NOT NULL CHECK (time BETWEEN 0 AND 52704000000000),
  time_unit TEXT NOT NULL CHECK (time_unit IN ('min', 'h')),
  time_mark TEXT NOT NULL CHECK (time_mark IN ('measured', 'about', 'method')),
  note TEXT CHECK (note <> '')
) STRICT;
CREATE INDEX sitting_who ON sitting (who);

-- One of them: exactly one of these is named.
CREATE TABLE sitting_at (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  head INTEGER NOT NULL REFERENCES sitting DEFERRABLE INITIALLY DEFERRED,
  position INTEGER NOT NULL CHECK (position BETWEEN 1 AND 1000000000),
  tending INTEGER REFERENCES tending DEFERRABLE INITIALLY DEFERRED,
  harvest INTEGER REFERENCES harvest DEFERRABLE INITIALLY DEFERRED,
  vat INTEGER REFERENCES vat DEFERRABLE INITIALLY DEFERRED,
  drying INTEGER REFERENCES drying DEFERRABLE INITIALLY DEFERRED,
  batch INTEGER REFERENCES batch DEFERRABLE INITIALLY DEFERRED,
  cut INTEGER REFERENCES cut DEFERRABLE INITIALLY DEFERRED,
  wrapping INTEGER REFERENCES wrapping DEFERRABLE INITIALLY DEFERRED,
  fair INTEGER REFERENCES fair DEFERRABLE INITIALLY DEFERRED,
  sale INTEGER REFERENCES sale DEFERRABLE INITIALLY DEFERRED
) STRICT;
CREATE INDEX sitting_at_head ON sitting_at (head);
CREATE INDEX sitting_at_tending ON sitting_at (tending);
CREATE INDEX sitting_at_harvest ON sitting_at (harvest);
CREATE INDEX sitting_at_vat ON sitting_at (vat);
CREATE INDEX sitting_at_drying ON sitting_at (drying);
CREATE INDEX sitting_at_batch ON sitting_at (batch);
CREATE INDEX sitting_at_cut ON sitting_at (cut);
CREATE INDEX sitting_at_wrapping ON sitting_at (wrapping);
CREATE INDEX sitting_at_fair ON sitting_at (fair);
CREATE INDEX sitting_at_sale ON sitting_at (sale);

-- Hours that belong to nothing else: cleaning, paperwork, posting.
CREATE TABLE work (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  who INTEGER REFERENCES person DEFERRABLE INITIALLY DEFERRED,
  time INTEGER NOT NULL CHECK (time BETWEEN 0 AND 52704000000000),
  time_unit TEXT NOT NULL CHECK (time_unit IN ('min', 'h')),
  time_mark TEXT NOT NULL CHECK (time_mark IN ('measured', 'about', 'method')),
  what TEXT NOT NULL CHECK (what <> '')
) STRICT;
CREATE INDEX work_who ON work (who);

-- Ten words now, a proper record later.
CREATE TABLE jotting (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  text TEXT NOT NULL CHECK (text <> ''),
  done INTEGER CHECK (done BETWEEN -719528 AND 2932896)
) STRICT;

-- What the maker answered from memory to one of the ten questions.
CREATE TABLE guess (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  colour INTEGER REFERENCES colour DEFERRABLE INITIALLY DEFERRED,
  question TEXT NOT NULL CHECK (question <> ''),
  answer TEXT NOT NULL CHECK (answer <> '')
) STRICT;
CREATE INDEX guess_colour ON guess (colour);

-- What the maker wants to remember of a record of any kind, and the photograph or bill that belongs to it.
CREATE TABLE note (
  key INTEGER PRIMARY KEY CHECK (key > 0),
  code TEXT NOT NULL CHECK (code <> ''),
  date INTEGER NOT NULL CHECK (date BETWEEN -719528 AND 2932896),
  about_table TEXT NOT NULL CHECK (about_table <> ''),
  about_key INTEGER NOT NULL CHECK (about_key > 0),
  text TEXT CHECK (text <> ''),
  file TEXT CHECK (file <> '')
) STRICT;
