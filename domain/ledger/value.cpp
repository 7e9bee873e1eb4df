#include "domain/ledger/value.h"

#include <algorithm>

#include "domain/ledger/in_force.h"
#include "domain/ledger/terms.h"

namespace dyestead {
namespace {

// No part of the cost that ever came in may pass this, so that nothing inside can overflow.
constexpr std::int64_t kGate = std::int64_t{1} << 61;

constexpr std::int64_t size(std::int64_t number) {
    return number < 0 ? -number : number;
}

bool fits(const Cost& entered, const Cost& cost) {
    const auto under = [](std::int64_t a, std::int64_t b) { return static_cast<Wide>(a) + size(b) <= kGate; };
    return under(entered.materials.in_millionths(), cost.materials.in_millionths()) &&
           under(entered.labour.in_millionths(), cost.labour.in_millionths()) &&
           under(entered.energy.in_millionths(), cost.energy.in_millionths()) &&
           under(entered.overhead.in_millionths(), cost.overhead.in_millionths()) &&
           under(entered.hands_on.in_millionths(), cost.hands_on.in_millionths());
}

Cost sizes(const Cost& cost) {
    return {Money::millionths(size(cost.materials.in_millionths())),
            Money::millionths(size(cost.labour.in_millionths())), Money::millionths(size(cost.energy.in_millionths())),
            Money::millionths(size(cost.overhead.in_millionths())),
            Minutes::millionths(size(cost.hands_on.in_millionths()))};
}

// Whether pay times time stays under the gate.
bool pays(Money per_hour, Minutes time) {
    return static_cast<Wide>(per_hour.in_millionths()) * time.in_millionths() / 60'000'000 <= kGate;
}

}  // namespace

Bookkeeper::Bookkeeper(const Shop& shop, const ShopLines& lines, const Stock& stock, Day as_of)
    : shop_{shop}, lines_{lines}, stock_{stock}, last_(shop.all<Material>().size()), pools_(last_.size()) {
    ledger_.as_of = as_of;
    ledger_.accounts = account_plan(shop);
    ledger_.balances.resize(ledger_.accounts.end);
    ledger_.lots.resize(shop.all<Lot>().size());
    ledger_.findings = stock.findings;
    ledger_.movements.reserve(stock.lines.size() * 2);
    ledger_.sources.reserve(stock.lines.size() * 2);
}

void Bookkeeper::begin(const Event& event, std::uint32_t number) {
    day_ = event.day;
    event_ = number;
}

std::uint32_t Bookkeeper::source(FactRef fact, std::uint32_t material, bool named) {
    ledger_.sources.push_back({fact, material, named});
    return static_cast<std::uint32_t>(ledger_.sources.size() - 1);
}

void Bookkeeper::move(Account from, Account to, std::uint32_t source, std::int64_t quantity, Cost cost) {
    ledger_.movements.push_back(
        {from, to, source, static_cast<std::int32_t>(day_.time_since_epoch().count()), quantity, cost});
    ledger_.balances[from] -= cost;
    ledger_.balances[to] += cost;
    if (ledger_.accounts.kind(to) == AccountKind::lot && ledger_.accounts.kind(from) != AccountKind::pool)
        ledger_.lots[ledger_.accounts.index(to)].cost_in += cost;
}

void Bookkeeper::enter(Boundary from, Account to, FactRef fact, const Cost& cost) {
    if (cost.is_zero()) return;
    if (!fits(entered_, cost)) return find(FindingCode::too_large, fact);
    entered_ += sizes(cost);
    move(account(from), to, source(fact), 0, cost);
}

std::span<const Draw> Bookkeeper::draws(const StockLine& line) const {
    const std::uint32_t number = number_of(line);
    return std::span{stock_.draws}.subspan(
        stock_.first_draw[number], stock_.first_draw[number + 1] - stock_.first_draw[number]);
}

const StockLine* Bookkeeper::line_of(FactRef fact) const {
    const auto found = std::ranges::find(lines(), fact, &StockLine::fact);
    return found == lines().end() || found->left_out ? nullptr : &*found;
}

Bookkeeper::Holder Bookkeeper::holder(std::uint32_t material, std::uint32_t index) const {
    const Pool& pooled = pools_[material];
    return pooled.averaged ? Holder{pool(material), pooled.left} : Holder{lot(index), ledger_.lots[index].left};
}

Cost Bookkeeper::worth(std::uint32_t material, std::uint32_t lot, std::int64_t quantity) const {
    const Holder held = holder(material, lot);
    return share_of(balance(held.account), quantity, held.quantity);
}

void Bookkeeper::leave(std::uint32_t material, std::uint32_t index, Account to, std::uint32_t source,
                       std::int64_t quantity, const Cost& cost) {
    ledger_.lots[index].left -= quantity;
    Pool& pooled = pools_[material];
    if (!pooled.averaged) return move(lot(index), to, source, quantity, cost);
    pooled.left -= quantity;
    move(lot(index), to, source, quantity, {});
    if (!cost.is_zero()) move(pool(material), to, source, 0, cost);
}

void Bookkeeper::put_in(std::uint32_t material, std::uint32_t index, Account from, std::uint32_t source,
                        std::int64_t quantity, const Cost& cost) {
    LotState& state = ledger_.lots[index];
    state.received += quantity;
    state.left += quantity;
    Pool& pooled = pools_[material];
    if (!pooled.averaged) return move(from, lot(index), source, quantity, cost);
    pooled.left += quantity;
    state.cost_in += cost;
    move(from, lot(index), source, quantity, {});
    if (!cost.is_zero()) move(from, pool(material), source, 0, cost);
}

void Bookkeeper::add_cost(Boundary from, std::uint32_t material, std::uint32_t index, FactRef fact, const Cost& cost) {
    const Account to = holder(material, index).account;
    const Cost before = balance(to);
    enter(from, to, fact, cost);
    if (to != lot(index)) ledger_.lots[index].cost_in += balance(to) - before;
}

void Bookkeeper::cost_by(std::uint32_t material, CostBy rule, FactRef fact) {
    Pool& pooled = pools_[material];
    const bool averaged = rule == CostBy::average;
    if (pooled.averaged == averaged) return;
    pooled.averaged = averaged;
    const std::uint32_t from = source(fact, material);
    const Key<Material> key = shop_.all<Material>()[material].key;
    for (std::uint32_t i = 0; i < ledger_.lots.size(); ++i) {
        const std::int64_t left = ledger_.lots[i].left;
        if (left == 0 || shop_.all<Lot>()[i].material != key) continue;
        if (averaged) {
            pooled.left += left;
            move(lot(i), pool(material), from, 0, balance(lot(i)));
        } else {
            move(pool(material), lot(i), from, 0, share_of(balance(pool(material)), left, pooled.left));
            pooled.left -= left;
        }
    }
}

void Bookkeeper::take_all(Account to) {
    for (const StockLine& line : lines())
        if (!line.comes_in) take(line, to);
}

void Bookkeeper::take(const StockLine& line, Account to) {
    if (line.left_out) return;
    const std::uint32_t from = source(line.fact, line.material, line.lot != kNoLot);
    for (const Draw& draw : draws(line)) {
        if (draw.lot == kNoLot) {
            take_short(line, draw, from, to);
            continue;
        }
        leave(line.material, draw.lot, to, from, draw.quantity, worth(line.material, draw.lot, draw.quantity));
    }
}

void Bookkeeper::take_short(const StockLine& line, const Draw& draw, std::uint32_t from, Account to) {
    Short& owed = short_[static_cast<std::uint32_t>(&draw - stock_.draws.data())];
    owed = {latest_cost(line, draw.quantity), draw.quantity};
    entered_ += sizes(owed.cost);
    move(account(Boundary::provisional), to, from, draw.quantity, owed.cost);
}

Cost Bookkeeper::latest_cost(const StockLine& line, std::int64_t quantity) {
    const UnitCost& last = last_[line.material];
    if (last.quantity == 0) {
        find(FindingCode::no_cost_known, line.fact, {shop_.all<Material>()[line.material].name});
        return {};
    }
    const auto under = [&](std::int64_t part) {
        return static_cast<Wide>(size(part)) * quantity / last.quantity <= kGate;
    };
    const bool small = under(last.cost.materials.in_millionths()) && under(last.cost.labour.in_millionths()) &&
                       under(last.cost.energy.in_millionths()) && under(last.cost.overhead.in_millionths()) &&
                       under(last.cost.hands_on.in_millionths());
    if (small) {
        const Cost cost = share_of(last.cost, quantity, last.quantity);
        if (fits(entered_, cost)) return cost;
    }
    find(FindingCode::too_large, line.fact);
    return {};
}

void Bookkeeper::receive(const StockLine& line, Account from, const Cost& cost) {
    LotState& state = ledger_.lots[line.lot];
    // What is on the jar stays on it, whatever is put to it later.
    if (!state.made) {
        state.made = day_;
        state.ready = line.ready;
        state.best_before = line.best_before;
    }
    const bool from_outside = ledger_.accounts.kind(from) == AccountKind::boundary;
    const bool left_out = from_outside && !fits(entered_, cost);
    if (left_out) find(FindingCode::too_large, line.fact);
    if (from_outside && !left_out) entered_ += sizes(cost);
    put_in(
        line.material, line.lot, from, source(line.fact, line.material, true), line.quantity, left_out ? Cost{} : cost);
}

void Bookkeeper::finish() {
    for (const StockLine& line : lines()) {
        if (!line.comes_in || line.left_out) continue;
        const Holder held = holder(line.material, line.lot);
        if (held.quantity > 0 && !line.counted) last_[line.material] = {balance(held.account), held.quantity};
        settle(number_of(line));
    }
}

void Bookkeeper::settle(std::uint32_t number) {
    const StockLine& line = stock_.lines[number];
    for (std::uint32_t i = stock_.first_settlement[number]; i < stock_.first_settlement[number + 1]; ++i) {
        const Settlement& settlement = stock_.settlements[i];
        Short& owed = short_[settlement.draw];
        const Cost came_to = worth(line.material, line.lot, settlement.quantity);
        const Cost was = share_of(owed.cost, settlement.quantity, owed.left);
        owed.left -= settlement.quantity;
        owed.cost -= was;
        const std::uint32_t from = source(line.fact, line.material, true);
        const Account held = holder(line.material, line.lot).account;
        leave(line.material, line.lot, account(Boundary::provisional), from, settlement.quantity, was);
        move(held, account(Boundary::shortfall), from, 0, came_to - was);
        if (owed.left == 0) short_.erase(settlement.draw);
    }
}

// Sets known to false where nobody can be named for the time.
const Pay* Bookkeeper::pay(const std::optional<Key<Person>>& who, FactRef fact, bool& known) {
    const Person* person = who ? shop_.find(*who) : default_person(shop_, day_);
    known = person != nullptr;
    if (!known) {
        find(FindingCode::nobody_named, fact);
        return nullptr;
    }
    const Pay* found = pay_in_force(shop_, person->key, day_);
    if (found == nullptr) find(FindingCode::pay_unknown, fact, {person->name});
    return found;
}

Cost Bookkeeper::own_time(const std::optional<Key<Person>>& who, const std::optional<Span>& time, FactRef fact) {
    if (!time || time->time.is_zero()) return {};
    bool known = false;
    const Pay* found = pay(who, fact, known);
    Cost cost;
    cost.hands_on = time->time;
    if (found != nullptr && found->per_hour && pays(*found->per_hour, time->time))
        cost.labour = HourlyRate{*found->per_hour} * time->time;
    return cost;
}

void Bookkeeper::work(const std::optional<Key<Person>>& who, const std::optional<Span>& time, Account to,
                      FactRef fact) {
    if (time) work(who, time->time, to, fact);
}

void Bookkeeper::work(const std::optional<Key<Person>>& who, Minutes time, Account to, FactRef fact) {
    if (time.is_zero()) return;
    bool known = false;
    const Pay* found = pay(who, fact, known);
    Money money;
    if (found != nullptr && found->per_hour) {
        if (!pays(*found->per_hour, time)) return find(FindingCode::too_large, fact);
        money = HourlyRate{*found->per_hour} * time;
    }
    Cost cost;
    const bool paid = found != nullptr && found->standing == Standing::paid;
    if (paid) {
        cost.materials = money;
    } else {
        cost.labour = money;
        cost.hands_on = time;
    }
    enter(paid ? Boundary::wages : Boundary::hours, to, fact, cost);
}

void Bookkeeper::find(FindingCode code, FactRef about, std::vector<std::string> args) {
    ledger_.findings.push_back({code, about, day_, std::move(args)});
}

Ledger Bookkeeper::close() && {
    std::vector<std::int64_t> left;
    for (const LotState& state : ledger_.lots) left.push_back(state.left);
    const std::vector<Cost> costs = lot_costs(shop_, ledger_.accounts, ledger_.balances, left);
    for (std::size_t i = 0; i < costs.size(); ++i) ledger_.lots[i].cost = costs[i];
    std::ranges::stable_sort(ledger_.findings, {}, &Finding::day);
    return std::move(ledger_);
}

}  // namespace dyestead
