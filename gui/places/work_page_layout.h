// work_page_layout.h - where the parts of a place to work at stand.
#pragma once

#include <string>
#include <vector>

class wxBoxSizer;
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
    wxBoxSizer* column;  // from top to bottom
    wxBoxSizer* middle;  // the lists, and what stands beside or under them
    wxBoxSizer* beside;
    wxBoxSizer* pictured;  // the picture and what it says
};

WorkParts lay_out_work(WorkPage& page, const std::vector<std::string>& cautions);

// Side by side, with the picture below both, and more room for the lists or for the form; or the lists over the whole
// width, and below them what is selected and its picture side by side.
enum class Wider { lists, form };
void stand_side_by_side(const WorkParts& parts, Wider wider);
void stand_stacked(const WorkParts& parts);

}  // namespace dyestead::gui
