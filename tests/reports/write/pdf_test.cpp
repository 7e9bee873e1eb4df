#include "reports/write/pdf.h"

#include <doctest/doctest.h>
#include <fmt/format.h>
#include <unistd.h>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "reports/write/paper_pages.h"
#include "tests/reports/write/sample_document.h"

using namespace dyestead::reports;

namespace {

bool has_poppler() {
    const bool found = std::system("command -v pdftotext pdfinfo pdffonts >/dev/null 2>&1") == 0;
    if (!found) MESSAGE("skipped: poppler-utils is not installed");
    return found;
}

// What one of the poppler programs says of the PDF.
std::string asked(const std::string& program, const std::string& pdf) {
    const auto file = std::filesystem::temp_directory_path() / fmt::format("dyestead-{}.pdf", ::getpid());
    std::ofstream(file, std::ios::binary) << pdf;
    const bool to_stdout = program.starts_with("pdftotext");
    const std::string command = fmt::format("{} '{}'{} 2>&1", program, file.string(), to_stdout ? " -" : "");
    std::string out;
    FILE* pipe = ::popen(command.c_str(), "r");
    REQUIRE(pipe != nullptr);
    std::array<char, 4096> part{};
    for (std::size_t got = 0; (got = std::fread(part.data(), 1, part.size(), pipe)) > 0;) out.append(part.data(), got);
    CHECK(::pclose(pipe) == 0);
    std::filesystem::remove(file);
    return out;
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

std::size_t count(const std::string& text, const std::string& part) {
    std::size_t found = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++found;
    return found;
}

Document with_rows(int rows) {
    Document document = empty_document();
    Table table{.title = "Many",
                .columns = {{"row heading"}, {"what it was"}, {"EUR", Align::right}},
                .rows = {},
                .emphasise_last_row = true};
    for (int r = 1; r <= rows; ++r) {
        table.rows.push_back({{fmt::format("row-{}-end", r)}, {"something or other"}, {fmt::format("{}.00", r), r}});
    }
    document.blocks = {table};
    return document;
}

}  // namespace

TEST_CASE("the same document gives the same bytes") {
    const std::string first = write_pdf(sample_document());
    CHECK((first.starts_with("%PDF-")));
    CHECK((first == write_pdf(sample_document())));
    Document later = sample_document();
    later.as_of = "2026-07-05";
    CHECK((first != write_pdf(later)));
}

TEST_CASE("what is written on by hand has wide columns and rows that are high enough, and labels lie two and two") {
    Document by_hand = empty_document();
    by_hand.blocks = {Table{.title = {},
                            .columns = {{"what"}, {.heading = "counted", .room = 40}},
                            .rows = std::vector<std::vector<Cell>>(40, {{"oil"}, {}})}};
    Document read = by_hand;
    std::get<Table>(read.blocks[0]).columns[1].room = 0;
    CHECK(PaperPages{by_hand}.count() == 2);  // 40 rows of 21 points
    CHECK(PaperPages{read}.count() == 1);
    by_hand.larger = true;
    CHECK(PaperPages{by_hand}.count() == 2);
    Document labels = empty_document();
    Table table{.title = {}, .columns = {{"bar"}, {"lot"}, {"remark"}}, .as_labels = true};
    for (int i = 1; i <= 5; ++i) table.rows.push_back({{fmt::format("bar {}", i)}, {fmt::format("lot-{}", i)}, {}});
    labels.blocks = {table};
    CHECK(PaperPages{labels}.count() == 1);
    if (!has_poppler()) return;
    const std::string text = asked("pdftotext -layout", write_pdf(labels));
    CHECK(has(text, "lot: lot-5"));
    CHECK_FALSE(has(text, "remark"));
    const auto first = text.find("bar 1");
    CHECK((text.find("bar 2", first) < text.find('\n', first)));
}

TEST_CASE("all that was said can be read out of the PDF again") {
    if (!has_poppler()) return;
    const std::string text = asked("pdftotext -layout", write_pdf(sample_document()));
    CHECK(has(text, "Is growing the blue worth the hours?"));
    CHECK(has(text, "As of 4 July 2026; amounts in GBP."));
    CHECK(has(text, "£15"));
    CHECK(has(text, "left over before our time"));
    CHECK(has(text, "not known"));
    CHECK(has(text, "Caution"));
    CHECK(has(text, "vat time"));
    CHECK(has(text, "price 5.50"));
    CHECK(has(text, "Does not add up"));
    CHECK(has(text, "1 of "));
    CHECK_FALSE(has(text, "home.full_margin"));
}

TEST_CASE("it is A4, titled, dated by its day, with every font inside") {
    if (!has_poppler()) return;
    const std::string pdf = write_pdf(sample_document());
    const std::string info = asked("pdfinfo -isodates", pdf);
    CHECK(has(info, "(A4)"));
    CHECK(has(info, "Is growing the blue worth the hours?"));
    CHECK(has(info, "2026-07-04T00:00:00Z"));
    const std::string fonts = asked("pdffonts", pdf);
    CHECK(count(fonts, "DejaVu") >= 2);
    CHECK(count(fonts, " yes yes yes ") == count(fonts, "\n") - 2);
}

TEST_CASE("two hundred rows run over pages, each row once, headings on each page") {
    if (!has_poppler()) return;
    const std::string text = asked("pdftotext -layout", write_pdf(with_rows(200)));
    for (int r = 1; r <= 200; ++r) {
        CAPTURE(r);
        CHECK(count(text, fmt::format("row-{}-end", r)) == 1);
    }
    const std::size_t pages = count(text, "\f");
    CHECK(pages >= 4);
    CHECK(count(text, "row heading") == pages);
    CHECK(has(text, fmt::format("{} of {}", pages, pages)));
}

TEST_CASE("no letter of an endless word or a cell longer than a page is lost") {
    if (!has_poppler()) return;
    Document document = empty_document();
    document.title = "T" + std::string(150, 'i') + "T";
    std::string cell;
    for (int i = 0; i < 3000; ++i) cell += fmt::format("w{} ", i);
    document.blocks = {Paragraph{"<" + std::string(2000, 'q') + ">"},
                       Table{.title = "T",
                             .columns = {{"first"}, {"second"}, {"n", Align::right}},
                             .rows = {{{std::string(700, 'z')}, {cell}, {"1.00", 1.0}}}}};
    const std::string text = asked("pdftotext", write_pdf(document));
    CHECK(count(text, "q") == 2000);
    CHECK(count(text, "z") == 700);
    for (int i = 0; i < 3000; i += 7) CHECK(has(text, fmt::format("w{}", i)));
}

TEST_CASE("letters of many scripts come out again") {
    if (!has_poppler()) return;
    Document document = empty_document();
    document.blocks = {Paragraph{"Straße, złoty, Ελλάδα, kōji, €"}};
    CHECK(has(asked("pdftotext", write_pdf(document)), "Straße, złoty, Ελλάδα, kōji, €"));
}

TEST_CASE("an empty document and one without even a date are a page each") {
    if (!has_poppler()) return;
    CHECK(has(asked("pdfinfo", write_pdf(empty_document())), "Pages:           1"));
    CHECK(has(asked("pdfinfo", write_pdf(Document{})), "Pages:           1"));
    Document holes = empty_document();
    holes.blocks = {Headline{}, Paragraph{}, Section{}, Table{}, Chart{}, Table{.title = "T", .columns = {{"a"}}}};
    CHECK(has(asked("pdftotext", write_pdf(holes)), "1 of 1"));
}
