// settings_forms.h - what the shop goes by: itself, people and their hours, prices of energy, running costs, fees,
// taxes, bills and tools. Each setting counts from a day on; a new one changes no earlier cost.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

Form about_form(const Writing& writing);
Form person_form(const Writing& writing, std::optional<Key<Person>> corrected = std::nullopt);
Form pay_form(const Writing& writing, std::optional<Key<Pay>> corrected = std::nullopt);
Form tariff_form(const Writing& writing, std::optional<Key<Tariff>> corrected = std::nullopt);
Form overhead_form(const Writing& writing, std::optional<Key<Overhead>> corrected = std::nullopt);
Form normal_loss_form(const Writing& writing, std::optional<Key<NormalLoss>> corrected = std::nullopt);
Form sales_tax_form(const Writing& writing, std::optional<Key<SalesTax>> corrected = std::nullopt);
Form channel_fee_form(const Writing& writing, std::optional<Key<ChannelFee>> corrected = std::nullopt);
Form price_rule_form(const Writing& writing, std::optional<Key<PriceRule>> corrected = std::nullopt);
Form sowing_rule_form(const Writing& writing, std::optional<Key<SowingRule>> corrected = std::nullopt);
Form waiting_share_form(const Writing& writing, std::optional<Key<WaitingShare>> corrected = std::nullopt);
Form cost_rule_form(const Writing& writing, std::optional<Key<CostRule>> corrected = std::nullopt);
Form paid_out_form(const Writing& writing, std::optional<Key<PaidOut>> corrected = std::nullopt);
Form equipment_form(const Writing& writing, std::optional<Key<Equipment>> corrected = std::nullopt);

}  // namespace dyestead::gui
