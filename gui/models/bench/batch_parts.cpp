#include "gui/models/bench/batch_parts.h"

#include "domain/ledger/lye.h"
#include "gui/models/bench/bars.h"
#include "reports/batch_cost.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"
#include "reports/words/unsaid_words.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;
using reports::say_count;

namespace {

LineForm<BatchTime> time_lines(const Shop& shop) {
    LineForm<BatchTime> lines{.id = "times", .name = say("Time at the bench")};
    lines.add("task", say("&For"), &BatchTime::task,
              {.choices = word_choices<BenchTask>({say("pouring"), say("the colour"), say("something else")})});
    lines.add("time", say("&Time"), &BatchTime::time);
    lines.add("who", say("Wh&o"), &BatchTime::who, {.choices = people_choices(shop)});
    return lines;
}

struct TimeRead {
    std::optional<Span> all;
    std::optional<Span> colour;
    bool fine = true;
};

}  // namespace

void add_time(FactForm<Batch>& form, const Writing& writing) {
    if (!form.is_new()) {
        form.lines(time_lines(writing.shop()));
        return;
    }
    form.extra({.id = "time",
                .label = say("&Time"),
                .help = say("All of it together, about is enough: ~1 h 30. May stay blank.")});
    form.extra({.id = "colour_time",
                .label = say("Of it for the &colour"),
                .more = true,
                .help = say("What a plain batch would not have taken: grinding, mixing in.")});
    form.extra({.id = "who",
                .label = say("Wh&o"),
                .entry = Entry::choice,
                .more = true,
                .choices = people_choices(writing.shop())});
}

namespace {

TimeRead time_in(Form& form) {
    TimeRead read;
    const auto of = [&](std::string_view id, std::optional<Span>& into) {
        FormField& field = form.field(id);
        const auto span = read_typed_field<std::optional<Span>>(field.text, {});
        field.trouble = span ? std::string{} : field_trouble(*span.trouble, field.text);
        field.understood = span ? said_back(*span, {}) : std::string{};
        if (span) into = *span;
        read.fine = read.fine && bool{span};
    };
    of("time", read.all);
    of("colour_time", read.colour);
    if (read.colour && (!read.all || read.colour->time > read.all->time)) {
        form.field("colour_time").trouble =
            say("More for the colour than in all; write the whole time in the field above.");
        read.fine = false;
    }
    return read;
}

}  // namespace

bool read_time(Form& form) {
    return time_in(form).fine;
}

bool keep_time(const Batch& batch, Form& form, const Writing& writing, Kept& kept) {
    const TimeRead read = time_in(form);
    if (!read.fine) return false;
    int position = 0;
    const auto add = [&](BenchTask task, Span span) {
        BatchTime line;
        line.key = writing.new_key<BatchTime>();
        line.head = batch.key;
        line.position = ++position;
        line.task = task;
        line.who = KeyCodes{}.key_of<Person>(form.text("who"));
        line.time = span;
        kept.change.put.all<BatchTime>().push_back(line);
    };
    Span pour = read.all.value_or(Span{});
    if (read.colour) pour.time -= read.colour->time;
    if (!pour.time.is_zero()) add(BenchTask::pour, pour);
    if (read.colour) add(BenchTask::colour, *read.colour);
    return true;
}

std::string lye_said(const Shop& shop, const Batch& batch, const std::vector<BatchUse>& uses) {
    Shop bench;
    bench.all<Material>() = shop.all<Material>();
    bench.all<Recipe>() = shop.all<Recipe>();
    bench.all<Batch>() = {batch};
    std::int64_t key = 0;
    for (BatchUse use : uses) {
        use.key.number = ++key;
        use.head = batch.key;
        bench.all<BatchUse>().push_back(use);
    }
    const LyeCheck check = lye_check(bench, batch);
    if (!check.called_for.without_saponification.empty())
        return say("{oil}: no saponification value is on record, so no lye can be worked out.",
                   arg("oil", reports::called(shop, check.called_for.without_saponification.front())));
    if (!check.called_for.lye || check.called_for.lye->is_zero()) return {};
    const auto worked_out = arg("lye", reports::shown_quantity(*check.called_for.lye));
    if (!check.weighed || check.weighed->is_zero())
        return say("Lye worked out for these oils: {lye}; check it against the supplier's own value.", worked_out);
    const auto weighed = arg("weighed", reports::shown_quantity(*check.weighed));
    const double off = check.difference ? number(*check.difference) : 0;
    constexpr double kToSay = 0.005;
    if (off > kToSay)
        return say("Lye {weighed}, worked out {lye}: {share} over.", weighed, worked_out,
                   arg("share", reports::shown_percent(off)));
    if (off < -kToSay)
        return say("Lye {weighed}, worked out {lye}: {share} short.", weighed, worked_out,
                   arg("share", reports::shown_percent(-off)));
    return say("Lye {weighed}, as worked out; check it against the supplier's own value.", weighed);
}

std::string enough_said(const Shop& shop, Key<Material> bar, const CanMake& answer) {
    if (!answer.loaf.unsaid.empty())
        return reports::unsaid_sentence(answer.loaf.unsaid.front(), reports::called(shop, bar));
    if (answer.enough() || !answer.runs_out) return {};
    const auto material = arg("material", reports::called(shop, *answer.runs_out));
    if (answer.most_loaves == 0) return say("{material} runs short; there is not enough for one loaf.", material);
    return say_count("{material} runs short; there is enough for one loaf.",
                     "{material} runs short; there is enough for {count} loaves.",
                     static_cast<std::uint64_t>(answer.most_loaves), material);
}

std::string joined(std::initializer_list<std::string> sentences) {
    std::string all;
    for (const std::string& each : sentences)
        if (!each.empty()) all += (all.empty() ? "" : " ") + each;
    return all;
}

namespace {

std::string batch_meant(const Writing& after, Key<Batch> key) {
    const Shop& shop = after.shop();
    const Batch* batch = shop.find(key);
    const Recipe* recipe = batch == nullptr ? nullptr : shop.find(batch->recipe);
    const auto costs = reports::bar_costs(after.books.shop, after.books.ledger, key);
    if (recipe == nullptr || !costs) return say("Poured.");
    const std::string currency = reports::currency_of(shop);
    return joined({say_count("One bar, about {cash} without your time, {full} with; ready about {day}.",
                             "{count} bars, about {cash} each without your time, {full} with; ready about {day}.",
                             static_cast<std::uint64_t>(recipe->bars_per_loaf) * static_cast<unsigned>(batch->loaves),
                             arg("cash", reports::shown_money(costs->without_time, currency)),
                             arg("full", reports::shown_money(costs->with_time, currency)),
                             arg("day", reports::shown_date(batch->date + Days{1 + recipe->cure_days}))),
                   [&] {
                       std::vector<BatchUse> uses;
                       for (const BatchUse& use : shop.all<BatchUse>())
                           if (use.head == key) uses.push_back(use);
                       return lye_said(shop, *batch, uses);
                   }()});
}

}  // namespace

void say_kept(Kept& kept, const Shop& shop, const Batch& batch, std::string_view title) {
    kept.title = title;
    kept.args = {{"bar", reports::called(shop, batch.bar)}, {"day", reports::shown_date(batch.date)}};
    kept.consequence = [key = batch.key](const Writing& after) { return batch_meant(after, key); };
}

}  // namespace dyestead::gui
