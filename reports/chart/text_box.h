// text_box.h - a piece of text laid out with Pango: how wide and high is it, and draw it.
//
// Measured without a screen, at 72 units to the inch and without hinting, so that a chart or a
// page has the same line breaks in the window, in SVG and in PDF. One unit is one point in PDF.
#pragma once

#include <memory>
#include <string_view>
#include <vector>

using cairo_t = struct _cairo;
using PangoLayout = struct _PangoLayout;

namespace dyestead::reports {

struct TextStyle {
    double size = 12;
    bool bold = false;
};

enum class TextSide { left, right };

// Cheap to copy; copies share the layout.
class TextBox {
public:
    // On one line, however long, unless the text itself has line breaks.
    TextBox(std::string_view text, TextStyle style);
    // Wrapped at `width`, between words, or inside a word that is wider than that.
    TextBox(std::string_view text, TextStyle style, double width, TextSide side = TextSide::left);

    // On so many lines at most, cut with an ellipsis where they do not hold it.
    static TextBox cut(std::string_view text, TextStyle style, double width, int lines = 1);

    double width() const { return width_; }
    double height() const { return height_; }
    std::size_t line_count() const { return lines_.size(); }
    double line_height(std::size_t line) const { return lines_[line].height; }

    // Draws in the current colour with the top left corner at (x, y).
    void draw(cairo_t* cr, double x, double y) const;
    // One line of it, the line's own top at y; for text that runs over a page's end.
    void draw_line(cairo_t* cr, double x, double y, std::size_t line) const;

private:
    struct Line {
        double x;
        double height;
        double baseline;  // below the line's top
    };

    explicit TextBox(std::shared_ptr<PangoLayout> layout);
    void measure();

    std::shared_ptr<PangoLayout> layout_;
    std::vector<Line> lines_;
    double width_ = 0;
    double height_ = 0;
};

// A text and where its top left corner stands.
struct PlacedText {
    TextBox text;
    double x = 0;
    double y = 0;

    double right() const { return x + text.width(); }
    double bottom() const { return y + text.height(); }
};

}  // namespace dyestead::reports
