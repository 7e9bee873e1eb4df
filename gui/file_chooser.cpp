#include "gui/file_chooser.h"

#include <wx/filedlg.h>
#include <algorithm>
#include <array>

#include "gui/widgets/text.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::say;

namespace {

std::optional<std::filesystem::path> answer(wxFileDialog& dialog) {
    if (dialog.ShowModal() != wxID_OK) return std::nullopt;
    return std::filesystem::path{typed(dialog.GetPath())};
}

}  // namespace

std::optional<std::filesystem::path> DesktopFileChooser::shop_to_open(wxWindow* parent) {
    wxFileDialog dialog{parent,
                        shown(say("Open a shop file")),
                        wxString{},
                        wxString{},
                        shown(say("Shop files") + " (*.dyestead)|*.dyestead|" + say("All files") + " (*)|*"),
                        wxFD_OPEN | wxFD_FILE_MUST_EXIST};
    return answer(dialog);
}

std::optional<std::filesystem::path> DesktopFileChooser::shop_to_make(wxWindow* parent) {
    wxFileDialog dialog{parent,
                        shown(say("Where shall the new shop stand?")),
                        wxString{},
                        shown(say("my shop") + ".dyestead"),
                        shown(say("Shop files") + " (*.dyestead)|*.dyestead"),
                        wxFD_SAVE};
    auto path = answer(dialog);
    if (path && path->extension() != ".dyestead") *path += ".dyestead";
    return path;
}

std::optional<std::filesystem::path> DesktopFileChooser::page_to_save(wxWindow* parent, const std::string& name,
                                                                      bool has_days) {
    std::string kinds = say("A page to print") + " (*.pdf)|*.pdf|" + say("A page for a browser") + " (*.html)|*.html|" +
                        say("A workbook for a spreadsheet") + " (*.xlsx)|*.xlsx";
    if (has_days) kinds += "|" + say("Days for a calendar") + " (*.ics)|*.ics";
    wxFileDialog dialog{parent,       shown(say("Save this page")),     wxString{}, shown(name + ".pdf"),
                        shown(kinds), wxFD_SAVE | wxFD_OVERWRITE_PROMPT};
    auto path = answer(dialog);
    constexpr std::array kKinds{".pdf", ".html", ".xlsx", ".ics"};
    if (path && !path->has_extension())
        path->replace_extension(kKinds.at(static_cast<std::size_t>(std::max(0, dialog.GetFilterIndex()))));
    return path;
}

}  // namespace dyestead::gui
