#include "gui/models/form/form.h"

#include <algorithm>
#include <stdexcept>

namespace dyestead::gui {

namespace {

template <class Fields>
auto& find_in(Fields& fields, std::string_view id) {
    const auto found = std::ranges::find_if(fields, [&](const auto& each) { return each.id == id; });
    if (found == fields.end()) throw std::logic_error("no such field: " + std::string{id});
    return *found;
}

}  // namespace

FormField& Form::field(std::string_view id) {
    return find_in(fields, id);
}

const FormField& Form::field(std::string_view id) const {
    return find_in(fields, id);
}

FormLines& Form::lines_of(std::string_view id) {
    return find_in(lines, id);
}

void Form::type(std::string_view id, std::string text, const Writing& writing) {
    FormField& typed = field(id);
    typed.text = std::move(text);
    typed.origin.clear();
    if (look) look(*this, writing);
}

bool Form::has_trouble() const {
    return std::ranges::any_of(fields, [](const FormField& each) { return !each.trouble.empty(); });
}

std::string plain_label(std::string_view label) {
    std::string plain;
    for (const char letter : label)
        if (letter != '&') plain += letter;
    return plain;
}

}  // namespace dyestead::gui
