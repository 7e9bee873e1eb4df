#include "reports/write/text_wrap.h"

#include <algorithm>
#include <cstdint>

namespace dyestead::reports {
namespace {

struct CodePoint {
    std::uint32_t value = 0;
    std::size_t bytes = 1;
};

CodePoint first_of(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned lead = byte(0);
    const std::size_t bytes = lead < 0x80           ? 1
                              : (lead >> 5) == 0x06 ? 2
                              : (lead >> 4) == 0x0e ? 3
                              : (lead >> 3) == 0x1e ? 4
                                                    : 1;
    if (bytes == 1 || bytes > text.size()) return {lead, 1};
    std::uint32_t value = lead & (0xffU >> (bytes + 1));
    for (std::size_t i = 1; i < bytes; ++i) {
        if ((byte(i) & 0xc0U) != 0x80U) return {lead, 1};
        value = (value << 6) | (byte(i) & 0x3fU);
    }
    return {value, bytes};
}

// The blocks of combining marks in Unicode, and the characters without a width of their own.
int width_of(std::uint32_t c) {
    const auto within = [c](std::uint32_t low, std::uint32_t high) { return c >= low && c <= high; };
    const bool none = within(0x0300, 0x036f) || within(0x0483, 0x0489) || within(0x0591, 0x05bd) ||
                      within(0x1ab0, 0x1aff) || within(0x1dc0, 0x1dff) || within(0x200b, 0x200d) ||
                      within(0x20d0, 0x20ff) || within(0xfe00, 0xfe0f) || within(0xfe20, 0xfe2f) || c == 0xfeff;
    return none ? 0 : 1;
}

// How many bytes of `word` fill `width`, at least one whole character.
std::size_t bytes_within(std::string_view word, int width) {
    std::size_t at = 0;
    int used = 0;
    while (at < word.size()) {
        const CodePoint next = first_of(word.substr(at));
        if (at > 0 && used + width_of(next.value) > width) break;
        used += width_of(next.value);
        at += next.bytes;
    }
    return at;
}

void wrap_line(std::string_view line, int width, std::vector<std::string>& out) {
    std::string current;
    int used = 0;
    const auto finish = [&] {
        out.push_back(current);
        current.clear();
        used = 0;
    };
    while (!line.empty()) {
        const std::size_t space = line.find(' ');
        std::string_view word = line.substr(0, space);
        line.remove_prefix(space == std::string_view::npos ? line.size() : space + 1);
        if (word.empty()) continue;
        if (used > 0 && used + 1 + text_width(word) > width) finish();
        while (used == 0 && text_width(word) > width) {
            const std::size_t bytes = bytes_within(word, width);
            out.emplace_back(word.substr(0, bytes));
            word.remove_prefix(bytes);
        }
        if (word.empty()) continue;
        if (used > 0) current += ' ';
        used += (used > 0 ? 1 : 0) + text_width(word);
        current += word;
    }
    if (!current.empty()) finish();
}

}  // namespace

int text_width(std::string_view text) {
    int width = 0;
    while (!text.empty()) {
        const CodePoint next = first_of(text);
        width += width_of(next.value);
        text.remove_prefix(next.bytes);
    }
    return width;
}

int longest_word(std::string_view text) {
    int longest = 0;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find_first_of(" \n", at), text.size());
        longest = std::max(longest, text_width(text.substr(at, end - at)));
        at = end + 1;
    }
    return longest;
}

std::vector<std::string> wrap_text(std::string_view text, int width) {
    std::vector<std::string> out;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        const std::size_t before = out.size();
        wrap_line(text.substr(at, end - at), std::max(width, 1), out);
        if (out.size() == before) out.emplace_back();
        at = end + 1;
    }
    return out;
}

}  // namespace dyestead::reports
