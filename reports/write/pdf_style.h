// pdf_style.h - sizes and greys of the printed page, in points.
#pragma once

#include "reports/chart/text_box.h"

namespace dyestead::reports::pdf {

inline constexpr double kPageWidth = 595.28;  // A4, 210 x 297 mm (ISO 216)
inline constexpr double kPageHeight = 841.89;
inline constexpr double kMarginSide = 51;
inline constexpr double kMarginTop = 51;
inline constexpr double kMarginBottom = 62;  // the page number stands in it
inline constexpr double kTextWidth = kPageWidth - 2 * kMarginSide;
inline constexpr double kTextHeight = kPageHeight - kMarginTop - kMarginBottom;

// What is read at arm's length, and written on.
inline constexpr double kLarger = 1.25;

inline constexpr TextStyle kTitle{.size = 19, .bold = true};
inline constexpr TextStyle kHeadline{.size = 14, .bold = true};
inline constexpr TextStyle kSection{.size = 12.5, .bold = true};
inline constexpr TextStyle kBody{.size = 10};
inline constexpr TextStyle kStrong{.size = 10, .bold = true};
inline constexpr TextStyle kSmall{.size = 8.5};

inline constexpr double kInk = 0.1;  // grey of text: 0 black, 1 white
inline constexpr double kSoft = 0.35;
inline constexpr double kRule = 0.75;

}  // namespace dyestead::reports::pdf
