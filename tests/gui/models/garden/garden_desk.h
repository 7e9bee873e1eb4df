// garden_desk.h - a desk with a bed of indigo on it, to write for the garden at.
#pragma once

#include <set>

#include "gui/models/form/field_values.h"
#include "gui/models/place.h"
#include "tests/gui/models/form/desk.h"

namespace dyestead::test {

// Indigo sown on 2 April 2026 in a bed of 5 m2, 2 kg expected of a square metre; an hour is to bring 12.
struct GardenDesk : Desk {
    Key<Person> maker;
    Key<Material> seed;
    Key<Material> compost;
    Key<Lot> packet;
    Key<Plant> indigo;
    Key<Bed> bed;
    Key<Planting> planting;

    explicit GardenDesk(Day writing_for = day_of(2026, 7, 3)) : Desk{writing_for} {
        builder.add<About>().currency = "GBP";
        maker = builder.person(day_of(2026, 1, 1), Money::units(12));
        seed = builder.made("indigo seed", MaterialKind::seed);
        compost = builder.material("compost", Purpose::feed, HeldAs::volume);
        packet = builder.delivery(day_of(2026, 2, 1), seed, grams(10), Money::units(5));
        builder.delivery(
            day_of(2026, 2, 1), compost, {Quantity::microlitres(80'000'000), Unit::l, Mark::measured}, Money::units(8));
        auto& plant = builder.add<Plant>();
        plant.name = "Indigo";
        plant.part = "leaf";
        plant.low = grams(1'000);
        plant.usual = grams(2'000);
        plant.high = grams(3'000);
        plant.days_to_harvest = 100;
        indigo = plant.key;
        auto& ground = builder.add<Bed>();
        ground.name = "Long bed";
        ground.area = square_metres(5);
        bed = ground.key;
        auto& sown = builder.add<Planting>();
        sown.sown = day_of(2026, 4, 2);
        sown.plant = indigo;
        sown.bed = bed;
        planting = sown.key;
        open();
    }

    template <class Fact>
    std::string code(Key<Fact> key) {
        return gui::KeyCodes{}.code_of(key);
    }
    void type(gui::Form& form, std::initializer_list<std::pair<const char*, std::string>> texts) {
        for (const auto& [id, text] : texts) form.type(id, text, writing());
    }
    template <class Fact>
    const Fact& last() {
        return shop.all<Fact>().back();
    }
};

// No two letters for Alt alike, and no more than five fields that are not behind "More".
inline bool is_in_bounds(const gui::Form& form) {
    std::set<char> letters;
    int shown = 0;
    for (const gui::FormField& field : form.fields) {
        if (!field.more) ++shown;
        const auto at = field.label.find('&');
        if (at == std::string::npos) return false;
        const char letter = static_cast<char>(field.label[at + 1] | 0x20);
        if (!letters.insert(letter).second) return false;
    }
    return shown <= 5;
}

}  // namespace dyestead::test
