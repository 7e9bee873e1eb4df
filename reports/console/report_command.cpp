#include <array>
#include <memory>

#include "domain/ledger/replay.h"
#include "reports/console/arguments.h"
#include "reports/console/as_of.h"
#include "reports/console/commands.h"
#include "reports/console/failures.h"
#include "reports/console/open_shop.h"
#include "reports/console/write_file.h"
#include "reports/registry.h"
#include "reports/words/say.h"

namespace dyestead::console {
namespace {

struct Asked {
    std::string name;
    std::string shop;
    std::optional<std::string> as_of;
    std::string format = "text";
    std::optional<std::string> out;
    std::optional<std::string> colour;
    std::optional<std::string> bar;
    int loaves = 1;
    std::optional<std::string> fair;
    std::optional<std::string> from;
    std::optional<std::string> of;
    std::string basis = "booked";
    std::optional<std::string> stand;
    std::optional<int> bars;
    std::optional<double> hours;
    std::optional<int> months;
};

template <class Wanted>
Wanted or_refused(std::variant<Wanted, Trouble> found) {
    if (const auto* trouble = std::get_if<Trouble>(&found)) throw Refused{*trouble};
    return std::get<Wanted>(std::move(found));
}

// One of a few words, or what could stand there.
template <class Value, std::size_t Count>
Value one_of(const std::array<std::pair<std::string_view, Value>, Count>& words, const std::string& typed) {
    std::string choices;
    for (const auto& [word, value] : words) {
        if (word == typed) return value;
        choices += (choices.empty() ? "" : ", ") + std::string{word};
    }
    throw Refused{{TroubleId::not_one_of, {{"value", typed}, {"choices", choices}}}};
}

constexpr std::array<std::pair<std::string_view, bool>, 2> kBases{{{"booked", false}, {"replacement", true}}};
constexpr std::array<std::pair<std::string_view, Stand>, 3> kStands{{{"before-sowing", Stand::before_sowing},
                                                                     {"leaf-standing", Stand::leaf_standing},
                                                                     {"pigment-dry", Stand::pigment_dry}}};

std::optional<Stand> looking_ahead(const Asked& asked) {
    const bool ahead = one_of(kBases, asked.basis);
    if (!asked.stand) return ahead ? std::optional{Stand::before_sowing} : std::nullopt;
    const Stand stand = one_of(kStands, *asked.stand);
    if (!ahead) throw Refused{{TroubleId::stand_looks_ahead}};
    return stand;
}

int run_report(const Asked& asked) {
    const auto report = or_refused(reports::report_named(asked.name));
    const auto format = or_refused(reports::format_named(asked.format));
    const auto open = open_shop(asked.shop, db::Access::read_only);
    const Ledger ledger = replay(open.shop(), as_of(open.shop(), asked.as_of));
    std::optional<Day> from;
    if (asked.from) from = day_asked(*asked.from, "--from");
    const auto document = or_refused(report.make({.shop = open.shop(),
                                                  .ledger = ledger,
                                                  .colour = asked.colour,
                                                  .bar = asked.bar,
                                                  .loaves = asked.loaves,
                                                  .fair = asked.fair,
                                                  .from = from,
                                                  .of = asked.of,
                                                  .bars = asked.bars,
                                                  .hours = asked.hours,
                                                  .months = asked.months,
                                                  .ahead = looking_ahead(asked)}));
    if (const auto trouble = reports::not_to_be_written(format, document)) throw Refused{*trouble};
    const std::string bytes = format.write(document);
    if (asked.out) {
        write_file(*asked.out, bytes);
    } else {
        write_to_stdout(bytes);
    }
    return kDone;
}

// "verdict: is growing a colour worth ..." and so on, for --help.
std::string reports_in_words() {
    std::string list = reports::tr("Reports:");
    for (const auto& each : reports::all_reports()) {
        list += fmt::format("\n  {:<23} {}", each.name, reports::tr(each.about));
    }
    return list;
}

std::string formats_in_words() {
    std::string list;
    for (const auto& each : reports::all_formats()) list += (list.empty() ? "" : ", ") + std::string{each.name};
    return reports::say("one of {formats}; text without it", reports::arg("formats", list));
}

}  // namespace

void add_report(CLI::App& app, Run& run) {
    auto asked = std::make_shared<Asked>();
    CLI::App* command = app.add_subcommand("report", reports::tr("What the books say, as a page or a file"));
    command->footer(reports_in_words());
    command->add_option("NAME", asked->name, reports::tr("which report, see below"))->required();
    command->add_option("SHOP", asked->shop, reports::tr("the shop file"))->required();
    command->add_option("--as-of", asked->as_of,
                        reports::tr("the day to look at, like 2026-07-03; else the shop's own day,\nor today"));
    command->add_option("--format", asked->format, formats_in_words());
    command->add_option("--out", asked->out, reports::tr("the file to write; without it the terminal"));
    command->add_option("--colour", asked->colour,
                        reports::tr("code of the colour for verdict and sowing; else the one that took\nmost hours"));
    command->add_option(
        "--bar", asked->bar, reports::tr("code of the kind of bar to make; else the next planned\nbatch"));
    takes_whole_number(
        command->add_option("--loaves", asked->loaves, reports::tr("how many loaves of it; else one")), 1, 10'000);
    command->add_option(
        "--fair", asked->fair, reports::tr("code of the fair; else the next one, or the last one stood"));
    command->add_option("--from", asked->from,
                        reports::tr("first day of the period; else the start of the financial\nyear, which is January "
                                    "where the shop says no other month"));
    command->add_option(
        "--of", asked->of,
        reports::tr(
            "what to trace or recall: the code of a lot, batch, planting\nor vat; to recall also of "
            "a delivery, material or\nsupplier, or a supplier's lot number; to trace also in,\nstock, "
            "in-progress, sold, lost, given, period; for\nearns-best the material that is scarce, else your hours; "
            "for\n"
            "cost-sheet and labels a batch; for sheets vat, garden,\ncount, fair, or a method, planting or fair"));
    takes_whole_number(
        command->add_option(
            "--bars", asked->bars,
            reports::tr("bars of the colour to sow for; else as many as were sold in\nthe last 12 months")),
        0, 1'000'000);
    takes_number(command->add_option(
                     "--hours", asked->hours, reports::tr("hours of your own to make bars in; else as many as usual")),
                 0, 100'000);
    takes_whole_number(
        command->add_option("--months", asked->months, reports::tr("how many months to make bars for; else three")), 1,
        60);
    command->add_option(
        "--basis", asked->basis,
        reports::tr("booked: the verdict looks back, at the prices of the books;\nreplacement: it looks "
                    "ahead, at today's prices"));
    command->add_option("--stand", asked->stand,
                        reports::tr("looking ahead, from where: before-sowing, leaf-standing or\npigment-dry; else "
                                    "before-sowing"));
    command->callback([asked, &run] { run = [asked] { return run_report(*asked); }; });
}

}  // namespace dyestead::console
