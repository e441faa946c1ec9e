// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/SecondDatabases.h"
#include "core/verify/Verification.h"
#include "tests/support/TestProject.h"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <catch2/catch.hpp>

using namespace lastrivet;
namespace fs = std::filesystem;

namespace {

/// Whether another program would find locks of this one on the file. A process does not see its own
/// locks, and loses them when it closes the file, so a child looks.
bool isLocked(const fs::path &path)
{
    const pid_t child = ::fork();
    if (child == 0) {
        const int file = ::open(path.c_str(), O_RDWR);
        struct flock lock {};
        lock.l_type = F_WRLCK;
        const bool isAsked = file >= 0 && ::fcntl(file, F_GETLK, &lock) == 0;
        ::_exit(isAsked && lock.l_type != F_UNLCK ? 1 : 0);
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    return WIFEXITED(status) && WEXITSTATUS(status) == 1;
}

} // namespace

TEST_CASE("A look into the project's folder leaves the locks on its database")
{
    test::TestProject project;
    project.part("Wing");
    const fs::path shared = project.folder() / "records.db-shm";
    REQUIRE(isLocked(shared));
    REQUIRE(isLocked(project.database()));
    SECTION("for other databases")
    {
        CHECK(secondDatabases(*project).empty());
    }
    SECTION("when it is opened a second time")
    {
        CHECK(project.openAgain()->isReadOnly());
    }
    SECTION("when it is verified")
    {
        CHECK(verify(project.folder()).isFaultless());
    }
    CHECK(isLocked(shared));
    CHECK(isLocked(project.database()));
}
