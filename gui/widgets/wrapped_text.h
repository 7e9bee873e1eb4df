// wrapped_text.h - a sentence that wraps at the width it is given and asks for the height that takes.
#pragma once

#include <wx/stattext.h>
#include <string>
#include <string_view>

namespace dyestead::gui {

enum class TextSize { headline, heading, plain, small };

class WrappedText : public wxStaticText {
public:
    WrappedText(wxWindow* parent, TextSize size);

    // Nothing happens when it says so already. The parent has to be laid out again when this returns true.
    bool say(std::string_view text);

    bool InformFirstDirection(int direction, int size, int available_other) override;

protected:
    wxSize DoGetBestSize() const override;

private:
    mutable int width_ = 0;
    std::string text_;
};

}  // namespace dyestead::gui
