#include "gui/places/form_keeper.h"

#include <wx/event.h>
#include <algorithm>

#include "gui/guarded.h"
#include "gui/widgets/form_panel.h"
#include "reports/words/say.h"

namespace dyestead::gui {

namespace {

constexpr int kDraftAfter = 1'000;  // milliseconds after the last key

}  // namespace

FormKeeper::FormKeeper(FormPanel& panel, Host& host, std::function<void()> closed)
    : panel_{panel}, host_{host}, closed_{std::move(closed)} {
    panel_.on_keep = [this] { keep(); };
    panel_.on_put_back = [this] {
        draft_timer_.Stop();
        forget_draft();
        close();
    };
    panel_.on_typed = [this] { draft_timer_.StartOnce(kDraftAfter); };
    draft_timer_.Bind(wxEVT_TIMER, [this](wxTimerEvent&) { guarded("keeping a draft", [this] { keep_draft(); }); });
}

FormKeeper::~FormKeeper() = default;

void FormKeeper::begin(Form&& form, const std::string& letters) {
    // What was typed before Esc, or before a crash, is there again.
    const auto draft = host_.draft_of(form.draft_code());
    if (!draft.empty()) form.put_texts(draft, host_.writing());
    panel_.show(
        std::move(form), [this] { return host_.writing(); }, letters);
    if (!draft.empty()) host_.say(reports::say("What you had typed here is there again. Put back clears it away."));
}

bool FormKeeper::takes(const wxKeyEvent& event) {
    if (!panel_.is_open()) return false;
    if (event.GetKeyCode() == WXK_ESCAPE) {
        // Back; what is typed stays for when the form is opened again.
        if (draft_timer_.IsRunning()) keep_draft();
        draft_timer_.Stop();
        close();
        return true;
    }
    const bool enter = event.GetKeyCode() == WXK_RETURN || event.GetKeyCode() == WXK_NUMPAD_ENTER;
    if (!enter || !event.ControlDown()) return false;
    keep();
    return true;
}

void FormKeeper::keep() {
    if (!panel_.is_open()) return;
    panel_.finish_lines();
    const auto kept = panel_.form().keep(panel_.form(), host_.writing());
    if (!kept) {
        panel_.look_again(true);
        const auto fine = [](const FormField& field) { return field.trouble.empty(); };
        if (std::ranges::all_of(panel_.form().fields, fine))
            host_.say(reports::say("Nothing is kept yet: a line of this entry cannot be read. Beside it stands why."));
        return;
    }
    const std::string draft = panel_.form().draft_code();
    if (!host_.keep(*kept)) return;
    draft_timer_.Stop();
    host_.keep_draft(draft, {});
    close();
}

void FormKeeper::keep_draft() {
    if (panel_.is_open()) host_.keep_draft(panel_.form().draft_code(), panel_.form().texts());
}

void FormKeeper::forget_draft() {
    host_.keep_draft(panel_.form().draft_code(), {});
}

void FormKeeper::close() {
    panel_.close();
    closed_();
}

}  // namespace dyestead::gui
