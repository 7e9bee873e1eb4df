#include <doctest/doctest.h>

#include <random>
#include <string>

#include "domain/text/typed.h"

using namespace dyestead;

namespace {

template <class T>
void refused(const Read<T>& got, std::string_view text, TroubleId trouble) {
    CAPTURE(text);
    REQUIRE_FALSE(got);
    CHECK(static_cast<int>(*got.trouble) == static_cast<int>(trouble));
}

void takes(std::string_view text, std::string_view printed) {
    CAPTURE(text);
    const auto got = read_typed_span(text);
    REQUIRE(got);
    CHECK(print(*got) == printed);
}

constexpr Day kDay = day_of(2026, 7, 20);
const MonthNames kGerman{"Januar", "Februar", "März",      "April",   "Mai",      "Juni",
                         "Juli",   "August",  "September", "Oktober", "November", "Dezember"};

void dates(std::string_view text, Day day, Day writing_for = kDay) {
    CAPTURE(text);
    const auto got = read_typed_day(text, writing_for);
    REQUIRE(got);
    CHECK(print(*got) == print(day));
}

void no_date(std::string_view text, TroubleId trouble) {
    refused(read_typed_day(text, kDay), text, trouble);
}

}  // namespace

// --- lengths of time -----------------------------------------------------------------------------------------

TEST_CASE("a length of time is read as people write it") {
    takes("90 min", "90 min");
    takes("90 minutes", "90 min");
    takes("1.5 h", "1.5 h");
    takes("1,5 h", "1.5 h");
    takes("1 1/2 h", "1.5 h");
    takes("1 h 30", "90 min");
    takes("1h30", "90 min");
    takes("1 h 30 min", "90 min");
    takes("1 hour and 30 minutes", "90 min");
    takes("1 Hr 5 m", "65 min");
    takes("~2 h", "~2 h");
    takes("about 2 hours", "~2 h");
    takes("method: 20 min", "method: 20 min");
    takes("an hour", "1 h");
    takes("an hour and a half", "1.5 h");
    takes("two and a half hours", "2.5 h");
    takes("half an hour", "0.5 h");
    takes("1,5 Stunden", "1.5 h");
    takes("etwa eine Stunde", "~1 h");
    takes("a quarter of an hour", "0.25 h");
    takes("three quarters of an hour", "0.75 h");
    takes("2 x 45 min", "90 min");
    takes("2 x 1 h", "2 h");
    takes("2 x 1 h 30", "180 min");
}

TEST_CASE("a length of time says what is wrong with it") {
    const auto not_taken = [](std::string_view text, TroubleId trouble) {
        refused(read_typed_span(text), text, trouble);
    };
    for (const auto* text : {"", "~", "about "}) not_taken(text, TroubleId::blank);
    for (const auto* text : {"90", "1.5", "2 x 45", "half", "~2"}) not_taken(text, TroubleId::time_unit_missing);
    for (const auto* text : {"h", "30 min 1 h", "1 h 2 h", "20 min 30 min", "1:30", "3 days", "1 h 30 x", "an age",
                             "1 h 5 5", "all day", "min 5"})
        not_taken(text, TroubleId::not_a_time);
    not_taken("1,500 h", TroubleId::which_decimal_mark);
    not_taken("1.2.3 h", TroubleId::which_decimal_mark);
    not_taken("-5 min", TroubleId::below_zero);
    not_taken("1 h -5", TroubleId::below_zero);
    not_taken("878400 h 1 min", TroubleId::too_large);
    not_taken("2 x 878400 h", TroubleId::too_large);
}

TEST_CASE("any length of time comes back from its print") {
    std::mt19937_64 random{7};
    for (int round = 0; round < 20'000; ++round) {
        const auto most = static_cast<std::uint64_t>(kLongestStatedTime.in_millionths()) + 1;
        const Span span{Minutes::millionths(static_cast<std::int64_t>(random() % most) >> (random() % 46)),
                        random() % 2 == 0 ? TimeUnit::min : TimeUnit::h, static_cast<Mark>(random() % 3)};
        CAPTURE(print(span));
        const auto got = read_typed_span(print(span));
        REQUIRE(got);
        CHECK(*got == span);
    }
}

// --- days ----------------------------------------------------------------------------------------------------

TEST_CASE("a day is read as people write it") {
    for (const auto* text : {"3 July 2026", "3 Jul 2026", "3. july 2026", "July 3, 2026", "3rd of July 2026",
                             "2026-07-03", "2026/7/3", "3-jul-2026", "03 July 2026", "3 July", "July 3"})
        dates(text, day_of(2026, 7, 3));
    const auto german = read_typed_day("3. Juli", kDay, kGerman);
    REQUIRE(german);
    CHECK(*german == day_of(2026, 7, 3));
    CHECK(*read_typed_day("3. März 2026", kDay, kGerman) == day_of(2026, 3, 3));
    CHECK(*read_typed_day("3 May", kDay, kGerman) == day_of(2026, 5, 3));
    no_date("3. Juli", TroubleId::not_a_date);
    dates("+", kDay + Days{1});
    dates("today", kDay);
    dates("Yesterday", kDay - Days{1});
    CHECK(*read_typed_day("today", kDay, english_months(), day_of(2026, 7, 25)) == day_of(2026, 7, 25));
    CHECK(*read_typed_day("yesterday", kDay, english_months(), day_of(2026, 7, 25)) == day_of(2026, 7, 24));
    CHECK(*read_typed_day("+", kDay, english_months(), day_of(2026, 7, 25)) == day_of(2026, 7, 21));
    CHECK(*read_typed_day("gestern", kDay) == *read_typed_day("yesterday", kDay));
}

