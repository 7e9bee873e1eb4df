#include <memory>

#include "db/csv_folder.h"
#include "reports/console/commands.h"
#include "reports/console/open_shop.h"
#include "reports/console/write_file.h"
#include "reports/words/say.h"

namespace dyestead::console {
namespace {

struct Export {
    std::string shop;
    std::string folder;
};

int run_export(const Export& asked) {
    const auto open = open_shop(asked.shop, db::Access::read_only);
    db::write_csv_folder(open.shop(), asked.folder);
    write_to_stdout(reports::say("The records of {shop} are in {folder}.", reports::arg("shop", asked.shop),
                                 reports::arg("folder", asked.folder)) +
                    "\n");
    return kDone;
}

}  // namespace

void add_export(CLI::App& app, Run& run) {
    auto asked = std::make_shared<Export>();
    CLI::App* command = app.add_subcommand("export", reports::tr("A shop file out to a folder of CSV files"));
    command->add_option("SHOP", asked->shop, reports::tr("the shop file"))->required();
    command->add_option("DIR", asked->folder, reports::tr("the folder, made if it is not there"))->required();
    command->callback([asked, &run] { run = [asked] { return run_export(*asked); }; });
}

}  // namespace dyestead::console
