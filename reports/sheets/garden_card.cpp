#include "domain/ledger/in_force.h"
#include "domain/text/amounts.h"
#include "reports/add_blocks.h"
#include "reports/sheets/sheet.h"
#include "reports/sheets/sheet_parts.h"
#include "reports/words/caution_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

constexpr std::size_t kLines = 16;

Table which_planting() {
    Table table{.title = tr("Which planting"),
                .columns = {{.heading = tr("plant"), .room = kRoomForWords},
                            {.heading = tr("bed"), .room = kRoomForWords},
                            {.heading = tr("m²"), .room = kRoomForFigure},
                            {.heading = tr("sown on"), .room = kRoomForDay}}};
    add_empty_rows(table, 1);
    return table;
}

std::string what_it_is(const Shop& shop, const Planting& planting) {
    const Plant* plant = shop.find(planting.plant);
    const Bed* bed = shop.find(planting.bed);
    if (plant == nullptr || bed == nullptr) return {};
    return say("{plant} ({latin}), for its {part}; {area} in {bed}, sown on {day}.", arg("plant", plant->name),
               arg("latin", plant->latin), arg("part", plant->part),
               arg("area", print(planting.area.value_or(bed->area))), arg("bed", bed->name),
               arg("day", shown_date(planting.sown)));
}

std::vector<std::string> cautions_of(const Shop& shop, const Ledger& ledger, const Planting* planting) {
    std::vector<std::string> said{
        tr("Some dye plants may not be grown everywhere, and some colours may not be sold in soap everywhere. Ask "
           "first.")};
    const Plant* plant = planting == nullptr ? nullptr : shop.find(planting->plant);
    if (plant == nullptr) return said;
    said.push_back(caution_sentence(plant->caution, plant->name));
    if (plant->colour)
        said.push_back(allowed_sentence(
            colour_in_a_sentence(shop, *plant->colour), allowed_in_force(shop, *plant->colour, ledger.as_of)));
    return said;
}

}  // namespace

Sheet garden_card(const Shop& shop, const Ledger& ledger, const Planting* planting) {
    Sheet card{.title = planting == nullptr
                            ? tr("Garden card")
                            : say("Garden card: {plant}, {bed}", arg("plant", called(shop, planting->plant)),
                                  arg("bed", called(shop, planting->bed)))};
    if (planting == nullptr)
        card.blocks.push_back(which_planting());
    else
        card.blocks.push_back(Paragraph{what_it_is(shop, *planting)});
    card.blocks.push_back(cautions(cautions_of(shop, ledger, planting)));
    Table done{.title = tr("What was done, cut or lost"),
               .columns = {{.heading = tr("on"), .room = kRoomForDay},
                           {.heading = tr("what"), .room = kRoomForWords},
                           {.heading = tr("how long"), .room = kRoomForTime},
                           {.heading = tr("who"), .room = kRoomForDay},
                           {.heading = tr("how much was cut"), .room = kRoomForName}}};
    add_empty_rows(done, kLines);
    done.note =
        tr("About is enough: ~2 h, 2 buckets. Typed in at the Garden with \"Time here\" and \"Cut\"; time over several "
           "beds is shared by their ground.");
    card.blocks.push_back(std::move(done));
    return card;
}

}  // namespace dyestead::reports
