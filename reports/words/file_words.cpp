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

}  // namespace dyestead::reports
