// pigment_pool.h - what did home pigment of a colour take, failures in?
//
// The pool of a window: the vats finished in it (dried, or recorded as nothing), with what the harvest
// they used carried, whatever year that fell in; what plantings of the colour closed in the window
// left over or lost; harvested leaf that spoiled in it; and bills for this dye alone that not growing
// would have saved. Over the grams dried less powder lost later; powder given away or tested was made.
#pragma once

#include <map>
#include <vector>

#include "domain/decisions/records.h"
#include "domain/decisions/stand.h"
#include "domain/decisions/window.h"

namespace dyestead {

// Powder of the colour from one plate.
struct PowderLot {
    const Lot* lot = nullptr;
    double grams = 0;
    double lost = 0;  // later
    double left() const { return grams - lost; }
};

// A vat is finished when it is dried, or recorded as nothing. One weighed damp is not: how much of that was
// water nobody knows, so it is left out as a vat not dry is, its cost and its harvest too.
struct FinishedVat {
    const Vat* vat = nullptr;
    Day dried{};
    int season = 0;  // the year most of its harvest was cut in; of a vat without harvest, its own
    // Less the share that powder of another colour from the same plate took in the books.
    Cost own;       // at the vat
    Cost carried;   // with its harvest
    double kg = 0;  // of harvest
    bool shared_plate = false;
    // Vats dried on one plate share these by kg of harvest, equally where none was weighed.
    std::vector<PowderLot> powder;  // none: it gave nothing
    double grams = 0;
    double grams_lost = 0;
    Cost booked;  // of the whole plate, as it came into the powder's lot
    double plate_grams = 0;
    std::vector<const Movement*> went_in;  // of the ledger

    Cost all() const { return own + carried; }
    bool failed() const { return powder.empty(); }
};

// The first drying that lists each vat of a colour, by the ledger's day: later ones do not count.
std::map<Key<Vat>, const Drying*> first_dryings(const Records& records, Key<Colour> colour);

// All vats of a colour dried up to the ledger's day, by day dried.
std::vector<FinishedVat> finished_vats(const Records& records, Key<Colour> colour);

struct AtVatAndBed {
    Cost vat;
    Cost garden;
    Cost all() const { return vat + garden; }
};

struct PigmentPool {
    int vats = 0;
    int failed = 0;
    int without_method = 0;
    double kg = 0;
    double grams_dried = 0;
    double grams_lost = 0;
    Cost vat;     // at the vats, bills for vats too
    Cost garden;  // with the harvest, and what failed before it was vatted
    // Of what went in at the vats, what does not grow with the harvest (method_split.h).
    double vat_cash_fixed = 0;
    double vat_minutes_fixed = 0;
    // of these
    AtVatAndBed failed_vats;
    Cost closed;     // what plantings closed in these days had left and took afterwards, and parts of beds lost
    Cost never_cut;  // of these, what plantings in plantings_lost took
    Cost leaf_lost;
    AtVatAndBed bills;
    std::vector<const Planting*> plantings_lost;  // closed, never harvested

    Cost all() const { return vat + garden; }
    double grams() const { return grams_dried - grams_lost; }
};

// `vats` are those that count; `days` is when plantings closed, leaf spoiled and bills came.
// A bill for the dye work in general is shared over the colours by vats finished in those days.
PigmentPool pigment_pool(const Records& records, Key<Colour> colour, const std::vector<FinishedVat>& vats, Window days);

// The pool without what is spent either way for one who stands there.
PigmentPool still_to_spend(PigmentPool pool, Stand stand);

// The share of a bill for dye work that is this colour's.
Ratio share_of_dye_bill(const Records& records, const PaidOut& bill, Key<Colour> colour, Window days);

bool is_of_colour(const Shop& shop, const Planting& planting, Key<Colour> colour);

}  // namespace dyestead
