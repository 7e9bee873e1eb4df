#include "reports/sowing_report.h"

#include <algorithm>

#include "domain/ledger/in_force.h"
#include "reports/add_blocks.h"
#include "reports/begin_document.h"
#include "reports/cells.h"
#include "reports/words/caution_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/sowing_words.h"

namespace dyestead::reports {
namespace {

class SowingReport {
public:
    SowingReport(const Shop& shop, const Ledger& ledger, const Sowing& answer)
        : shop_{shop}, ledger_{ledger}, answer_{answer}, currency_{currency_of(shop)} {
        document_ =
            begin_document(shop, ledger, "sowing", say("What to sow, {day}", arg("day", shown_date(ledger.as_of))));
    }

    Document take() {
        document_.blocks.push_back(Headline{headline()});
        if (!answer_.colours.empty()) {
            document_.blocks.push_back(beds());
            ground();
            for (const ColourSowing& each : answer_.colours) of_colour(each);
            add_paragraph(
                document_,
                tr("A bad year takes the worst season on record at every step together, a good one the best: few "
                   "years will be as bad or as good. Failed plantings and failed vats are in."),
                Tone::small);
            add_paragraph(document_, frost_note(), Tone::small);
        }
        figures();
        return std::move(document_);
    }

private:
    std::string frost_note() const {
        const SowingRule rule = sowing_rule_in_force(shop_, ledger_.as_of);
        if (rule.last_frost && rule.first_frost)
            return tr(
                "Frosts are taken as you set them for a usual year; a late one can come all the same. They are held "
                "against annuals only.");
        if (rule.last_frost || rule.first_frost)
            return tr(
                "One of the two frosts of a usual year is set, the other is not: set both in the settings, and look "
                "at the sky.");
        return tr(
            "Frost dates are not on record (the settings take them): where a frost can still come after the day given, "
            "sow under cover and plant out later.");
    }

    std::string plant(const ColourSowing& colour) const {
        return colour.plant ? called(shop_, *colour.plant) : std::string{};
    }

    std::string headline() const {
        if (answer_.colours.empty())
            return tr(
                "There is nothing to sow for: no plant on record gives a colour, and no recipe is for bars of your "
                "own colour.");
        const auto reckoned = [](const ColourSowing& each) { return each.area.usual && each.plant; };
        const auto first = std::ranges::find_if(
            answer_.colours, [&](const ColourSowing& each) { return reckoned(each) && !each.can_wait; });
        if (first != answer_.colours.end()) return to_sow(*first);
        if (std::ranges::none_of(answer_.colours, reckoned))
            return tr("How much to sow cannot be said yet; what is missing stands below, for each colour.");
        return tr(
            "Nothing has to be sown this time: of every colour that sells, the powder there lasts until the sowing "
            "after it gives more. What the bars would take stands below.");
    }

    std::string to_sow(const ColourSowing& colour) const {
        const auto bars = arg("bars", shown_fixed(colour.bars, 0));
        const auto named = arg("colour", colour_in_a_sentence(shop_, colour.colour));
        const auto name = arg("plant", plant(colour));
        const auto ground = arg("ground", shown_years(colour.area, shown_m2));
        if (!colour.days.sow_by)
            return say("For {bars} {colour} bars sow {plant}: {ground}.", bars, named, name, ground);
        return say("For {bars} {colour} bars sow {plant} by {day}: {ground}.", bars, named, name, ground,
                   arg("day", shown_date(*colour.days.sow_by)));
    }

    static Cell metres(std::optional<double> value) {
        return cell_of(value, [](double m2) { return shown_number(two_digits(m2)); });
    }

