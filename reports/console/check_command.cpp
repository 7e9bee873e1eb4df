#include <memory>

#include "db/trouble.h"
#include "domain/ledger/replay.h"
#include "domain/ledger/statements.h"
#include "reports/console/as_of.h"
#include "reports/console/commands.h"
#include "reports/console/failures.h"
#include "reports/console/open_shop.h"
#include "reports/console/write_file.h"
#include "reports/words/finding_words.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"
#include "reports/words/trouble_words.h"

namespace dyestead::console {
namespace {

using reports::arg;
using reports::say;

// The file was there and could be read, but what it holds is not what was written.
bool is_broken(TroubleId id) {
    return id == TroubleId::shop_damaged || id == TroubleId::shop_foreign_table;
}

std::vector<std::string> leaks(const Shop& shop, const Ledger& ledger) {
    std::vector<std::string> lines;
    const CostPartition cost = cost_partition(shop, ledger, ledger.as_of);
    if (cost.in != cost.out()) {
        lines.push_back(
            say("What came in does not equal what stands in stock, in the making, sold, lost, given and with "
                "the period: a fault of the program, please report it."));
    }
    const auto quantities = quantity_partitions(shop, ledger, ledger.as_of);
    for (std::size_t at = 0; at < quantities.size(); ++at) {
        if (quantities[at].in + quantities[at].made == quantities[at].out()) continue;
        lines.push_back(
            say("Of {material} not as much is accounted for as came in: a fault of the program, please "
                "report it.",
                arg("material", shop.all<Material>()[at].name)));
    }
    return lines;
}

int report_broken(const std::vector<std::string>& lines) {
    for (const std::string& line : lines) say_on_stderr(line);
    return kCheckFailed;
}

int check(db::OpenShop& open) {
    std::vector<std::string> broken;
    for (const Trouble& trouble : open.check()) broken.push_back(reports::trouble_sentence(trouble));
    if (!broken.empty()) return report_broken(broken);

    const Ledger ledger = replay(open.shop(), as_of(open.shop(), std::nullopt));
    broken = leaks(open.shop(), ledger);
    if (!broken.empty()) return report_broken(broken);

    std::string out =
        say("{shop}: the file is whole, its seals match, and everything that came in is accounted for on "
            "{day}.",
            arg("shop", open.path().string()), arg("day", reports::shown_date(ledger.as_of)));
    const auto findings = reports::finding_lines(open.shop(), ledger.findings);
    out += "\n" +
           (findings.empty()
                ? say("Everything adds up.")
                : reports::say_count("One thing does not add up:", "{count} things do not add up:", findings.size()));
    for (const auto& finding : findings) out += "\n- " + finding.text;
    write_to_stdout(out + "\n");
    return kDone;
}

int run_check(const std::string& shop) {
    try {
        auto open = open_shop(shop, db::Access::read_only);
        return check(open);
    } catch (const db::ShopTrouble& trouble) {
        if (!is_broken(trouble.trouble.id)) throw;
        return report_broken({reports::trouble_sentence(trouble.trouble)});
    }
}

}  // namespace

void add_check(CLI::App& app, Run& run) {
    auto shop = std::make_shared<std::string>();
    CLI::App* command =
        app.add_subcommand("check", reports::tr("Is a shop file whole, and does everything in it add up?"));
    command->add_option("SHOP", *shop, reports::tr("the shop file"))->required();
    command->callback([shop, &run] { run = [shop] { return run_check(*shop); }; });
}

}  // namespace dyestead::console
