#include "reports/write/html.h"

#include <doctest/doctest.h>

#include <set>

#include "tests/reports/write/sample_document.h"

using namespace dyestead::reports;

namespace {

std::size_t count(const std::string& text, const std::string& part) {
    std::size_t found = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++found;
    return found;
}

}  // namespace

TEST_CASE("nothing in the facts can become markup") {
    Document document = empty_document();
    const std::string bad = "<b>\"a\" & 'b'</b>";
    document.title = bad;
    document.currency = bad;
    document.blocks = {Headline{bad},
                       Paragraph{bad},
                       Paragraph{bad, Tone::caution},
                       Section{bad},
                       Table{.title = bad, .columns = {{bad}}, .rows = {{{bad}}}, .note = bad},
                       Chart{.title = bad, .sentence = bad, .data = sample_chart().data}};
    document.findings = {{"c", bad, bad}};
    const std::string html = write_html(document);
    CHECK(html.find("<b>") == std::string::npos);
    CHECK(count(html, "&lt;b&gt;&quot;a&quot; &amp; &#39;b&#39;&lt;/b&gt;") == 17);
}

TEST_CASE("one file that needs no other, in English, fit for a telephone, the dark and paper") {
    const std::string html = write_html(sample_document());
    CHECK(html.starts_with("<!DOCTYPE html>\n<html lang=\"en\">"));
    CHECK(html.find("<meta name=\"viewport\"") != std::string::npos);
    CHECK(html.find("prefers-color-scheme: dark") != std::string::npos);
    CHECK(html.find("@media print") != std::string::npos);
    CHECK(html.find(" src=") == std::string::npos);
    CHECK(html.find("<link") == std::string::npos);
    CHECK(html.find("@import") == std::string::npos);
    CHECK(html.find("<script") == std::string::npos);
}

TEST_CASE("tables say which heading belongs to which cell") {
    const std::string html = write_html(sample_document());
    CHECK(count(html, "<th scope=\"col\"") == 4);
    CHECK(count(html, "<th scope=\"row\"") == 7);
    CHECK(html.find("<tr class=\"total\"><th scope=\"row\">left over after our time</th>") != std::string::npos);
    CHECK(html.find("<td class=\"right\">not known</td>") != std::string::npos);
    CHECK(count(html, "<h1>") == 1);
    CHECK(html.find("home.full_margin") == std::string::npos);
}

TEST_CASE("a short row is filled up") {
    Document document = empty_document();
    document.blocks = {Table{.title = "T", .columns = {{"a"}, {"b"}}, .rows = {{{"only"}}}}};
    CHECK(write_html(document).find("<th scope=\"row\">only</th><td></td></tr>") != std::string::npos);
}

TEST_CASE("a caution has its word, not only its colour") {
    CHECK(write_html(sample_document()).find("<p class=\"caution\"><strong>Caution</strong> Colour may") !=
          std::string::npos);
}

TEST_CASE("two charts on a page share no id") {
    Document document = empty_document();
    document.blocks = {sample_chart(), sample_chart()};
    const std::string html = write_html(document);
    std::set<std::string> ids;
    const std::string lead = " id=\"";
    for (std::size_t at = html.find(lead); at != std::string::npos; at = html.find(lead, at)) {
        at += lead.size();
        CHECK(ids.insert(html.substr(at, html.find('"', at) - at)).second);
    }
    CHECK(ids.size() > 40);
    CHECK(count(html, "role=\"img\"") == 4);  // each for light and for dark
}

TEST_CASE("an empty document is a whole page; an empty chart is its sentence") {
    CHECK(write_html(empty_document()).ends_with("</main>\n</body>\n</html>\n"));
    Document document = empty_document();
    document.blocks = {Chart{.title = "", .sentence = "Nothing sold yet.", .data = {}}};
    CHECK(write_html(document).find("<figure>\n<figcaption>Nothing sold yet.</figcaption>\n</figure>") !=
          std::string::npos);
}
