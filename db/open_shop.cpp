#include "db/open_shop.h"

#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>

#include <random>

#include "db/bring_up.h"
#include "db/connection.h"
#include "db/history.h"
#include "db/load.h"
#include "db/save.h"
#include "db/trouble.h"
#include "db/unfinished.h"

namespace dyestead::db {
namespace {

std::string random_id() {
    std::random_device chance;
    return fmt::format("{:08x}{:08x}{:08x}{:08x}", chance(), chance(), chance(), chance());
}

std::vector<std::string> first_column(SQLite::Database& db, const char* sql) {
    std::vector<std::string> texts;
    SQLite::Statement query{db, sql};
    while (query.executeStep()) texts.push_back(query.getColumn(0).getString());
    return texts;
}

}  // namespace

struct OpenShop::State {
    std::filesystem::path path;
    SQLite::Database db;
    Loaded loaded{};
    History history{};
    std::optional<BroughtUp> brought_up{};

    // Brings memory to what the file holds; true when that is something else than before. SQLite's
    // mark of a change alone does not say so: it also moves when a change of our own is rolled back.
    // Requires: a transaction.
    bool catch_up() {
        const auto newest = last_change(db);  // reads, so that the mark is of this moment
        if (newest == loaded.last_change && data_version(db) == loaded.data_version) return false;
        check_schema(db, path);
        Loaded now = load(db, path);
        const bool changed = now.last_change != loaded.last_change || now.seals != loaded.seals;
        loaded = std::move(now);
        history = read_history(db);
        return changed;
    }
};

OpenShop::OpenShop(std::unique_ptr<State> state) : state_{std::move(state)} {}
OpenShop::OpenShop(OpenShop&&) noexcept = default;
OpenShop& OpenShop::operator=(OpenShop&&) noexcept = default;
OpenShop::~OpenShop() = default;

const Shop& OpenShop::shop() const {
    return state_->loaded.shop;
}
const std::filesystem::path& OpenShop::path() const {
    return state_->path;
}
const std::string& OpenShop::file_id() const {
    return state_->loaded.file_id;
}
const std::optional<BroughtUp>& OpenShop::brought_up() const {
    return state_->brought_up;
}

OpenShop OpenShop::open(const std::filesystem::path& path, Access access) {
    auto state = std::make_unique<State>(State{path, connect(path, access), {}, {}, {}});
    guarded(path, [&] {
        state->brought_up = bring_up(state->db, path);
        SQLite::Transaction moment{state->db};
        check_schema(state->db, path);
        state->loaded = load(state->db, path);
        state->history = read_history(state->db);
    });
    return OpenShop{std::move(state)};
}

OpenShop OpenShop::create(const std::filesystem::path& path, const Title& title, const Shop& first) {
    Unfinished file{path};
    {
        SQLite::Database db = connect_new(file.path());
        guarded(path, [&] {
            SQLite::Transaction all{db, SQLite::TransactionBehavior::IMMEDIATE};
            SQLite::Statement id{db, "INSERT INTO file (id) VALUES (?)"};
            id.bind(1, random_id());
            id.exec();
            write_first_seals(db);
            const Change change = difference(Shop{}, first);
            if (!change.is_empty()) write_change(db, title, change, Seals{}, seals_of(first));
            all.commit();
        });
    }
    file.finish();
    return open(path, Access::read_write);
}

Committed OpenShop::commit(const Title& title, const Change& change) {
    if (change.is_empty()) return Committed::yes;
    return guarded(state_->path, [&] {
        SQLite::Transaction all{state_->db, SQLite::TransactionBehavior::IMMEDIATE};
        if (state_->catch_up()) return Committed::file_had_changed;
        Loaded& known = state_->loaded;
        const Seals after = seals_after(known.seals, known.shop, change);
        write_change(state_->db, title, change, known.seals, after);
        const auto newest = last_change(state_->db);
        all.commit();
        known.shop = applied(std::move(known.shop), change);
        known.seals = after;
        known.last_change = newest;
        state_->history.undo.push_back(newest);
        state_->history.redo.clear();
        return Committed::yes;
    });
}

std::optional<Title> OpenShop::next_undo() const {
    const auto& undo = state_->history.undo;
    return undo.empty() ? std::nullopt : std::optional{read_entry(state_->db, undo.back()).title};
}

bool OpenShop::undo_is_closed() const {
    return state_->history.undo.empty() && state_->history.closed;
}

std::optional<Title> OpenShop::next_redo() const {
    const auto& redo = state_->history.redo;
    return redo.empty() ? std::nullopt : std::optional{read_entry(state_->db, redo.back()).title};
}

Committed OpenShop::undo() {
    return take_back_next(false);
}

Committed OpenShop::redo() {
    return take_back_next(true);
}

Committed OpenShop::take_back_next(bool redo) {
    if (redo ? state_->history.redo.empty() : state_->history.undo.empty()) return Committed::yes;
    return guarded(state_->path, [&] {
        SQLite::Transaction all{state_->db, SQLite::TransactionBehavior::IMMEDIATE};
        if (state_->catch_up()) return Committed::file_had_changed;
        const std::int64_t id = (redo ? state_->history.redo : state_->history.undo).back();
        const LogEntry entry = read_entry(state_->db, id);
        Loaded& known = state_->loaded;
        // A redo takes back an undo, so both look back from where the entry led.
        const auto inverse =
            known.seals.total() == entry.seal_after ? take_back(state_->db, entry) : std::optional<std::string>{};
        if (!inverse) throw ShopTrouble{TroubleId::shop_damaged, state_->path, {{"table", "change"}}};
        Shop before = load_facts(state_->db, state_->path);
        const Seals after = seals_of(before);
        if (after.total() != entry.seal_before)
            throw ShopTrouble{TroubleId::shop_damaged, state_->path, {{"table", "change"}}};
        write_seals(state_->db, known.seals, after);
        write_entry(state_->db, entry.title, *inverse, id, known.seals, after);
        const auto newest = last_change(state_->db);
        all.commit();
        known.shop = std::move(before);
        known.seals = after;
        known.last_change = newest;
        History& history = state_->history;
        (redo ? history.redo : history.undo).pop_back();
        (redo ? history.undo : history.redo).push_back(newest);
        return Committed::yes;
    });
}

std::vector<Draft> OpenShop::drafts() {
    return guarded(state_->path, [&] { return read_drafts(state_->db); });
}

void OpenShop::keep_draft(const Draft& draft) {
    guarded(state_->path, [&] { write_draft(state_->db, draft); });
}

bool OpenShop::refresh() {
    return guarded(state_->path, [&] {
        SQLite::Transaction moment{state_->db};
        return state_->catch_up();
    });
}

std::vector<Trouble> OpenShop::check() {
    std::vector<Trouble> troubles;
    const auto report = [&](TroubleId id, std::vector<TroubleArg> args) {
        troubles.push_back(ShopTrouble{id, state_->path, std::move(args)}.trouble);
    };
    try {
        guarded(state_->path, [&] {
            SQLite::Transaction moment{state_->db};
            check_schema(state_->db, state_->path);
            for (const auto& line : first_column(state_->db, "PRAGMA integrity_check"))
                if (line != "ok") report(TroubleId::shop_damaged, {{"detail", line}});
            for (const auto& table : first_column(state_->db, "PRAGMA foreign_key_check"))
                report(TroubleId::no_such_reference, {{"table", table}});
            load(state_->db, state_->path);
        });
    } catch (const ShopTrouble& trouble) {
        troubles.push_back(trouble.trouble);
    }
    return troubles;
}

void OpenShop::copy_to(const std::filesystem::path& target) {
    Unfinished file{target};
    copy_pages(state_->db, file.path());
    {
        OpenShop copy = open(file.path(), Access::read_only);
        if (!copy.check().empty()) throw ShopTrouble{TroubleId::shop_damaged, state_->path};
    }
    file.finish();
}

}  // namespace dyestead::db
