#include "reports/plants_report.h"

#include "reports/add_blocks.h"
#include "reports/begin_document.h"
#include "reports/cells.h"
#include "reports/words/caution_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

std::string headline(const Shop& shop, const std::vector<PlantCompared>& plants, const std::string& currency) {
    if (plants.empty()) return say("No vat is on record yet, so no plant can be held against another.");
    const PlantCompared& best = plants.front();
    const auto colour = arg("colour", colour_in_a_sentence(shop, best.colour));
    if (!best.earned_per_hour)
        return say(
            "Nothing can be said of an hour's earning yet: a price, a bought-in colourant to compare with or "
            "powder is missing.");
    const auto money = arg("money", shown_money(*best.earned_per_hour, currency));
    const PlantCompared* last = nullptr;
    for (const PlantCompared& each : plants)
        if (each.earned_per_hour && each.colour != best.colour) last = &each;
    if (last == nullptr)
        return say(
            "An extra hour on the {colour} earned {money}; there is no other to hold it against.", colour, money);
    return say("An hour on the {colour} earned most, {money}; on the {other} least, {least}.", colour, money,
               arg("other", colour_in_a_sentence(shop, last->colour)),
               arg("least", shown_money(*last->earned_per_hour, currency)));
}

std::string ruling_word(RulingWord word) {
    switch (word) {
        case RulingWord::too_soon: return say("too soon to say");
        case RulingWord::no_target: return say("up to you");
        case RulingWord::leave_plain: return say("leave it plain");
        case RulingWord::grow: return say("grow it");
        case RulingWord::story_only: return say("for its story");
        case RulingWord::buy_in: return say("buy it in");
        case RulingWord::too_close: return say("too close to call");
    }
    return {};
}

Cell fine_cell(std::optional<double> value, const std::string& currency) {
    return cell_of(value, [&](double units) { return fine_money(units, currency); });
}

}  // namespace

Document plants_report(const Shop& shop, const Ledger& ledger, const std::vector<PlantCompared>& plants) {
    const std::string currency = currency_of(shop);
    Document out = begin_document(shop, ledger, "plants", tr("Which plant is worth most?"));
    out.blocks.push_back(Headline{headline(shop, plants, currency)});
    Table table{.title = tr("The colours side by side"),
                .columns = {{tr("colour")},
                            {tr("verdict")},
                            {tr("your hours"), Align::right},
                            {tr("an extra hour earned"), Align::right},
                            {tr("grown less bought, in all"), Align::right},
                            {tr("a square metre and season"), Align::right},
                            {tr("a gram's shade, grown"), Align::right},
                            {tr("the same bought"), Align::right}},
                .note = say("Over the last two years; money in {currency}, before own time but for the grown gram's "
                            "shade, which counts it. A gram's shade is what one gram of the bought colour gives.",
                            arg("currency", currency))};
    for (const PlantCompared& plant : plants) {
        table.rows.push_back({{.shown = called(shop, plant.colour)},
                              {.shown = ruling_word(plant.word)},
                              number_cell(plant.dye_hours),
                              money_cell(plant.earned_per_hour, currency),
                              money_cell(plant.season_cash, currency),
                              money_cell(plant.per_square_metre, currency),
                              fine_cell(plant.per_shade_gram, currency),
                              fine_cell(plant.bought_per_shade_gram, currency)});
        const std::string key = shop.find(plant.colour)->code;
        out.figures.push_back({key + ".dye_hours", plant.dye_hours});
        out.figures.push_back({key + ".extra_dye_hour_earned", plant.earned_per_hour});
        out.figures.push_back({key + ".cash_difference", plant.season_cash});
        out.figures.push_back({key + ".cash_difference_per_square_metre_season", plant.per_square_metre});
        out.figures.push_back({key + ".full_cost_per_shade_gram", plant.per_shade_gram});
        out.figures.push_back({key + ".bought_price_per_shade_gram", plant.bought_per_shade_gram});
    }
    line_up(table, 2);
    add_table(out, std::move(table));
    add_paragraph(out, verdict_is_a_sum(), Tone::small);
    return out;
}

}  // namespace dyestead::reports
