// app.h - starts the window: the arguments, the language of the texts, and what happens to an exception that got away.
#pragma once

#include <wx/app.h>
#include <filesystem>
#include <optional>

#include "gui/models/places.h"

namespace dyestead::gui {

class App : public wxApp {
public:
    App();
    bool OnInit() override;
    void OnInitCmdLine(wxCmdLineParser& parser) override;
    bool OnCmdLineParsed(wxCmdLineParser& parser) override;
    bool OnExceptionInMainLoop() override;

private:
    std::optional<std::filesystem::path> shop_;
    Place place_ = Place::verdict;
};

}  // namespace dyestead::gui