    Table beds() const {
        Table table{.title = tr("What to sow"),
                    .columns = {{tr("colour")},
                                {tr("plant")},
                                {tr("bars wanted"), Align::right},
                                {tr("m² in a bad year"), Align::right},
                                {tr("m² in a usual one"), Align::right},
                                {tr("m² in a good one"), Align::right},
                                {tr("seed, usual year"), Align::right},
                                {tr("sow by")},
                                {tr("can it wait")}}};
        for (const ColourSowing& each : answer_.colours) {
            const bool seed = each.seed && each.seed->of.usual;
            table.rows.push_back({Cell{.shown = called(shop_, each.colour)},
                                  each.plant ? Cell{.shown = plant(each)} : none_cell(),
                                  Cell{.shown = shown_fixed(each.bars, 0), .number = each.bars}, metres(each.area.bad),
                                  metres(each.area.usual), metres(each.area.good),
                                  seed ? Cell{.shown = shown_seed(each.seed->kind, *each.seed->of.usual),
                                              .number = *each.seed->of.usual / 1e3}
                                       : Cell{.shown = not_known(), .no_value = true},
                                  each.days.sow_by ? Cell{.shown = short_date(*each.days.sow_by)}
                                                   : Cell{.shown = not_known(), .no_value = true},
                                  Cell{.shown = each.can_wait ? tr("yes") : tr("no")}});
        }
        table.note = tr("Bars wanted: those of your own colour sold in the last 12 months, unless you ask for others.");
        return table;
    }

    void ground() {
        if (answer_.bed_m2 <= 0)
            return add_paragraph(document_, tr("No bed is on record, so whether there is room is not known."));
        const auto all = arg("all", shown_m2(answer_.bed_m2));
        const auto free = arg("free", shown_m2(answer_.free_m2));
        const auto wanted = arg("wanted", shown_m2(answer_.wanted_m2));
        if (answer_.wanted_m2 <= 0) return;
        if (!answer_.too_small)
            return add_paragraph(
                document_, say("The beds on record are {all}; {free} of them are free when the last of it is sown, and "
                               "{wanted} are wanted in a usual year: there is room.",
                               all, free, wanted));
        add_paragraph(
            document_,
            say("The beds on record are {all}; {free} of them are free when the last of it is sown, but {wanted} are "
                "wanted in a usual year: there is not room for all.",
                all, free, wanted));
        Table table{.title = tr("How to share the ground"),
                    .columns = {{tr("colour")},
                                {tr("m² wanted"), Align::right},
                                {say("a m² brings, {currency} a season", arg("currency", currency_)), Align::right},
                                {tr("m² to give it"), Align::right}}};
        for (const ColourSowing& each : answer_.colours) {
            if (!each.area.usual) continue;
            table.rows.push_back({Cell{.shown = called(shop_, each.colour)}, metres(each.area.usual),
                                  money_cell(each.brings_per_m2, currency_), metres(each.ground_given)});
        }
        table.note =
            tr("Brings: how much more money growing leaves than buying the same colour in, for the bars one "
               "square metre colours, your own hours not taken off. What brings nothing more than buying in is "
               "given no ground.");
        document_.blocks.push_back(std::move(table));
    }

    void of_colour(const ColourSowing& colour) {
        document_.blocks.push_back(Section{called(shop_, colour.colour)});
        for (std::string& each : sowing_sentences(shop_, colour)) add_paragraph(document_, std::move(each));
        document_.blocks.push_back(steps(colour));
        add_paragraph(document_,
                      allowed_sentence(colour_in_a_sentence(shop_, colour.colour),
                                       allowed_in_force(shop_, colour.colour, ledger_.as_of)),
                      Tone::caution);
        const Plant* plant = colour.plant ? shop_.find(*colour.plant) : nullptr;
        if (plant != nullptr) add_paragraph(document_, caution_sentence(plant->caution, plant->name), Tone::caution);
    }

