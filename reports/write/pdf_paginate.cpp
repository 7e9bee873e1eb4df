#include "reports/write/pdf_paginate.h"

namespace dyestead::reports {
namespace {

// The end of the run that starts at `first` and has to stay together, and its height.
struct Run {
    std::size_t end = 0;
    double height = 0;
};

Run run_from(const std::vector<PieceFlow>& pieces, std::size_t first) {
    Run run{.end = first + 1, .height = pieces[first].height};
    while (run.end < pieces.size() && pieces[run.end - 1].keep_with_next && !pieces[run.end].starts_page) {
        run.height += pieces[run.end].space_before + pieces[run.end].height;
        ++run.end;
    }
    return run;
}

double headings_height(const std::vector<PieceFlow>& pieces, const PieceFlow& piece) {
    double height = 0;
    if (piece.headings) {
        for (std::size_t i = piece.headings->first; i < piece.headings->last; ++i) {
            height += pieces[i].height;
        }
    }
    return height;
}

}  // namespace

std::vector<PlacedPiece> paginate(const std::vector<PieceFlow>& pieces, double page_height) {
    std::vector<PlacedPiece> out;
    std::size_t page = 0;
    double y = 0;
    const auto place = [&](std::size_t piece) {
        out.push_back({.page = page, .y = y, .piece = piece});
        y += pieces[piece].height;
    };
    const auto start_page = [&](const PieceFlow& piece) {
        ++page;
        y = 0;
        if (!piece.headings || headings_height(pieces, piece) + piece.height > page_height) return;
        for (std::size_t i = piece.headings->first; i < piece.headings->last; ++i) place(i);
    };
    std::size_t kept_to = 0;  // pieces before this one have already been found to fit
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const PieceFlow& piece = pieces[i];
        if (y > 0) {
            const Run run = run_from(pieces, i);
            const bool together = i >= kept_to && headings_height(pieces, piece) + run.height <= page_height;
            const double needed = piece.space_before + (together ? run.height : piece.height);
            if (piece.starts_page || y + needed > page_height) {
                start_page(piece);
            } else {
                y += piece.space_before;
            }
            if (together) kept_to = run.end;
        }
        place(i);
    }
    return out;
}

}  // namespace dyestead::reports
