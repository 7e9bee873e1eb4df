#include "reports/write/ics.h"

#include <libical/ical.h>

#include <memory>
#include <stdexcept>

#include "domain/text/amounts.h"

namespace dyestead::reports {
namespace {

using Component = std::unique_ptr<icalcomponent, decltype(&icalcomponent_free)>;

icaltimetype day_of_calendar(const std::string& iso) {
    const auto day = read_day(iso);
    if (!day) throw std::logic_error("a day of the calendar is none: " + iso);
    const std::chrono::year_month_day date{*day};
    icaltimetype time = icaltime_null_date();
    time.year = static_cast<int>(date.year());
    time.month = static_cast<int>(static_cast<unsigned>(date.month()));
    time.day = static_cast<int>(static_cast<unsigned>(date.day()));
    return time;
}

// The day reported on, not the moment of writing: the same books give the same file.
icaltimetype stamp_of(const Document& document) {
    icaltimetype time = day_of_calendar(document.as_of);
    time.is_date = 0;
    time.hour = time.minute = time.second = 0;
    time.zone = icaltimezone_get_utc_timezone();
    return time;
}

// The component takes the property over.
void add_event(icalcomponent* calendar, const DueDay& day, icaltimetype stamp) {
    icalcomponent* event = icalcomponent_new_vevent();
    const auto add = [&](icalproperty* property) { icalcomponent_add_property(event, property); };
    add(icalproperty_new_uid((day.id + "@dyestead").c_str()));
    add(icalproperty_new_dtstamp(stamp));
    add(icalproperty_new_dtstart(day_of_calendar(day.day)));
    add(icalproperty_new_summary(day.what.c_str()));
    if (!day.note.empty()) add(icalproperty_new_description(day.note.c_str()));
    if (!day.kind.empty()) add(icalproperty_new_categories(day.kind.c_str()));
    add(icalproperty_new_transp(ICAL_TRANSP_TRANSPARENT));  // takes up no hours of that day
    icalcomponent_add_component(calendar, event);
}

}  // namespace

std::string write_ics(const Document& document) {
    if (!document.days) throw std::logic_error("no calendar can be made of the report " + document.report);
    const Component calendar{icalcomponent_new(ICAL_VCALENDAR_COMPONENT), icalcomponent_free};
    icalcomponent_add_property(calendar.get(), icalproperty_new_version("2.0"));
    icalcomponent_add_property(calendar.get(), icalproperty_new_prodid("-//Dyestead//Dyestead//EN"));
    icalcomponent_add_property(calendar.get(), icalproperty_new_calscale("GREGORIAN"));
    const icaltimetype stamp = stamp_of(document);
    for (const DueDay& day : *document.days) add_event(calendar.get(), day, stamp);
    const std::unique_ptr<char, decltype(&std::free)> bytes{icalcomponent_as_ical_string_r(calendar.get()), std::free};
    if (bytes == nullptr) throw std::runtime_error("the calendar could not be written");
    return bytes.get();
}

}  // namespace dyestead::reports
