#include "gui/desktop/desktop.h"

#include <gtk/gtk.h>

#include <wx/bmpbndl.h>
#include <wx/filename.h>
#include <wx/stdpaths.h>

namespace dyestead::gui {

namespace {

// A table or list is wrapped in a scrolled window: the child is what has rows, and what a screen reader looks at.
GtkWidget* inner_widget(wxWindow& window) {
    GtkWidget* widget = window.GetHandle();
    if (GTK_IS_SCROLLED_WINDOW(widget)) {
        if (GtkWidget* child = gtk_bin_get_child(GTK_BIN(widget))) return child;
    }
    return widget;
}

void skip_buttons_in(GtkWidget* widget, gpointer /*unused*/) {
    if (GTK_IS_TOGGLE_BUTTON(widget)) gtk_widget_set_can_focus(widget, FALSE);
    if (GTK_IS_CONTAINER(widget)) gtk_container_forall(GTK_CONTAINER(widget), skip_buttons_in, nullptr);
}

void align_labels_in(GtkWidget* widget, gpointer side) {
    if (GTK_IS_LABEL(widget)) {
        gtk_label_set_justify(GTK_LABEL(widget), static_cast<GtkJustification>(GPOINTER_TO_INT(side)));
    } else if (GTK_IS_CONTAINER(widget)) {
        gtk_container_forall(GTK_CONTAINER(widget), align_labels_in, side);
    }
}

}  // namespace

void set_program_name(const std::string& name) {
    g_set_prgname(name.c_str());
}

wxIconBundle program_picture() {
    wxFileName file{wxStandardPaths::Get().GetExecutablePath()};
    file.RemoveLastDir();
    for (const char* folder : {"share", "icons", "hicolor", "scalable", "apps"}) file.AppendDir(folder);
    file.SetFullName("dyestead.svg");
    wxIconBundle picture;
    if (!file.FileExists()) return picture;
    for (const int size : {16, 32, 48, 128}) {
        const wxSize square{size, size};
        const wxBitmapBundle drawn = wxBitmapBundle::FromSVGFile(file.GetFullPath(), square);
        if (drawn.IsOk()) picture.AddIcon(drawn.GetIcon(square));
    }
    return picture;
}

void set_accessible_name(wxWindow& window, const std::string& name) {
    atk_object_set_name(gtk_widget_get_accessible(inner_widget(window)), name.c_str());
}

int wrapped_height(wxWindow& static_text, int width) {
    // Measured on a copy: the label itself would answer with the height it was last given.
    PangoLayout* layout = pango_layout_copy(gtk_label_get_layout(GTK_LABEL(static_text.GetHandle())));
    pango_layout_set_width(layout, width * PANGO_SCALE);
    pango_layout_set_wrap(layout, PANGO_WRAP_WORD_CHAR);
    int height = 0;
    pango_layout_get_pixel_size(layout, nullptr, &height);
    g_object_unref(layout);
    return height;
}

void switch_off_type_ahead(wxWindow& table) {
    GtkWidget* widget = inner_widget(table);
    if (GTK_IS_TREE_VIEW(widget)) gtk_tree_view_set_enable_search(GTK_TREE_VIEW(widget), FALSE);
}

void give_rows_room(wxWindow& list, int beside, int above) {
    GtkWidget* widget = inner_widget(list);
    if (!GTK_IS_TREE_VIEW(widget)) return;
    GtkTreeViewColumn* column = gtk_tree_view_get_column(GTK_TREE_VIEW(widget), 0);
    GList* cells = gtk_cell_layout_get_cells(GTK_CELL_LAYOUT(column));
    for (GList* cell = cells; cell != nullptr; cell = cell->next) {
        gtk_cell_renderer_set_padding(GTK_CELL_RENDERER(cell->data), beside, above);
    }
    g_list_free(cells);
}

void choose_row(wxWindow& list, int row) {
    GtkWidget* widget = inner_widget(list);
    if (!GTK_IS_TREE_VIEW(widget)) return;
    GtkTreePath* path = gtk_tree_path_new_from_indices(row, -1);
    gtk_tree_view_set_cursor(GTK_TREE_VIEW(widget), path, nullptr, FALSE);
    gtk_tree_path_free(path);
}

void skip_arrow(wxWindow& drop_down) {
    if (GTK_IS_COMBO_BOX(drop_down.GetHandle())) skip_buttons_in(drop_down.GetHandle(), nullptr);
}

void align_heading_lines(wxDataViewCtrl& table) {
    for (unsigned i = 0; i < table.GetColumnCount(); ++i) {
        auto* column = GTK_TREE_VIEW_COLUMN(table.GetColumn(i)->GetGtkHandle());
        const bool right = table.GetColumn(i)->GetAlignment() == wxALIGN_RIGHT;
        align_labels_in(
            gtk_tree_view_column_get_widget(column), GINT_TO_POINTER(right ? GTK_JUSTIFY_RIGHT : GTK_JUSTIFY_LEFT));
    }
}

}  // namespace dyestead::gui
