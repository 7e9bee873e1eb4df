// file_chooser.h - asks which file is meant. An interface, because no test can answer the desktop's own dialog.
#pragma once

#include <wx/window.h>
#include <filesystem>
#include <optional>
#include <string>

namespace dyestead::gui {

class FileChooser {
public:
    virtual ~FileChooser() = default;
    // Nothing when the person thinks better of it.
    virtual std::optional<std::filesystem::path> shop_to_open(wxWindow* parent) = 0;
    // Where a new shop is to stand; never a file that is there already.
    virtual std::optional<std::filesystem::path> shop_to_make(wxWindow* parent) = 0;
    // A page to write: the suffix, .pdf, .html, .xlsx or, where it has days, .ics, says which kind.
    virtual std::optional<std::filesystem::path> page_to_save(wxWindow* parent, const std::string& name,
                                                              bool has_days) = 0;
};

class DesktopFileChooser : public FileChooser {
public:
    std::optional<std::filesystem::path> shop_to_open(wxWindow* parent) override;
    std::optional<std::filesystem::path> shop_to_make(wxWindow* parent) override;
    std::optional<std::filesystem::path> page_to_save(wxWindow* parent, const std::string& name,
                                                      bool has_days) override;
};

}  // namespace dyestead::gui
