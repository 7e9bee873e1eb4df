#include "gui/models/form/form.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
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

std::vector<std::pair<std::string, std::string>> Form::texts() const {
    std::vector<std::pair<std::string, std::string>> all;
    for (const FormField& each : fields) all.emplace_back(each.id, each.text);
    for (const FormLines& each : lines)
        for (std::size_t row = 0; row < each.rows.size(); ++row)
            for (std::size_t i = 0; i < each.fields.size(); ++i)
                all.emplace_back(fmt::format("{}/{}/{}", each.id, row, each.fields[i].id), each.rows[row][i]);
    return all;
}

void Form::put_texts(const std::vector<std::pair<std::string, std::string>>& texts, const Writing& writing) {
    for (FormLines& each : lines) each.rows.clear();
    for (const auto& [id, text] : texts) {
        const auto at = std::ranges::find(fields, id, &FormField::id);
        if (at != fields.end()) {
            at->text = text;
            continue;
        }
        for (FormLines& each : lines) {
            const std::string start = each.id + "/";
            if (!id.starts_with(start)) continue;
            std::size_t row = 0;
            const auto [end, error] = std::from_chars(id.data() + start.size(), id.data() + id.size(), row);
            constexpr std::size_t kMostRows = 10'000;
            if (error != std::errc{} || *end != '/' || row > kMostRows) continue;
            const std::string_view of{end + 1};
            while (each.rows.size() <= row) each.rows.emplace_back(each.fields.size());
            for (std::size_t i = 0; i < each.fields.size(); ++i)
                if (each.fields[i].id == of) each.rows[row][i] = text;
        }
    }
    if (look) look(*this, writing);
}

std::string Form::draft_code() const {
    return fact ? fmt::format("{}:{}", code, fact->key) : code;
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
