// The frame's part that has to do with a vat worked live: which one, its clock among the drafts, and the word that it
// has stood long enough.
#include <wx/infobar.h>
#include <wx/listbox.h>
#include <wx/simplebook.h>
#include <wx/utils.h>

#include "gui/commands.h"
#include "gui/frame.h"
#include "gui/guarded.h"
#include "gui/models/vat/vat_form.h"
#include "gui/places/pan_page.h"
#include "gui/today.h"
#include "gui/widgets/heading.h"
#include "gui/widgets/text.h"
#include "reports/words/say.h"

namespace dyestead::gui {

void Frame::build_pan() {
    pan_page_ = new PanPage(pages_, {.done = [this] { pan_step_done(); },
                                     .stop_or_go_on =
                                         [this] {
                                             stop_or_go_on(pan_->clock, wall_clock().now);
                                             keep_pan();
                                         },
                                     .once_more =
                                         [this] {
                                             gui::once_more(open_->books(), *pan_, wall_clock().now);
                                             keep_pan();
                                         },
                                     .correct =
                                         [this] {
                                             const Key<Vat> vat = pan_->vat;
                                             leave_pan();
                                             go_to(Place::vat);
                                             page()->begin(vat_steps_form(writing(), vat));
                                         },
                                     .leave =
                                         [this] {
                                             leave_pan();
                                             go_to(Place::vat);
                                             take_focus();
                                         },
                                     .read =
                                         [this](const std::string& temperature, const std::string& acidity) {
                                             pan_->temperature = temperature;
                                             pan_->acidity = acidity;
                                             keep_pan();
                                         }});
    pages_->AddPage(pan_page_, shown(reports::say("At the pan")));
    Bind(
        wxEVT_MENU,
        [this](wxCommandEvent&) {
            guarded("working a vat", [&] {
                if (open_) work_at_the_pan(page()->selected());
            });
        },
        kAtThePan);
    pan_timer_.Bind(
        wxEVT_TIMER, [this](wxTimerEvent&) { guarded("looking at the clock", [this] { look_at_the_clock(); }); });
    constexpr int kEveryFewSeconds = 5'000;
    pan_timer_.Start(kEveryFewSeconds);
}

void Frame::work_at_the_pan(std::optional<FactRef> selected) {
    if (!open_) return;
    if (pan_) {
        leave_pan();
        return go_to(place_);
    }
    if (!may_record()) return;
    const auto vat = vat_at_the_pan(open_->books(), selected);
    if (!vat)
        return say(reports::say("No vat stands. Begin one in the Vat: the colour is enough, the rest can follow."));
    bar_->Dismiss();
    pan_ = read_pan(pan_code(*vat), draft_of(pan_code(*vat)));
    if (!pan_) {
        pan_ = AtThePan{.vat = *vat, .clock = begun(wall_clock().now)};
        keep_draft(pan_code(*vat), pan_texts(*pan_));
    }
    show_place();
    pan_page_->focus_first();
}

void Frame::show_pan() {
    list_->Hide();
    heading_->Hide();
    pages_->ChangeSelection(kPanPage);
    pan_page_->show(shown_at_the_pan(open_->books(), *pan_, wall_clock()), pan_->temperature, pan_->acidity);
    list_->GetParent()->Layout();
    heading_->GetParent()->Layout();
}

void Frame::leave_pan() {
    if (!pan_) return;
    pan_.reset();
    list_->Show();
    heading_->Show();
    list_->GetParent()->Layout();
    heading_->GetParent()->Layout();
}

void Frame::keep_pan() {
    keep_draft(pan_code(pan_->vat), pan_texts(*pan_));
    show_pan();
}

void Frame::pan_step_done() {
    const AtThePan before = *pan_;
    AtThePan next = before;
    const auto kept = step_done(writing(), next, wall_clock());
    if (!kept) return show_pan();
    pan_ = next;
    if (!keep(*kept)) {
        pan_ = before;
        return show_pan();
    }
    told_it_stood_.erase(next.vat);
    const bool more = shown_at_the_pan(open_->books(), next, wall_clock()).can_be_done;
    keep_draft(pan_code(next.vat), more ? pan_texts(next) : std::vector<std::pair<std::string, std::string>>{});
    show_pan();
}

// Wherever one is in the window, and once for each wait.
void Frame::look_at_the_clock() {
    if (!open_) return;
    if (pan_) show_pan();
    for (const db::Draft& draft : open_->drafts()) {
        const auto pan = read_pan(draft.form, draft.fields);
        if (!pan || told_it_stood_.contains(pan->vat)) continue;
        const std::string sentence = stood_sentence(open_->books(), *pan, wall_clock());
        if (sentence.empty()) continue;
        told_it_stood_.insert(pan->vat);
        wxBell();
        say(sentence);
    }
}

}  // namespace dyestead::gui
