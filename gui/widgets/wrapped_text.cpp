#include "gui/widgets/wrapped_text.h"

#include <wx/settings.h>

#include "gui/desktop/desktop.h"
#include "gui/widgets/text.h"

namespace dyestead::gui {

namespace {

constexpr int kNarrowest = 120;

wxFont font_for(const wxFont& plain, TextSize size) {
    switch (size) {
        case TextSize::headline: return plain.Scaled(1.45F).Bold();
        case TextSize::heading: return plain.Scaled(1.25F).Bold();
        case TextSize::plain: return plain;
        case TextSize::small: return plain.Scaled(0.9F);
    }
    return plain;
}

}  // namespace

WrappedText::WrappedText(wxWindow* parent, TextSize size)
    : wxStaticText(parent, wxID_ANY, wxString{}, wxDefaultPosition, wxDefaultSize, wxST_NO_AUTORESIZE) {
    SetFont(font_for(parent->GetFont(), size));
}

bool WrappedText::say(std::string_view text) {
    if (text == text_) return false;
    text_ = text;
    SetLabelText(shown(text));
    InvalidateBestSize();
    if (width_ > 0) SetMinSize({FromDIP(kNarrowest), wrapped_height(*this, width_)});
    return true;
}

bool WrappedText::InformFirstDirection(int direction, int size, int /*available_other*/) {
    if (direction != wxHORIZONTAL || size <= 0) return false;
    const int height = text_.empty() ? 0 : wrapped_height(*this, size);
    const bool other = width_ != size || GetMinHeight() != height;
    width_ = size;
    if (other) SetMinSize({FromDIP(kNarrowest), height});
    return other;
}

wxSize WrappedText::DoGetBestSize() const {
    return {FromDIP(kNarrowest), width_ > 0 ? GetMinHeight() : GetCharHeight()};
}

}  // namespace dyestead::gui
