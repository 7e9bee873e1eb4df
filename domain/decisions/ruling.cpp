#include "domain/decisions/ruling.h"

namespace dyestead {

Ruling rule(const RulingInput& in) {
    if (in.missing != MissingRecord::none) return {RulingWord::too_soon, in.missing};
    if (!in.hurdle) return {RulingWord::no_target, MissingRecord::none};
    const auto word = [&] {
        if (in.home_less_plain && in.bought_less_plain && *in.home_less_plain < 0 && *in.bought_less_plain < 0)
            return RulingWord::leave_plain;
        if (in.usual.without_premium >= 0 && in.bad.without_premium >= 0) return RulingWord::grow;
        if (in.usual.without_premium < 0 && in.usual.with_premium >= 0) return RulingWord::story_only;
        if (in.usual.with_premium < 0 && in.good.with_premium < 0) return RulingWord::buy_in;
        return RulingWord::too_close;
    }();
    return {word, MissingRecord::none};
}

}  // namespace dyestead
