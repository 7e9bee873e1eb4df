#include "reports/write/labels.h"

#include "domain/text/amounts.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {

std::string findings_heading() {
    return tr("Does not add up");
}

std::string caution_word() {
    return tr("Caution");
}

std::string standing_line(const Document& document) {
    const auto day = read_day(document.as_of).value;
    const std::string shown = day ? shown_date(*day) : document.as_of;
    return say("As of {day}; amounts in {currency}.", arg("day", shown), arg("currency", document.currency));
}

std::string page_of(std::size_t page, std::size_t pages) {
    return say("{page} of {pages}", arg("page", page), arg("pages", pages));
}

}  // namespace dyestead::reports
