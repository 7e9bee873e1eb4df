// main.cpp - the program dyestead: dyestead [SHOP] [--place NAME]
#include "gui/app.h"

wxIMPLEMENT_APP(dyestead::gui::App);
