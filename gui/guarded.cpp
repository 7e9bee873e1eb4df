#include "gui/guarded.h"

#include <fmt/format.h>

#include <cstdio>
#include <string>

#include "db/trouble.h"
#include "domain/values/share.h"
#include "reports/words/say.h"
#include "reports/words/trouble_words.h"

namespace dyestead::gui {

namespace {

FailureSink& sink() {
    static FailureSink the_sink;
    return the_sink;
}

std::string sentence_of(std::string_view what, const std::exception_ptr& failure) {
    try {
        std::rethrow_exception(failure);
    } catch (const db::ShopTrouble& trouble) {
        return reports::trouble_sentence(trouble.trouble);
    } catch (const Overflow&) {
        return reports::too_large_sentence();
    } catch (const std::exception& error) {
        fmt::print(stderr, "dyestead: {}: {}\n", what, error.what());
    } catch (...) {
        fmt::print(stderr, "dyestead: {}: failed\n", what);
    }
    return reports::say(
        "The program itself made a mistake and left off what it was doing; your shop file is as it was. "
        "Close the window and open it again.");
}

}  // namespace

void set_failure_sink(FailureSink new_sink) {
    sink() = std::move(new_sink);
}

void report_failure(std::string_view what, const std::exception_ptr& failure) noexcept {
    try {
        const std::string sentence = sentence_of(what, failure);
        if (sink()) {
            sink()(sentence);
        } else {
            fmt::print(stderr, "dyestead: {}\n", sentence);
        }
    } catch (...) {
        // Nothing is left to say it with.
    }
}

}  // namespace dyestead::gui
