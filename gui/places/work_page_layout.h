// work_page_layout.h - where the parts of a place to work at stand.
#pragma once

#include <string>
#include <vector>

class wxButton;
class wxNotebook;
class wxPanel;
class wxSimplebook;
class wxTextCtrl;

namespace dyestead::gui {

class FormPanel;
class Picture;
class Table;
class WorkPage;
class WrappedText;

struct WorkParts {
    wxTextCtrl* find;
    wxPanel* buttons;
    wxNotebook* tabs;
    wxSimplebook* right;  // 0: what is told of the selected row; 1: the form
    wxPanel* told;
    WrappedText* sentence;
    Table* detail;
    WrappedText* caution;
    wxButton* correct;
    wxButton* remove;
    FormPanel* form;
    wxSimplebook* below;  // 0: the picture; 1: its figures
    Picture* picture;
    Table* figures;
    WrappedText* picture_says;
};

WorkParts lay_out_work(WorkPage& page, const std::vector<std::string>& cautions);

}  // namespace dyestead::gui
