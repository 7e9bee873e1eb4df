// invented_season.h - a colour to draw seasons of, for a test or the bench: all but the vats that are its sample.
#pragma once

#include "domain/decisions/doubt.h"

namespace dyestead::test {

// A usual season of an invented colour: a bar brings 0.80 more than one with bought-in colour and takes 4.4 minutes.
inline DoubtInput invented(std::vector<VatPoint> vats) {
    DoubtInput input;
    Model& model = input.model;
    model.dose = 0.1;
    model.strength = 0.5;
    model.yield = 2;
    model.kg_per_vat = 5;
    model.vat_cash_per_kg = 0.3;
    model.garden_cash_per_kg = 0.5;
    model.garden_minutes_per_kg = 20;
    model.vat_minutes_fixed = 120;
    model.hourly_target = 12;
    model.bought_price_per_gram = 0.25;
    model.home_price = 6;
    model.bought_price = 5.2;
    model.plain_price = 5;
    input.plain_price_known = true;
    input.target = 12;
    input.hurdle = 12;
    input.cash_margin = 3;
    input.full_margin = 2;
    input.plantings = 3;
    input.vats = std::move(vats);
    return input;
}

}  // namespace dyestead::test
