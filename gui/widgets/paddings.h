// paddings.h - the distances between things in the window, so that every place looks like the others.
// In pixels of a screen at its normal scale; wxWindow::FromDIP makes them the screen's own.
#pragma once

namespace dyestead::gui {

inline constexpr int kEdge = 16;   // between the window's edge and what stands in it
inline constexpr int kApart = 12;  // between groups
inline constexpr int kNear = 6;    // between a label and what it names

}  // namespace dyestead::gui
