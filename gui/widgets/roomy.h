// roomy.h - a native list, table or set of tabs that is never so small that its own scroll bars or tabs have no room:
// GTK complains on the terminal of every one that is, and until a window is laid out all of them would be.
#pragma once

#include <algorithm>
#include <utility>

namespace dyestead::gui {

template <class Control>
class Roomy : public Control {
public:
    template <class... Arguments>
    explicit Roomy(Arguments&&... arguments) : Control(std::forward<Arguments>(arguments)...) {
        this->SetSize(kAtFirst, kAtFirst);
    }

protected:
    void DoMoveWindow(int x, int y, int width, int height) override {
        const int least = laid_out_ ? kLeast : kAtFirst;
        Control::DoMoveWindow(x, y, std::max(width, least), std::max(height, least));
        laid_out_ = laid_out_ || (width >= kLeast && height >= kLeast && (width != kAtFirst || height != kAtFirst));
    }

private:
    // In pixels. Nothing that is laid out is smaller; what is not has room for a heading of several lines.
    static constexpr int kLeast = 120;
    static constexpr int kAtFirst = 320;
    bool laid_out_ = false;
};

}  // namespace dyestead::gui
