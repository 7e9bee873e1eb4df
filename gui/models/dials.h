// dials.h - what on the verdict can be tried out: six things, each turned by hand, and what the model says then.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/decisions/model.h"

namespace dyestead::gui {

enum class DialId { premium, hour, yield, leaf, minutes, bought_price };

inline constexpr std::array kDials{
    DialId::premium, DialId::hour, DialId::yield, DialId::leaf, DialId::minutes, DialId::bought_price};

// How a dial looks. Values count in what `unit` says.
struct Dial {
    DialId id{};
    std::string label;    // with the letter to press with Alt
    std::string unit;     // "GBP a bar"
    double recorded = 0;  // what the records say
    double value = 0;     // what is tried
    double low = 0;
    double high = 0;
    double step = 0;  // of the slider
    int places = 2;
    bool turned = false;
};

// What was wrong with the text of a field, in words; empty: it was taken.
struct Turned {
    std::string mistake;
};

class Dials {
public:
    // The records' own model; `currency` for the units.
    Dials(const Model& recorded, std::string currency);

    std::vector<Dial> shown() const;
    bool turned() const;
    void back_to_records();

    // As typed, comma or point. A mistake leaves the dial as it was.
    Turned type(DialId id, std::string_view text);
    void slide(DialId id, double value);

    const Model& recorded() const { return recorded_; }
    Model tried() const;

private:
    Dial dial(DialId id) const;

    Model recorded_;
    std::string currency_;
    std::array<std::optional<double>, kDials.size()> tried_{};
};

}  // namespace dyestead::gui
