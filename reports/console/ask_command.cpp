#include <iostream>
#include <memory>

#include "db/new_key.h"
#include "domain/decisions/memory_kept.h"
#include "domain/ledger/replay.h"
#include "reports/console/as_of.h"
#include "reports/console/commands.h"
#include "reports/console/failures.h"
#include "reports/console/open_shop.h"
#include "reports/console/write_file.h"
#include "reports/memory_report.h"
#include "reports/registry.h"
#include "reports/words/memory_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/trouble_words.h"

namespace dyestead::console {
namespace {

using reports::arg;
using reports::say;

// For Undo; a sentence of the log is English.
const std::string kTitle{reports::message("ten questions answered for {colour}")};

struct Asked {
    std::optional<std::string> shop;
    std::string currency = "GBP";
    std::string format = "text";
    std::optional<std::string> out;
};

// The questions go to stderr, so that what is written to a pipe is the answer alone.
std::string ask_one(Recalled blank, const std::string& currency) {
    for (;;) {
        std::cerr << say("  {blank} ({example}): ", arg("blank", reports::memory_blank(blank)),
                         arg("example", reports::memory_example(blank)));
        std::string typed;
        if (!std::getline(std::cin, typed)) throw Refused{{TroubleId::answers_ended}};
        typed = reports::memory_answer(blank, typed);
        auto trouble = answer_trouble(blank, typed, currency);
        if (!trouble && typed.find_first_not_of(" \t\r") == std::string::npos && is_needed(blank))
            trouble = Trouble{TroubleId::blank};
        if (!trouble) return typed;
        say_on_stderr("  " + reports::trouble_sentence(*trouble));
    }
}

// Once the colour is named it is known whether memory is wanted at all.
void refuse_where_records_decide(const Shop& shop, Day day, const std::string& name) {
    const auto colour = colour_named(shop, name);
    if (colour && records_decide(shop, replay(shop, day), *colour))
        throw Refused{{TroubleId::records_decide, {{"value", shop.find(*colour)->name}}}};
}

MemoryAnswers ask_all(const Shop& shop, Day day) {
    const std::string currency = reports::currency_of(shop);
    MemoryAnswers answers;
    int asked = 0;
    for (std::size_t i = 0; i < kRecalled; ++i) {
        const auto blank = static_cast<Recalled>(i);
        if (question_of(blank) != asked) {
            asked = question_of(blank);
            say_on_stderr(
                say("{number}. {question}", arg("number", asked), arg("question", reports::memory_question(asked))));
        }
        answers[blank] = ask_one(blank, currency);
        if (blank == Recalled::colour) refuse_where_records_decide(shop, day, answers[blank]);
    }
    return answers;
}

// A shop that holds nothing but the answers, and is gone with them.
Shop nobody_s_shop(const std::string& currency) {
    Shop shop;
    About about;
    about.key = db::new_key<About>();
    about.code = "shop";
    about.currency = currency;
    shop.all<About>().push_back(std::move(about));
    return shop;
}

std::string answered(const Shop& shop, Key<Colour> colour, Day day, const reports::Format& format) {
    const Ledger ledger = replay(shop, day);
    return format.write(reports::memory_report(shop, ledger, verdict(shop, ledger, colour)));
}

int run_ask(const Asked& asked) {
    const auto format = reports::format_named(asked.format);
    if (const auto* trouble = std::get_if<Trouble>(&format)) throw Refused{*trouble};
    std::optional<db::Claim> claim;
    if (asked.shop) {
        claim.emplace(*asked.shop, kConsole, db::Claiming::if_free);
        if (is_held_elsewhere(*asked.shop, *claim)) return kRefused;
    }
    std::optional<db::OpenShop> open;
    if (asked.shop) open.emplace(open_shop(*asked.shop, db::Access::read_write));
    const Shop before = open ? open->shop() : nobody_s_shop(asked.currency);
    const Day day = as_of(before, std::nullopt);
    const MemoryAnswers answers = ask_all(before, day);
    const auto kept = memory_kept(before, answers, day, db::new_key_number);
    const std::string colour{answers.at(Recalled::colour)};
    const std::string bytes =
        answered(applied(before, kept.change), kept.colour, day, std::get<reports::Format>(format));
    if (open && open->commit({kTitle, {{"colour", colour}}}, kept.change) == db::Committed::file_had_changed)
        throw Refused{{TroubleId::shop_busy, {{"path", *asked.shop}}}};
    if (asked.out)
        write_file(*asked.out, bytes);
    else
        write_to_stdout(bytes);
    return kDone;
}

}  // namespace

void add_ask(CLI::App& app, Run& run) {
    auto asked = std::make_shared<Asked>();
    CLI::App* command = app.add_subcommand("ask", reports::tr("Ten questions, and a first verdict from memory"));
    command->add_option(
        "SHOP", asked->shop, reports::tr("the shop file that keeps the answers; without it nothing is kept"));
    command->add_option(
        "--currency", asked->currency, reports::tr("the currency of the answers where there is no shop"));
    command->add_option("--format", asked->format, reports::tr("as for a report; text without it"));
    command->add_option("--out", asked->out, reports::tr("the file to write; without it the terminal"));
    command->callback([asked, &run] { run = [asked] { return run_ask(*asked); }; });
}

}  // namespace dyestead::console
