#include "reports/words/say.h"

#include <doctest/doctest.h>

namespace dyestead::reports {
namespace {

std::string shouted(std::string_view english) {
    if (english == "Sow the {plant} by {day}.") return "BIS {day}: {plant}!";
    if (english == "Cut the {plant}.") return "SCHNEIDE {plnt}!";  // a slip of the translator
    if (english == "Dry it.") return "{";
    return std::string{english};
}

std::string counted(std::string_view one, std::string_view many, std::uint64_t count) {
    if (many == "{count} vats stand.") return count == 2 ? "zwei: {count}" : "viele: {cnt}";
    return std::string{count == 1 ? one : many};
}

struct Translated {
    Translated() { set_translation({shouted, counted}); }
    ~Translated() { set_translation({}); }
};

}  // namespace

TEST_CASE("without a translation a sentence stays English") {
    CHECK(say("Sow the {plant} by {day}.", arg("plant", "weld"), arg("day", "10 April")) ==
          "Sow the weld by 10 April.");
    CHECK(tr("plain") == "plain");
}

TEST_CASE("a translation may put the names where its language wants them") {
    const Translated use;
    CHECK(say("Sow the {plant} by {day}.", arg("plant", "weld"), arg("day", "10 April")) == "BIS 10 April: weld!");
}

TEST_CASE("a translation with a wrong name or brace falls back to English") {
    const Translated use;
    CHECK(say("Cut the {plant}.", arg("plant", "weld")) == "Cut the weld.");
    CHECK(say("Dry it.") == "Dry it.");
    CHECK(say_count("One vat stands.", "{count} vats stand.", 3) == "3 vats stand.");
}

TEST_CASE("a counted sentence takes the form that goes with its number") {
    CHECK(say_count("One vat stands.", "{count} vats stand.", 1) == "One vat stands.");
    CHECK(say_count("One vat stands.", "{count} vats stand.", 0) == "0 vats stand.");
    const Translated use;
    CHECK(say_count("One vat stands.", "{count} vats stand.", 2) == "zwei: 2");
}

TEST_CASE("braces in what is put in stay as they are") {
    CHECK(say("Lot {lot}.", arg("lot", "{x}")) == "Lot {x}.");
}

}  // namespace dyestead::reports
