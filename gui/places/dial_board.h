// dial_board.h - the dials of the verdict: each a field and a slider with the same value. A mistake stands beside the
// field, in words, and nothing moves until it is mended.
#pragma once

#include <wx/panel.h>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "gui/models/dials.h"

class wxSlider;
class wxStaticText;
class wxTextCtrl;

namespace dyestead::gui {

class WrappedText;

class DialBoard : public wxPanel {
public:
    explicit DialBoard(wxWindow* parent);

    // The fields keep what is being typed; all else follows the dials.
    void show(const std::vector<Dial>& dials);
    wxWindow* first_field();

    // What was wrong with the text; blank when it was taken.
    std::function<std::string(DialId, std::string_view)> on_type;
    std::function<void(DialId, double)> on_slide;

private:
    struct Row {
        Dial dial{};
        wxStaticText* label = nullptr;
        wxTextCtrl* field = nullptr;
        wxStaticText* unit = nullptr;
        wxSlider* slider = nullptr;
        WrappedText* mistake = nullptr;
    };
    void build(const std::vector<Dial>& dials);
    void show_row(Row& row, const Dial& dial);
    void say_mistake(Row& row, const std::string& mistake);
    void step(Row& row, int steps);

    std::vector<Row> rows_;
    bool by_hand_ = false;  // a field is being typed into
};

}  // namespace dyestead::gui
