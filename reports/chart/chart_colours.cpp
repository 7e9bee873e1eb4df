#include "reports/chart/chart_colours.h"

#include <algorithm>
#include <cmath>

namespace dyestead::reports {
namespace {

consteval Colour rgb(unsigned hex) {
    return {((hex >> 16) & 0xff) / 255.0, ((hex >> 8) & 0xff) / 255.0, (hex & 0xff) / 255.0};
}

double linear(double channel) {
    return channel <= 0.03928 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

}  // namespace

const ChartColours& light_chart_colours() {
    static const ChartColours colours{
        .paper = rgb(0xffffff),
        .text = rgb(0x1f2328),
        .quiet = rgb(0xd5d9de),
        .mark = rgb(0x8a1c1c),
        .goods = {rgb(0x1d4e79), rgb(0xf0c14b), rgb(0x2f8577), rgb(0xd9e2e8), rgb(0xd9793f), rgb(0x5b2a5e)},
        .time = {rgb(0xfbe9d0), rgb(0xdcebfa), rgb(0xe3f1dd)},
    };
    return colours;
}

const ChartColours& dark_chart_colours() {
    static const ChartColours colours{
        .paper = rgb(0x1b1e22),
        .text = rgb(0xe8e6e1),
        .quiet = rgb(0x42474e),
        .mark = rgb(0xffab91),
        .goods = {rgb(0x7fb4e0), rgb(0x8a6410), rgb(0x7fd1c1), rgb(0x4a5660), rgb(0xd98a5f), rgb(0x5d2b52)},
        .time = {rgb(0x54412a), rgb(0x2a4258), rgb(0x33492c)},
    };
    return colours;
}

double luminance(Colour colour) {
    return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
}

double contrast(Colour one, Colour other) {
    const auto [darker, lighter] = std::minmax({luminance(one), luminance(other)});
    return (lighter + 0.05) / (darker + 0.05);
}

Colour ink_on(Colour ground) {
    constexpr Colour kBlack{0, 0, 0};
    constexpr Colour kWhite{1, 1, 1};
    return contrast(ground, kBlack) >= contrast(ground, kWhite) ? kBlack : kWhite;
}

}  // namespace dyestead::reports
