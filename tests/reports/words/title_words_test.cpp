#include "reports/words/title_words.h"

#include <doctest/doctest.h>

namespace dyestead::reports {

TEST_CASE("what a change was, in words") {
    CHECK(title_words("cut of {amount} from {bed}", {{"amount", "2 kg"}, {"bed", "bed 1"}}) ==
          "cut of 2 kg from bed 1");
    CHECK(title_words("folder_imported", {{"folder", "records"}}) == "records brought in from records");
    // Text typed by the maker stays as it is, braces and all.
    CHECK(title_words("jotting: {text}", {{"text", "{lye}"}}) == "jotting: {lye}");
    // An entry of another version, with a name that is not given, is shown as it stands.
    CHECK(title_words("cut of {amount}", {}) == "cut of {amount}");
}

}  // namespace dyestead::reports
