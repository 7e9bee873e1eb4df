// questions.h - what can the books be asked, which fields does each question have, and what is the answer?
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "gui/models/form/form.h"
#include "reports/document.h"

namespace dyestead::gui {

struct BooksQuestion {
    std::string label;        // "Where did it go?"
    std::string_view report;  // the name it has at the console
    bool period = false;      // asks from when, beside the day
    // What it is asked about; no choices: about nothing in particular. The first is what it is about unless chosen.
    std::string about_label{};
    std::vector<Choice> about{};
};

std::vector<BooksQuestion> books_questions(const Books& books);

// As many as a list to choose from bears: the first that hold what is looked for.
inline constexpr std::size_t kMostChoices = 200;
std::vector<Choice> narrowed(const std::vector<Choice>& choices, std::string_view find);

// What was chosen and typed.
struct Asked {
    std::string as_of;  // blank: the day the books stand at
    std::string from;   // blank: the start of the financial year
    std::string about;  // a Choice's code
};

struct Answer {
    std::optional<reports::Document> document{};
    std::string trouble{};  // why there is none, and how to mend it
};

Answer answer(const Books& books, const BooksQuestion& question, const Asked& asked);

// "2026 so far: taken £1,912, spent £1,304, 231 hours."
std::string books_state(const Books& books);

}  // namespace dyestead::gui
