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
        this->SetSize(kLeast, kLeast);
    }

protected:
    void DoMoveWindow(int x, int y, int width, int height) override {
        Control::DoMoveWindow(x, y, std::max(width, kLeast), std::max(height, kLeast));
    }

private:
    static constexpr int kLeast = 120;  // pixels; nothing that is laid out is smaller
};

}  // namespace dyestead::gui
