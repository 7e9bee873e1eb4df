// pdf_paginate.h - which piece of a document comes to which page?
//
// Only heights are known here, nothing is drawn; so it is tested with plain numbers.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace dyestead::reports {

struct PieceFlow {
    double space_before = 0;  // left out at the top of a page
    double height = 0;
    bool keep_with_next = false;  // a heading does not stand alone at a page's end
    bool starts_page = false;     // unless nothing stands on the page yet
    // The pieces [first, last) are put again above this one where it starts a page.
    struct Headings {
        std::size_t first = 0;
        std::size_t last = 0;
    };
    std::optional<Headings> headings{};
};

struct PlacedPiece {
    std::size_t page = 0;
    double y = 0;
    std::size_t piece = 0;
};

// In order of pages, then of y. Pieces kept together that are higher than a page are let part;
// a single one that is higher has a page to itself.
std::vector<PlacedPiece> paginate(const std::vector<PieceFlow>& pieces, double page_height);

}  // namespace dyestead::reports
