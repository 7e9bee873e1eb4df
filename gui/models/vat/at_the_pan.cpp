#include "gui/models/vat/at_the_pan.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

#include "domain/decisions/records.h"
#include "domain/facts/lines_of.h"
#include "domain/text/amounts.h"
#include "gui/models/form/field_values.h"
#include "gui/models/vat/next_step.h"
#include "gui/models/vat/standing.h"
#include "reports/words/caution_words.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

constexpr std::string_view kCode = "at-the-pan-";

const MethodStep* step_at(const Shop& shop, const Vat& vat, int position) {
    for (const MethodStep& step : shop.all<MethodStep>())
        if (vat.method == step.head && step.position == position) return &step;
    return nullptr;
}

const MethodStep* step_on(const Shop& shop, const Vat& vat, const AtThePan& pan) {
    return pan.again ? step_at(shop, vat, *pan.again) : next_step(shop, vat);
}

const VatStep* last_done(const Shop& shop, Key<Vat> vat) {
    const VatStep* last = nullptr;
    for (const VatStep& step : shop.all<VatStep>())
        if (step.head == vat && (last == nullptr || step.position > last->position)) last = &step;
    return last;
}

StepPlan plan_of(const Shop& shop, const Vat& vat, const MethodStep* step) {
    StepPlan plan;
    if (step == nullptr) return plan;
    if (step->waiting) plan.waiting = step->waiting->time;
    if (step->hands_on) plan.hands_on = step->hands_on->time;
    if (step->hands_on_per_kg) {
        constexpr double kGrams = 1000.0;
        const auto grams = static_cast<std::int64_t>(harvest_kg(shop, vat) * kGrams);
        const Minutes more = Minutes::millionths(
            scaled(step->hands_on_per_kg->time.in_millionths(), grams, static_cast<std::int64_t>(kGrams)));
        plan.hands_on = plan.hands_on.value_or(Minutes{}) + more;
    }
    return plan;
}

std::optional<Key<Person>> who_works(const Shop& shop, const Vat& vat) {
    if (vat.who) return vat.who;
    if (const VatStep* last = last_done(shop, vat.key); last != nullptr && last->who) return last->who;
    const auto& people = shop.all<Person>();
    return people.size() == 1 ? std::optional{people.front().key} : std::nullopt;
}

template <class T>
std::string reading_trouble(const std::string& text) {
    const auto value = read_typed_field<std::optional<T>>(text, Reading{});
    return value ? std::string{} : field_trouble(*value.trouble, text);
}

std::string time_shown(const Span& span) {
    return reports::shown_minutes(number(span.time));
}

std::string moment_shown(Instant moment, const WallClock& clock) {
    constexpr int kMinutes = 60;
    const Moment then = clock.local(moment);
    std::string time = fmt::format("{:02}:{:02}", then.minute / kMinutes, then.minute % kMinutes);
    if (then.day == clock.local(clock.now).day) return time;
    return say("{time} on {day}", arg("time", time), arg("day", reports::shown_date(then.day)));
}

std::string clock_sentence(const AtThePan& pan, const StepPlan& plan, const StepTimes& times, Instant now) {
    if (times.doubted)
        return say(
            "The clock has run {time}, longer than anybody works at one step: it will count as {counted}, the "
            "rest as standing. Correct the step if you did work that long.",
            arg("time", reports::shown_minutes(number(*times.doubted))), arg("counted", time_shown(times.hands_on)));
    if (!pan.clock.running)
        return say("{time} of work; the clock is stopped.", arg("time", time_shown(times.hands_on)));
    if (times.hands_on.mark == Mark::from_method && plan.hands_on)
        return say("The clock runs; {time} of it will count as work, as your method says, the rest as standing.",
                   arg("time", time_shown(times.hands_on)));
    const Minutes run = times_at(pan.clock, now, {}).hands_on.time;
    return say("The clock has run {time}.", arg("time", reports::shown_minutes(number(run))));
}

