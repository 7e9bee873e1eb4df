// desktop.h - what wxWidgets does not do alike on every desktop. One .cpp per desktop; for now GTK only.
#pragma once

#include <wx/dataview.h>
#include <wx/iconbndl.h>
#include <string>

namespace dyestead::gui {

// The name under which the desktop and screen readers know the program. To be called before any window is made.
void set_program_name(const std::string& name);

// The program's own picture, for window lists and title bars; an empty one where it is not installed.
wxIconBundle program_picture();

// What a screen reader calls a control that no label stands before: a table, a list, a slider, a picture.
void set_accessible_name(wxWindow& window, const std::string& name);

// How high a static text has to be when it is so wide and its words wrap.
int wrapped_height(wxWindow& static_text, int width);

// Keys typed into a table or list move nothing by themselves: the desktop's own search box stays shut.
void switch_off_type_ahead(wxWindow& table);

// Room around the words of a list's rows, in pixels.
void give_rows_room(wxWindow& list, int beside, int above);

// Selects a row and puts the keyboard's cursor on it: the arrows go on from there.
void choose_row(wxWindow& list, int row);

// Tab goes from the field of a drop-down straight to the next control, not to its arrow first.
void skip_arrow(wxWindow& drop_down);

// The lines of a heading stand under one another at the side its column is aligned to.
void align_heading_lines(wxDataViewCtrl& table);

}  // namespace dyestead::gui