TEST_CASE("a date without its year is within the twelve months that end one month ahead") {
    dates("20 Aug", day_of(2026, 8, 20));
    dates("21 Aug", day_of(2025, 8, 21));
    dates("31 Dec", day_of(2025, 12, 31), day_of(2026, 1, 2));
    dates("2 Jan", day_of(2027, 1, 2), day_of(2026, 12, 30));
    dates("3 July", day_of(2026, 7, 3), day_of(2026, 6, 3));
    dates("3 July", day_of(2025, 7, 3), day_of(2026, 6, 2));
    dates("29 Feb", day_of(2024, 2, 29), day_of(2024, 6, 1));
    no_date("29 Feb", TroubleId::no_such_day);
    for (Day day = day_of(2025, 8, 21); day <= day_of(2026, 8, 20); day += Days{1}) {
        const std::chrono::year_month_day date{day};
        const auto month = english_months()[static_cast<unsigned>(date.month()) - 1];
        dates(std::to_string(static_cast<unsigned>(date.day())) + " " + month, day);
    }
}

TEST_CASE("a date in numbers is asked about, unless only one reading is a day") {
    for (const auto* text : {"3/7", "3/7/2026", "3.7.2026", "3.7.", "03-07-2026", "12/11"})
        no_date(text, TroubleId::which_is_the_month);
    dates("13/7", day_of(2026, 7, 13));
    dates("7/13", day_of(2026, 7, 13));
    dates("7/13/2024", day_of(2024, 7, 13));
    dates("31.3.2026", day_of(2026, 3, 31));
    dates("5/5", day_of(2026, 5, 5));
    no_date("31/4", TroubleId::no_such_day);
    no_date("13/13/2026", TroubleId::no_such_day);
    no_date("30/2/2026", TroubleId::no_such_day);
}

TEST_CASE("a day says what is wrong with it") {
    no_date("", TroubleId::blank);
    for (const auto* text :
         {"3", "July", "July 2026", "3 Ju", "3 Xyz", "3 July 26", "3 July 026", "3/7/26", "2026 July 3", "-1",
          "3-4 July", "soon", "3 July July", "3 July 2026 x", "20260703", "tomorrow"})
        no_date(text, TroubleId::not_a_date);
    for (const auto* text : {"31 June", "0 July", "2026-02-30", "99 May 2026", "29 Feb 2025"})
        no_date(text, TroubleId::no_such_day);
}

TEST_CASE("every day of a century comes back from its print, and from day, month and year") {
    for (Day day = day_of(1980, 1, 1); day < day_of(2081, 1, 1); day += Days{1}) {
        const std::chrono::year_month_day date{day};
        const std::string told = std::to_string(static_cast<unsigned>(date.day())) + " " +
                                 english_months()[static_cast<unsigned>(date.month()) - 1] + " " +
                                 std::to_string(static_cast<int>(date.year()));
        for (const std::string& text : {print(day), told}) {
            const auto got = read_typed_day(text, kDay);
            if (!got || *got != day) FAIL(text);
        }
    }
}

TEST_CASE("a time by the clock is read as people write it, on the day written for unless another stands before it") {
    const Day day = day_of(2026, 7, 4);
    const auto minute = [&](std::string_view text) {
        const auto read = read_typed_moment(text, day);
        REQUIRE_MESSAGE(read, std::string{text});
        CHECK((*read).utc_offset == 0);
        return std::pair{(*read).day, (*read).minute};
    };
    for (const auto* text : {"14:10", "14.10", "2:10 pm", "2.10pm", "14h10", " 14:10 "})
        CHECK(minute(text) == std::pair{day, 850});
    CHECK(minute("12:05 am") == std::pair{day, 5});
    CHECK(minute("12:05 pm") == std::pair{day, 725});
    CHECK(minute("5 July 7:30") == std::pair{day_of(2026, 7, 5), 450});
    CHECK(minute("5 July, 7:30") == std::pair{day_of(2026, 7, 5), 450});
    CHECK((*read_typed_moment("2026-07-04T14:10+02:00", day)).utc_offset == 120);
    for (const auto* text : {"14", "25:00", "14:60", "14:1", "0:10 pm", "13:00 pm", "noon"})
        CHECK(read_typed_moment(text, day).trouble == TroubleId::not_a_moment);
    CHECK(read_typed_moment(" ", day).trouble == TroubleId::blank);
    CHECK_FALSE(read_typed_moment("40 July 7:30", day));
}