std::string standing_sentence(const AtThePan& pan, const StepPlan& plan, const StepTimes& times,
                              const WallClock& clock) {
    const auto due = stood_long_enough(pan.clock, plan);
    if (!due || (pan.clock.running && clock.now < *due)) {
        return due ? say("Your method lets it stand then: the next step at about {moment}.",
                         arg("moment", moment_shown(*due, clock)))
                   : std::string{};
    }
    if (clock.now < *due)
        return say("It has stood {time}; look again at {moment}.", arg("time", time_shown(times.waiting)),
                   arg("moment", moment_shown(*due, clock)));
    return say("It has stood long enough by your method, since {moment}.", arg("moment", moment_shown(*due, clock)));
}

template <class Number>
std::optional<Number> read_number(std::string_view text) {
    Number value{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return value;
}

std::string moment_text(const std::optional<Instant>& moment) {
    return moment ? fmt::to_string(moment->time_since_epoch().count()) : std::string{};
}

std::optional<Instant> read_moment(std::string_view text) {
    const auto seconds = read_number<std::int64_t>(text);
    return seconds ? std::optional{Instant{std::chrono::seconds{*seconds}}} : std::nullopt;
}

}  // namespace

std::string pan_code(Key<Vat> vat) {
    return fmt::format("{}{}", kCode, vat.number);
}

std::vector<std::pair<std::string, std::string>> pan_texts(const AtThePan& pan) {
    return {{"began", moment_text(pan.clock.began)},
            {"running", moment_text(pan.clock.running)},
            {"stopped", moment_text(pan.clock.stopped)},
            {"worked", fmt::to_string(pan.clock.worked.count())},
            {"temperature", pan.temperature},
            {"acidity", pan.acidity},
            {"again", pan.again ? fmt::to_string(*pan.again) : std::string{}}};
}

std::optional<AtThePan> read_pan(const std::string& code,
                                 const std::vector<std::pair<std::string, std::string>>& fields) {
    if (!code.starts_with(kCode)) return std::nullopt;
    const auto vat = read_number<std::int64_t>(std::string_view{code}.substr(kCode.size()));
    const auto text = [&](std::string_view id) {
        const auto found = std::ranges::find(fields, id, &std::pair<std::string, std::string>::first);
        return found == fields.end() ? std::string{} : found->second;
    };
    const auto began = read_moment(text("began"));
    if (!vat || !began) return std::nullopt;
    AtThePan pan{.vat = {*vat}, .clock = {.began = *began}};
    pan.clock.running = read_moment(text("running"));
    pan.clock.stopped = read_moment(text("stopped"));
    pan.clock.worked = std::chrono::seconds{read_number<std::int64_t>(text("worked")).value_or(0)};
    pan.temperature = text("temperature");
    pan.acidity = text("acidity");
    pan.again = read_number<int>(text("again"));
    return pan;
}

PanShown shown_at_the_pan(const Books& books, const AtThePan& pan, const WallClock& clock) {
    PanShown shown;
    const Vat* vat = books.shop.find(pan.vat);
    if (vat == nullptr) {
        shown.title = say("This vat is no longer in the books.");
        return shown;
    }
    const std::string name = vat_name(books.shop, *vat);
    const MethodStep* step = step_on(books.shop, *vat, pan);
    const VatStep* last = last_done(books.shop, pan.vat);
    const MethodStep* before =
        last != nullptr && last->method_step ? step_at(books.shop, *vat, *last->method_step) : nullptr;
    shown.can_be_repeated =
        !pan.again && before != nullptr && before->times > 1 && (step == nullptr || step->position != before->position);
    if (step == nullptr && vat->method) {
        shown.title = say("The {vat}", arg("vat", name));
        shown.step = say("No step is left. Dry and weigh when it is ready.");
        return shown;
    }
    shown.can_be_done = true;
    shown.running = pan.clock.running.has_value();
    if (step == nullptr) {
        const int position = last == nullptr ? 1 : last->position + 1;
        shown.title = say("The {vat}, worked without a method", arg("vat", name));
        shown.step = say("Step {number}", arg("number", position));
    } else {
        const auto steps = std::ranges::count(books.shop.all<MethodStep>(), step->head, &MethodStep::head);
        shown.title = say("The {vat}: step {number} of {steps}", arg("vat", name), arg("number", step->position),
                          arg("steps", steps));
        const int noted = times_noted(books.shop, *vat, step->position);
        shown.step = step->times > 1 ? say("{step} (time {number}; your method says {times})", arg("step", step->what),
                                           arg("number", noted + 1), arg("times", step->times))
                                     : step->what;
        shown.target = target_of(*step);
        shown.caution = reports::caution_sentence(step->caution, step->what);
    }
    const StepPlan plan = plan_of(books.shop, *vat, step);
    const StepTimes times = times_at(pan.clock, clock.now, plan);
    shown.clock = clock_sentence(pan, plan, times, clock.now);
    shown.standing = standing_sentence(pan, plan, times, clock);
    shown.trouble = reading_trouble<Temperature>(pan.temperature);
    if (shown.trouble.empty()) shown.trouble = reading_trouble<Acidity>(pan.acidity);
    return shown;
}

