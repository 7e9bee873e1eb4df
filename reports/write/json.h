// json.h - a document for other programs, in a form that does not change without a word.
#pragma once

#include <string>

#include "reports/document.h"

namespace dyestead::reports {

// {"report","as_of","currency","title","figures":{key: number or null},
//  "tables":[{"title","columns","rows"}],"findings":[{"code","text","fact"}]}, in this order.
// Numbers are unrounded, in the shortest form that reads back to the same double.
// Throws: std::logic_error for a number that is not finite or a key that comes twice.
std::string write_json(const Document& document);

}  // namespace dyestead::reports
