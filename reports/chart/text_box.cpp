#include "reports/chart/text_box.h"

#include <pango/pangocairo.h>

#include <algorithm>

namespace dyestead::reports {
namespace {

constexpr const char* kFamily = "DejaVu Sans, sans";

struct Unref {
    void operator()(void* object) const { g_object_unref(object); }
};

// Pango's default font map belongs to one thread, and so does what is made from it.
PangoContext* shared_context() {
    thread_local const std::unique_ptr<PangoContext, Unref> context = [] {
        std::unique_ptr<PangoContext, Unref> made{pango_font_map_create_context(pango_cairo_font_map_get_default())};
        cairo_font_options_t* options = cairo_font_options_create();
        cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
        cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
        cairo_font_options_set_antialias(options, CAIRO_ANTIALIAS_GRAY);
        pango_cairo_context_set_font_options(made.get(), options);
        cairo_font_options_destroy(options);
        pango_cairo_context_set_resolution(made.get(), 72);
        // Not the desktop's language: the same document gives the same bytes everywhere.
        pango_context_set_language(made.get(), pango_language_from_string("en"));
        pango_context_set_round_glyph_positions(made.get(), FALSE);
        return made;
    }();
    return context.get();
}

std::shared_ptr<PangoLayout> make_layout(std::string_view text, TextStyle style) {
    std::shared_ptr<PangoLayout> layout{pango_layout_new(shared_context()), Unref{}};
    PangoFontDescription* font = pango_font_description_new();
    pango_font_description_set_family_static(font, kFamily);
    pango_font_description_set_size(font, pango_units_from_double(style.size));
    if (style.bold) pango_font_description_set_weight(font, PANGO_WEIGHT_BOLD);
    pango_layout_set_font_description(layout.get(), font);
    pango_font_description_free(font);
    pango_layout_set_text(layout.get(), text.data(), static_cast<int>(text.size()));
    return layout;
}

}  // namespace

TextBox::TextBox(std::string_view text, TextStyle style) : layout_{make_layout(text, style)} {
    measure();
}

TextBox::TextBox(std::string_view text, TextStyle style, double width, TextSide side)
    : layout_{make_layout(text, style)} {
    pango_layout_set_width(layout_.get(), pango_units_from_double(std::max(width, 1.0)));
    pango_layout_set_wrap(layout_.get(), PANGO_WRAP_WORD_CHAR);
    if (side == TextSide::right) pango_layout_set_alignment(layout_.get(), PANGO_ALIGN_RIGHT);
    measure();
}

TextBox::TextBox(std::shared_ptr<PangoLayout> layout) : layout_{std::move(layout)} {
    measure();
}

TextBox TextBox::cut(std::string_view text, TextStyle style, double width, int lines) {
    auto layout = make_layout(text, style);
    pango_layout_set_single_paragraph_mode(layout.get(), TRUE);
    pango_layout_set_wrap(layout.get(), PANGO_WRAP_WORD_CHAR);
    pango_layout_set_height(layout.get(), -lines);
    pango_layout_set_width(layout.get(), pango_units_from_double(std::max(width, 1.0)));
    pango_layout_set_ellipsize(layout.get(), PANGO_ELLIPSIZE_END);
    return TextBox{std::move(layout)};
}

void TextBox::measure() {
    PangoRectangle logical{};
    pango_layout_get_extents(layout_.get(), nullptr, &logical);
    width_ = pango_units_to_double(logical.width);
    height_ = pango_units_to_double(logical.height);
    PangoLayoutIter* at = pango_layout_get_iter(layout_.get());
    do {
        pango_layout_iter_get_line_extents(at, nullptr, &logical);
        lines_.push_back({.x = pango_units_to_double(logical.x),
                          .height = pango_units_to_double(logical.height),
                          .baseline = pango_units_to_double(pango_layout_iter_get_baseline(at) - logical.y)});
    } while (pango_layout_iter_next_line(at));
    pango_layout_iter_free(at);
}

void TextBox::draw(cairo_t* cr, double x, double y) const {
    cairo_move_to(cr, x, y);
    pango_cairo_show_layout(cr, layout_.get());
}

void TextBox::draw_line(cairo_t* cr, double x, double y, std::size_t line) const {
    cairo_move_to(cr, x + lines_[line].x, y + lines_[line].baseline);
    pango_cairo_show_layout_line(cr, pango_layout_get_line_readonly(layout_.get(), static_cast<int>(line)));
}

}  // namespace dyestead::reports
