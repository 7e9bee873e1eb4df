#include "reports/chart/drawing_svg.h"

#include <doctest/doctest.h>

#include <set>
#include <string>
#include <vector>

#include "tests/reports/write/sample_document.h"
#include "tests/reports/write/sample_drawings.h"

using namespace dyestead::reports;

namespace {

std::vector<std::string> all_after(const std::string& text, const std::string& lead, const std::string& stop) {
    std::vector<std::string> out;
    for (std::size_t at = text.find(lead); at != std::string::npos; at = text.find(lead, at)) {
        at += lead.size();
        out.push_back(text.substr(at, text.find_first_of(stop, at) - at));
    }
    return out;
}

std::string svg(const std::string& prefix) {
    return drawing_svg(sample_chart().data, sample_chart().sentence, light_chart_colours(), prefix);
}

}  // namespace

TEST_CASE("every id of two charts is unique, and every use leads to one in the same chart") {
    std::set<std::string> seen;
    for (const std::string prefix : {"c1-", "c2-"}) {
        const std::string drawing = svg(prefix);
        std::set<std::string> own;
        for (const std::string& id : all_after(drawing, " id=\"", "\"")) {
            CHECK(own.insert(id).second);
            CHECK(seen.insert(id).second);
        }
        const std::vector<std::string> uses = all_after(drawing, "href=\"#", "\"");
        CHECK(uses.size() > 50);
        for (const std::string& use : uses) CHECK(own.count(use) == 1);
        for (const std::string& use : all_after(drawing, "url(#", ")")) CHECK(own.count(use) == 1);
    }
}

TEST_CASE("the picture says its sentence, scales with the page, and is one element") {
    const std::string drawing = svg("c1-");
    CHECK(drawing.starts_with("<svg "));
    CHECK(drawing.find("viewBox=\"0 0 520 ") != std::string::npos);
    CHECK(drawing.find("width=\"100%\" role=\"img\" aria-label=\"A bar with our own blue") != std::string::npos);
    CHECK(drawing.find("<?xml") == std::string::npos);
    CHECK(drawing.find("<svg", 1) == std::string::npos);
    CHECK(drawing.find("</svg>") != std::string::npos);
}

TEST_CASE("the sentence cannot break out of its attribute") {
    const std::string drawing = drawing_svg(sample_chart().data, "a \"b\" <c> & d", light_chart_colours(), "c-");
    CHECK(drawing.find("aria-label=\"a &quot;b&quot; &lt;c&gt; &amp; d\"") != std::string::npos);
}

TEST_CASE("the same chart gives the same bytes; without a bar there is no element") {
    CHECK((svg("c1-") == svg("c1-")));
    CHECK(drawing_svg(Drawing{}, "Nothing.", light_chart_colours(), "c-").empty());
}

TEST_CASE("a picture of every kind becomes an element, and an empty one of any kind does not") {
    for (const Drawing& drawing : {Drawing{sample_bars()}, Drawing{sample_season()}, Drawing{sample_fair()}}) {
        const std::string element = drawing_svg(drawing, "What it says.", dark_chart_colours(), "c-");
        CHECK(element.starts_with("<svg "));
        CHECK(element.find("aria-label=\"What it says.\"") != std::string::npos);
        CHECK((element == drawing_svg(drawing, "What it says.", dark_chart_colours(), "c-")));
    }
    for (const Drawing& drawing : {Drawing{Timeline{}}, Drawing{Curve{}}})
        CHECK(drawing_svg(drawing, "Nothing.", light_chart_colours(), "c-").empty());
}
