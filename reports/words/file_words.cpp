#include "reports/words/file_words.h"

#include "reports/words/say.h"

namespace dyestead::reports {

std::string brought_up_sentence(const std::string& shop, const std::string& backup) {
    return say(
        "{shop} was made by an earlier version of this program and has been brought up to this one; as it was before, "
        "it "
        "lies in {backup}.",
        arg("shop", shop), arg("backup", backup));
}

std::string held_sentence(const std::string& shop, const std::string& program, const std::string& host) {
    if (program.empty() || host.empty())
        return say(
            "Another window has {shop} open, so nothing was written; close it there and try again.", arg("shop", shop));
    return say("{program} on {host} has {shop} open, so nothing was written; close it there and try again.",
               arg("program", program), arg("host", host), arg("shop", shop));
}

}  // namespace dyestead::reports
