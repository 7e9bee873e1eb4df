#include "gui/models/new_shop.h"

#include "reports/words/say.h"

namespace dyestead::gui {

Shop first_records(const std::string& name, const std::string& currency, std::int64_t key_number) {
    Shop shop;
    About about;
    about.key.number = key_number;
    about.code = "shop";
    about.name = name.empty() ? reports::say("My shop") : name;
    about.currency = currency;
    shop.all<About>().push_back(about);
    return shop;
}

}  // namespace dyestead::gui
