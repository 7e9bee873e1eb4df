#include "gui/models/letters.h"

#include <doctest/doctest.h>

namespace dyestead::gui {

TEST_CASE("each label gets a letter of its own: the one wished for, else the first that is free") {
    std::string taken{"f"};
    CHECK(with_letter("&Find", taken) == "F&ind");
    CHECK(with_letter("How &much", taken) == "How &much");
    CHECK(with_letter("&Made", taken) == "M&ade");
    CHECK(with_letter("On", taken) == "&On");
    CHECK(with_letter("12 %", taken) == "12 %");
    taken = "abcdefghijklmnopqrstuvwxyz";
    CHECK(with_letter("&Keep it", taken) == "Keep it");
}

}  // namespace dyestead::gui
