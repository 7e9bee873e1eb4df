#include "reports/write/pdf_paginate.h"

#include <doctest/doctest.h>

using namespace dyestead::reports;

TEST_CASE("pieces fill a page and go on to the next, without their space at its top") {
    const std::vector<PieceFlow> pieces(3, PieceFlow{.space_before = 10, .height = 40});
    const std::vector<PlacedPiece> placed = paginate(pieces, 100);
    REQUIRE(placed.size() == 3);
    CHECK(placed[0].y == 0);
    CHECK(placed[1].y == 50);
    CHECK(placed[1].page == 0);
    CHECK(placed[2].page == 1);
    CHECK(placed[2].y == 0);
}

TEST_CASE("a heading goes with what follows it") {
    const std::vector<PlacedPiece> placed =
        paginate({{.height = 60}, {.height = 20, .keep_with_next = true}, {.height = 30}}, 100);
    CHECK(placed[1].page == 1);
    CHECK(placed[2].page == 1);
    CHECK(placed[2].y == 20);
}

TEST_CASE("what is kept together but higher than a page parts, and nothing is lost") {
    std::vector<PieceFlow> pieces(30, PieceFlow{.height = 10, .keep_with_next = true});
    const std::vector<PlacedPiece> placed = paginate(pieces, 100);
    REQUIRE(placed.size() == 30);
    for (const PlacedPiece& piece : placed) CHECK(piece.y + 10 <= 100);
    CHECK(placed.back().page == 2);
}

TEST_CASE("headings come again at the top of every page a table runs to") {
    std::vector<PieceFlow> pieces{{.height = 10, .keep_with_next = true}};
    for (int row = 0; row < 25; ++row) {
        pieces.push_back({.height = 10, .headings = PieceFlow::Headings{.first = 0, .last = 1}});
    }
    const std::vector<PlacedPiece> placed = paginate(pieces, 100);
    CHECK(placed.size() == 26 + 2);
    for (std::size_t i = 0; i < placed.size(); ++i) {
        if (placed[i].y == 0) CHECK(placed[i].piece == 0);
        CHECK(placed[i].y + 10 <= 100);
    }
    CHECK(placed.back().page == 2);
}

TEST_CASE("a sheet begins a page of its own, but not an empty one before it") {
    const std::vector<PlacedPiece> placed = paginate({{.height = 10, .starts_page = true},
                                                      {.height = 10, .keep_with_next = true},
                                                      {.height = 10, .starts_page = true},
                                                      {.height = 10}},
                                                     100);
    CHECK(placed[0].page == 0);
    CHECK(placed[1].page == 0);
    CHECK(placed[2].page == 1);
    CHECK(placed[2].y == 0);
    CHECK(placed[3].page == 1);
}

TEST_CASE("a piece higher than a page has one to itself; no pieces, no places") {
    const std::vector<PlacedPiece> placed = paginate({{.height = 10}, {.height = 300}, {.height = 10}}, 100);
    CHECK(placed[1].page == 1);
    CHECK(placed[2].page == 2);
    CHECK(paginate({}, 100).empty());
}
