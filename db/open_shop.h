// open_shop.h - the shop file that is open: what is in it, and the only way to change it.
// Every change is saved at once, whole or not at all, and leaves one entry in the file's own log.
//
//   OpenShop open = OpenShop::open(path, Access::read_write);
//   Change change; change.put.all<Fair>().push_back(fair);
//   if (open.commit({"fair_saved", {{"code", fair.code}}}, change) == Committed::file_had_changed) ...
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "db/draft.h"
#include "domain/facts/change.h"
#include "domain/text/trouble.h"

namespace dyestead::db {

enum class Access : std::uint8_t { read_only, read_write };

// What a change was, as a code and its particulars; reports/words makes "Undo add batch" of it.
struct Title {
    std::string code;
    std::vector<TroubleArg> args{};
};

// A file of an earlier version was made one of this version, and how it was before lies here.
struct BroughtUp {
    std::uint32_t from = 0;
    std::filesystem::path backup;
};

enum class Committed : std::uint8_t {
    yes,
    // Another program had changed the file: nothing was written, shop() now holds what the file
    // holds, and the caller may look again and try again.
    file_had_changed,
};

// All functions throw ShopTrouble when the surroundings fail; then file and memory are as before.
class OpenShop {
public:
    // A new file with these first facts, as one change. It stands under its name only when it is
    // whole. Trouble already_there, never overwritten.
    static OpenShop create(const std::filesystem::path& path, const Title& title, const Shop& first);
    // Read and checked against its seals in full. A file that is not ours, newer, damaged or that holds foreign tables
    // is refused untouched; one of an earlier version is brought up first, whatever the access (bring_up.h).
    static OpenShop open(const std::filesystem::path& path, Access access);

    OpenShop(OpenShop&&) noexcept;
    OpenShop& operator=(OpenShop&&) noexcept;
    ~OpenShop();

    const Shop& shop() const;
    const std::filesystem::path& path() const;
    // The file's own random name, which it keeps when it is moved; its backups lie under it.
    const std::string& file_id() const;
    // What opening it did to a file of an earlier version; nothing for one of today's.
    const std::optional<BroughtUp>& brought_up() const;

    // An empty change writes nothing. A fact that refers to none: no_such_reference.
    [[nodiscard]] Committed commit(const Title& title, const Change& change);
    // What Undo would take back next and Redo bring again; nothing when there is none.
    std::optional<Title> next_undo() const;
    std::optional<Title> next_redo() const;
    // Nothing to take back, though there was something: it was entered before the file was brought up.
    bool undo_is_closed() const;
    // One more entry in the log, which takes back the one named above. Nothing to take back: nothing is done.
    // Throws besides: shop_damaged when the file does not hold what the log says; then nothing is changed.
    [[nodiscard]] Committed undo();
    [[nodiscard]] Committed redo();

    // Forms half filled in; see draft.h. A draft is no change: no log, no seal, no backup.
    std::vector<Draft> drafts();
    void keep_draft(const Draft& draft);

    // Reads again if another program has changed the file; true when it had.
    bool refresh();
    // Looks at the whole file: pages, references, seals. No troubles: all is well.
    std::vector<Trouble> check();
    // A whole, verified copy under a name that must not exist yet.
    void copy_to(const std::filesystem::path& target);

private:
    Committed take_back_next(bool redo);
    struct State;
    explicit OpenShop(std::unique_ptr<State> state);
    std::unique_ptr<State> state_;
};

}  // namespace dyestead::db
