#include "reports/console/open_shop.h"

#include "reports/console/failures.h"
#include "reports/words/file_words.h"

namespace dyestead::console {

db::OpenShop open_shop(const std::string& path, db::Access access) {
    auto open = db::OpenShop::open(path, access);
    say_if_brought_up(path, open.brought_up());
    return open;
}

bool is_held_elsewhere(const std::string& path, const db::Claim& claim) {
    if (claim.holder()) say_on_stderr(reports::held_sentence(path, claim.holder()->program, claim.holder()->host));
    return claim.holder().has_value();
}

void say_if_brought_up(const std::string& path, const std::optional<db::BroughtUp>& brought_up) {
    if (brought_up) say_on_stderr(reports::brought_up_sentence(path, brought_up->backup.string()));
}

}  // namespace dyestead::console
