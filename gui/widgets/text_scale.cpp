#include "gui/widgets/text_scale.h"

#include <algorithm>
#include <cmath>

namespace dyestead::gui {

double text_scale(const wxWindow& window) {
    constexpr int kLine = 17;  // in pixels, at ten points and the usual 96 to the inch
    return std::max(1.0, static_cast<double>(window.GetCharHeight()) / window.FromDIP(kLine));
}

int for_text(const wxWindow& window, int pixels) {
    if (pixels < 0) return pixels;
    return static_cast<int>(std::lround(window.FromDIP(pixels) * text_scale(window)));
}

}  // namespace dyestead::gui
