#include "reports/console/failures.h"

#include <fmt/format.h>

#include <iostream>
#include <new>

#include "db/trouble.h"
#include "domain/values/share.h"
#include "reports/words/say.h"
#include "reports/words/trouble_words.h"

namespace dyestead::console {

void say_on_stderr(const std::string& line) {
    std::cerr << line << '\n';
}

int guarded(const Run& run) {
    using reports::trouble_sentence;
    try {
        return run();
    } catch (const Refused& refused) {
        say_on_stderr(trouble_sentence(refused.trouble));
    } catch (const db::ShopTrouble& shop) {
        say_on_stderr(trouble_sentence(shop.trouble));
    } catch (const db::RecordsRefused& records) {
        for (const Trouble& trouble : records.troubles) say_on_stderr(trouble_sentence(trouble));
    } catch (const Overflow&) {
        say_on_stderr(reports::too_large_sentence());
    } catch (const std::bad_alloc&) {
        say_on_stderr(reports::say("There is not enough memory for this shop; close other programs and try again."));
    } catch (const std::exception& fault) {
        say_on_stderr(
            reports::say("A fault of the program stopped it, nothing was changed; please report this line: "
                         "{fault}",
                         reports::arg("fault", fault.what())));
        return kOwnFault;
    }
    return kRefused;
}

}  // namespace dyestead::console
