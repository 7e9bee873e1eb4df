#include "reports/begin_document.h"

#include "domain/text/amounts.h"
#include "reports/words/finding_words.h"
#include "reports/words/names.h"

namespace dyestead::reports {

Document begin_document(const Shop& shop, const Ledger& ledger, std::string report, std::string title) {
    return {.report = std::move(report),
            .as_of = print(ledger.as_of),
            .currency = currency_of(shop),
            .title = std::move(title),
            .blocks = {},
            .figures = {},
            .findings = finding_lines(shop, ledger.findings)};
}

}  // namespace dyestead::reports
