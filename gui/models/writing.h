// writing.h - what a form has to hand while it is filled in: the books as they stand, the day that is being written
// for, and fresh keys for new records.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/facts/free_code.h"
#include "domain/values/moment.h"
#include "gui/models/books.h"

namespace dyestead::gui {

struct Writing {
    Books books;
    Day day;  // the day new records are dated to; stays until it is changed
    std::function<std::int64_t()> new_key_number;
    // How many minutes the clock on the wall is ahead of UTC at that time of that day; without it none.
    std::function<int(Moment)> utc_offset{};

    const Shop& shop() const { return books.shop; }
    template <class Fact>
    Key<Fact> new_key() const {
        return {new_key_number()};
    }
};

}  // namespace dyestead::gui