std::optional<Kept> step_done(const Writing& writing, AtThePan& pan, const WallClock& clock) {
    const Instant now = clock.now;
    const Vat* vat = writing.shop().find(pan.vat);
    if (vat == nullptr) return std::nullopt;
    const MethodStep* method = step_on(writing.shop(), *vat, pan);
    if (method == nullptr && vat->method) return std::nullopt;
    const auto temperature = read_typed_field<std::optional<Temperature>>(pan.temperature, Reading{});
    const auto acidity = read_typed_field<std::optional<Acidity>>(pan.acidity, Reading{});
    if (!temperature || !acidity) return std::nullopt;

    const VatStep* last = last_done(writing.shop(), pan.vat);
    const StepTimes times = times_at(pan.clock, now, plan_of(writing.shop(), *vat, method));
    const auto noted = [](const Span& span) {
        return span.time.in_millionths() > 0 ? std::optional{span} : std::nullopt;
    };
    VatStep step;
    step.key = writing.new_key<VatStep>();
    step.head = pan.vat;
    step.position = last == nullptr ? 1 : last->position + 1;
    step.what = method == nullptr ? say("Step {number}", arg("number", step.position)) : method->what;
    step.who = who_works(writing.shop(), *vat);
    step.begun = clock.local(pan.clock.began);
    step.hands_on = noted(times.hands_on);
    step.waiting = noted(times.waiting);
    step.watch = method == nullptr ? Watch::unattended : method->watch;
    step.temperature = *temperature;
    step.acidity = *acidity;
    if (method != nullptr) step.method_step = method->position;

    Kept kept;
    kept.title = reports::message("{step}, {vat}");
    kept.args = {{"step", step.what}, {"vat", vat_name(writing.shop(), *vat)}};
    kept.change.put.all<VatStep>().push_back(step);
    kept.consequence = [key = pan.vat, times](const Writing& after) {
        std::string told = told_after_a_step(after.shop(), key);
        if (!times.doubted) return told;
        return say("{time} of the clock counted as {counted} of work, the rest as standing. {next}",
                   arg("time", reports::shown_minutes(number(*times.doubted))),
                   arg("counted", time_shown(times.hands_on)), arg("next", told));
    };
    pan = {.vat = pan.vat, .clock = begun(now)};
    return kept;
}

void once_more(const Books& books, AtThePan& pan, Instant now) {
    const VatStep* last = last_done(books.shop, pan.vat);
    if (last == nullptr || !last->method_step) return;
    pan.again = last->method_step;
    pan.clock = begun(now);
}

std::string stood_sentence(const Books& books, const AtThePan& pan, const WallClock& clock) {
    const Vat* vat = books.shop.find(pan.vat);
    if (vat == nullptr) return {};
    const MethodStep* step = step_on(books.shop, *vat, pan);
    const auto due = stood_long_enough(pan.clock, plan_of(books.shop, *vat, step));
    if (!due || step == nullptr || clock.now < *due) return {};
    return say("The {vat}, has stood long enough by your method, since {moment}: {step}.",
               arg("vat", vat_name(books.shop, *vat)), arg("moment", moment_shown(*due, clock)),
               arg("step", step->what));
}

std::optional<Key<Vat>> vat_at_the_pan(const Books& books, std::optional<FactRef> selected) {
    const auto standing = standing_vats(books.shop, books.as_of());
    if (selected && selected->kind == kKindOf<Vat>) {
        const auto same = [&](const Vat* vat) { return vat->key.number == selected->key; };
        if (std::ranges::any_of(standing, same)) return Key<Vat>{selected->key};
    }
    return standing.empty() ? std::nullopt : std::optional{standing.front()->key};
}

}  // namespace dyestead::gui
