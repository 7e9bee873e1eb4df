#include <fmt/format.h>

#include <memory>

#include "db/import.h"
#include "reports/console/commands.h"
#include "reports/console/open_shop.h"
#include "reports/console/write_file.h"
#include "reports/words/say.h"

namespace dyestead::console {
namespace {

struct Import {
    std::string folder;
    std::string shop;
    bool replace = false;
};

std::uint64_t records_in(const Shop& shop) {
    std::uint64_t count = 0;
    shop.for_each_list([&](const auto& list) { count += list.size(); });
    return count;
}

int run_import(const Import& asked) {
    const db::Claim claim{asked.shop, kConsole, db::Claiming::if_free};
    if (asked.replace && is_held_elsewhere(asked.shop, claim)) return kRefused;
    say_if_brought_up(asked.shop, db::import_folder(asked.folder, asked.shop,
                                                    asked.replace ? db::Existing::replace : db::Existing::refuse));
    const auto open = db::OpenShop::open(asked.shop, db::Access::read_only);
    write_to_stdout(reports::say_count("{shop} now holds one record, from {folder}.",
                                       "{shop} now holds {count} records, from {folder}.", records_in(open.shop()),
                                       reports::arg("shop", asked.shop), reports::arg("folder", asked.folder)) +
                    "\n");
    return kDone;
}

}  // namespace

void add_import(CLI::App& app, Run& run) {
    auto asked = std::make_shared<Import>();
    CLI::App* command = app.add_subcommand("import", reports::tr("A folder of CSV files into a shop file"));
    command->add_option("DIR", asked->folder, reports::tr("the folder"))->required();
    command->add_option("SHOP", asked->shop, reports::tr("the shop file to make"))->required();
    command->add_flag("--replace", asked->replace,
                      reports::tr("put it in place of what an existing shop file holds; a backup is taken first"));
    command->callback([asked, &run] { run = [asked] { return run_import(*asked); }; });
}

}  // namespace dyestead::console
