#include "domain/facts/free_code.h"

namespace dyestead {

std::string code_from(std::string_view name) {
    std::string code;
    for (const char letter : name) {
        const bool upper = letter >= 'A' && letter <= 'Z';
        const bool kept = (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9') ||
                          static_cast<unsigned char>(letter) >= 0x80;
        if (upper || kept) {
            code += upper ? static_cast<char>(letter - 'A' + 'a') : letter;
        } else if (!code.empty() && code.back() != '-') {
            code += '-';
        }
    }
    while (!code.empty() && code.back() == '-') code.pop_back();
    return code.empty() ? std::string{"thing"} : code;
}

}  // namespace dyestead
