#include "db/claim.h"

#include <doctest/doctest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <ctime>

#include "tests/support/temp_folder.h"

namespace dyestead::db {
namespace {

std::string this_host() {
    std::array<char, 256> name{};
    gethostname(name.data(), name.size() - 1);
    return name.data();
}

struct Folder {
    test::TempFolder temp;
    std::filesystem::path shop = temp / "two sheds.dyestead";
    std::filesystem::path file = temp / ".two sheds.dyestead.claim";
    Folder() { test::write_bytes(shop, "a shop"); }
};

}  // namespace

TEST_CASE("the second to come is told who was first, until that one goes") {
    const Folder folder;
    {
        const Claim first{folder.shop, "dyestead", Claiming::if_free};
        CHECK_FALSE(first.holder());
        const Claim second{folder.shop, "another", Claiming::if_free};
        REQUIRE(second.holder());
        CHECK(second.holder()->host == this_host());
        CHECK(second.holder()->program == "dyestead");
        CHECK(std::time(nullptr) - second.holder()->since < 60);
    }
    CHECK_FALSE(std::filesystem::exists(folder.file));
    CHECK_FALSE(Claim{folder.shop, "dyestead", Claiming::if_free}.holder());
}

TEST_CASE("one who only looked does not take the claim of another away") {
    const Folder folder;
    const Claim first{folder.shop, "dyestead", Claiming::if_free};
    { const Claim second{folder.shop, "dyestead", Claiming::if_free}; }
    { const Claim third{folder.shop, "dyestead", Claiming::anyway}; }
    CHECK(std::filesystem::exists(folder.file));
    CHECK(Claim{folder.shop, "dyestead", Claiming::if_free}.holder());
}

TEST_CASE("by a link it is the same shop") {
    const Folder folder;
    std::filesystem::create_symlink(folder.shop, folder.temp / "link");
    const Claim first{folder.shop, "dyestead", Claiming::if_free};
    CHECK(Claim{folder.temp / "link", "dyestead", Claiming::if_free}.holder());
}

TEST_CASE("what a program that is gone has left behind is no claim") {
    const Folder folder;
    const pid_t child = fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        const Claim held{folder.shop, "dyestead", Claiming::if_free};
        _exit(0);  // as in a crash: nothing is cleared away
    }
    int status = 0;
    REQUIRE(waitpid(child, &status, 0) == child);
    REQUIRE(std::filesystem::exists(folder.file));
    CHECK_FALSE(Claim{folder.shop, "dyestead", Claiming::if_free}.holder());
}

TEST_CASE("of another machine only the words are known; they are believed, unless one wants to write anyway") {
    const Folder folder;
    test::write_bytes(folder.file, "the shed's own computer\ndyestead\n1790000000\n");
    {
        const Claim looked{folder.shop, "dyestead", Claiming::if_free};
        REQUIRE(looked.holder());
        CHECK(looked.holder()->host == "the shed's own computer");
        CHECK(looked.holder()->since == 1'790'000'000);
    }
    CHECK(std::filesystem::exists(folder.file));
    const Claim anyway{folder.shop, "dyestead", Claiming::anyway};
    CHECK_FALSE(anyway.holder());
    const Claim next{folder.shop, "dyestead", Claiming::if_free};
    REQUIRE(next.holder());
    CHECK(next.holder()->host == this_host());
}

TEST_CASE("where no file can be laid there is no claim and no trouble") {
    const Folder folder;
    std::filesystem::create_directory(folder.file);  // also root cannot write into that
    const Claim first{folder.shop, "dyestead", Claiming::if_free};
    CHECK_FALSE(first.holder());
    CHECK_FALSE(Claim{folder.shop, "dyestead", Claiming::if_free}.holder());
    CHECK_FALSE(Claim{folder.temp / "none.dyestead", "dyestead", Claiming::if_free}.holder());
    CHECK_FALSE(std::filesystem::exists(folder.temp / ".none.dyestead.claim"));
    CHECK(std::filesystem::is_directory(folder.file));
}

}  // namespace dyestead::db