    // From the bars back to the seed, one step a row.
    Table steps(const ColourSowing& colour) const {
        Table table{
            .title = say("{colour}: from the bars back to the bed", arg("colour", called(shop_, colour.colour))),
            .columns = {{tr("step")},
                        {tr("bad year"), Align::right},
                        {tr("usual year"), Align::right},
                        {tr("good year"), Align::right},
                        {tr("from")}}};
        const auto row = [&](std::string what, const YearRange& of, std::string from) {
            table.rows.push_back({Cell{.shown = std::move(what)}, number_cell(of.bad), number_cell(of.usual),
                                  number_cell(of.good), Cell{.shown = std::move(from)}});
        };
        const auto one = [&](std::string what, std::optional<double> of, std::string from) {
            row(std::move(what), {of, of, of}, std::move(from));
        };
        const std::string reckoned = tr("worked out");
        one(tr("bars wanted"), colour.bars, origin({{}, colour.bars_from, 0}));
        one(tr("colour in a bar, g as strong as bought"), colour.dose,
            origin({{}, colour.dose ? SowingFrom::recipe : SowingFrom::nothing, 0}));
        row(tr("strength of one g of powder"), colour.strength.of, origin(colour.strength));
        row(tr("powder needed, g"), colour.powder, reckoned);
        row(tr("powder from 1 kg of harvest, g"), colour.powder_per_kg.of, origin(colour.powder_per_kg));
        row(tr("the same, g as strong as bought"), colour.shade_per_kg.of, origin(colour.shade_per_kg));
        row(tr("harvest needed, kg"), colour.harvest, reckoned);
        row(tr("harvest from 1 m², kg"), colour.kg_per_m2.of, origin(colour.kg_per_m2));
        row(tr("bed, m²"), colour.area, reckoned);
        if (colour.seed)
            table.rows.push_back({Cell{.shown = tr("seed")}, seed(*colour.seed, colour.seed->of.bad),
                                  seed(*colour.seed, colour.seed->of.usual), seed(*colour.seed, colour.seed->of.good),
                                  Cell{.shown = origin({{}, colour.seed->rate_from, 0})}});
        return table;
    }

    static Cell seed(const SeedNeed& need, std::optional<double> of) {
        return cell_of(of, [&](double base) { return shown_seed(need.kind, base); });
    }

    static YearRange thousandth(const YearRange& of) {
        const auto each = [](std::optional<double> base) { return base ? std::optional{*base / 1e3} : std::nullopt; };
        return {each(of.bad), each(of.usual), each(of.good)};
    }

    void figures() {
        const auto add = [&](std::string key, std::optional<double> value) {
            document_.figures.push_back({std::move(key), value});
        };
        add("bed_m2", answer_.bed_m2);
        add("free_m2", answer_.free_m2);
        add("wanted_m2", answer_.wanted_m2);
        for (const ColourSowing& each : answer_.colours) {
            const auto* colour = shop_.find(each.colour);
            const auto one = [&](const char* what, std::optional<double> value) {
                add(fmt::format("{}.{}", colour->code, what), value);
            };
            const auto years = [&](const char* what, const YearRange& of) {
                add(fmt::format("{}.{}.bad", colour->code, what), of.bad);
                add(fmt::format("{}.{}.usual", colour->code, what), of.usual);
                add(fmt::format("{}.{}.good", colour->code, what), of.good);
            };
            one("bars", each.bars);
            one("dose", each.dose);
            years("powder_g", each.powder);
            years("harvest_kg", each.harvest);
            years("area_m2", each.area);
            // g, or pieces
            years("seed", each.seed ? thousandth(each.seed->of) : YearRange{});
            one("seed_to_buy", each.seed && each.seed->to_buy ? std::optional{*each.seed->to_buy / 1e3} : std::nullopt);
            one("seed_coming_up", each.seed ? each.seed->coming : std::nullopt);
            one("standing_m2", each.standing.m2);
            years("standing_bars", each.standing.bars);
            one("bars_in_stock", each.bars_in_stock);
            one("bars_without", each.bars_without);
            one("can_wait", each.can_wait ? 1 : 0);
            one("brings_per_m2", each.brings_per_m2);
            one("ground_given", each.ground_given);
        }
    }

    const Shop& shop_;
    const Ledger& ledger_;
    const Sowing& answer_;
    std::string currency_;
    Document document_;
};

}  // namespace

Document sowing_report(const Shop& shop, const Ledger& ledger, const Sowing& answer) {
    return SowingReport{shop, ledger, answer}.take();
}

}  // namespace dyestead::reports
