// verdict_told.h - what the headlines of a verdict put in, already readable.
#pragma once

#include <string>

#include "domain/decisions/verdict.h"

namespace dyestead::reports {

struct Told {
    std::string colour;
    std::string hours;
    std::string money;  // the season's cash difference, without its sign
    bool ahead = false;
    bool known = false;
};

Told told(const Shop& shop, const Verdict& verdict);

// What a bar leaves less (or more) than another, an hour counted at what it has to bring, without its sign.
std::string apart(const Shop& shop, const Verdict& verdict, const std::optional<Difference>& difference);

// Looking ahead, from where one stands. Requires: verdict.ahead, and a ruling that says something.
std::string ahead_headline(const Shop& shop, const Verdict& verdict, const Told& it);

}  // namespace dyestead::reports
