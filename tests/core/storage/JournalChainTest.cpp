// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Journal.h"

#include "core/base/Message.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::storage;

namespace {

JournalRow rowAfter(const JournalRow *before, std::int64_t seq)
{
    JournalRow row;
    row.seq = seq;
    row.change_id = "c" + std::to_string(seq);
    row.stamp = 1'700'000'000'000 + seq;
    row.kind = "change";
    row.label = "Row";
    row.schema = 1;
    row.previous_hash = before ? before->hash : Blob(32, 0);
    const auto digest = hashOf(row);
    row.hash.assign(digest.begin(), digest.end());
    return row;
}

void sumUp(JournalRow &row)
{
    const auto digest = hashOf(row);
    row.hash.assign(digest.begin(), digest.end());
}

} // namespace

TEST_CASE("A chain of rows begins with zeros and counts from 1 without a gap")
{
    const auto first = rowAfter(nullptr, 1);
    const auto second = rowAfter(&first, 2);
    CHECK_FALSE(firstBreak({}));
    CHECK_FALSE(firstBreak({first, second}));
    CHECK(english(firstBreak({first, rowAfter(&first, 3)}).value()) ==
          "its row 3 (“Row”) is out of sequence");
    CHECK(english(firstBreak({rowAfter(nullptr, 2)}).value()) ==
          "its row 2 (“Row”) is out of sequence");
    // Rows were cut off at the beginning: the first that is left goes on from one that is not
    // there.
    CHECK(english(firstBreak({second}).value()) ==
          "its row 2 (“Row”) does not follow the row before it");
    auto disguised = rowAfter(&first, 1);
    CHECK(english(firstBreak({disguised}).value()) ==
          "its row 1 (“Row”) does not follow the row before it");
    CHECK(firstBreak({second, first}));
}

TEST_CASE("Every column of a row is in its hash")
{
    const auto row = rowAfter(nullptr, 1);
    CHECK(fitsItsHash(row));
    const auto altered = [&](auto alter) {
        JournalRow other = row;
        alter(other);
        const bool isSeen = !fitsItsHash(other);
        sumUp(other);
        return isSeen && fitsItsHash(other) && other.hash != row.hash;
    };
    CHECK(altered([](JournalRow &r) { r.seq = 2; }));
    CHECK(altered([](JournalRow &r) { r.change_id = "d1"; }));
    CHECK(altered([](JournalRow &r) { ++r.stamp; }));
    CHECK(altered([](JournalRow &r) { r.kind = "undo"; }));
    CHECK(altered([](JournalRow &r) { r.undoes = "c0"; }));
    // An empty text is not none.
    CHECK(altered([](JournalRow &r) { r.undoes = ""; }));
    CHECK(altered([](JournalRow &r) { r.who = "Robin"; }));
    CHECK(altered([](JournalRow &r) { r.label = "Another"; }));
    CHECK(altered([](JournalRow &r) { r.schema = 2; }));
    CHECK(altered([](JournalRow &r) { r.changeset = Blob{1}; }));
    CHECK(altered([](JournalRow &r) { r.origin_hash = Blob(32, 1); }));
    CHECK(altered([](JournalRow &r) { r.previous_hash = Blob(32, 1); }));
    // What one column ends with is not what the next begins with.
    auto moved = row;
    moved.kind = "chang";
    moved.who = "e";
    CHECK_FALSE(fitsItsHash(moved));
}

TEST_CASE("The hash of a row is SHA-256 over its columns, each with its length before it")
{
    JournalRow row;
    row.seq = 7;
    row.change_id = "c7";
    row.stamp = 1'700'000'000'007;
    row.kind = "change";
    row.who = "Robin";
    row.label = "Flügel";
    row.schema = 3;
    row.changeset = Blob{0, 1, 255};
    row.previous_hash = Blob(32, 0);
    // Made with Python's hashlib.sha256 of the bytes "1:7,2:c7,13:1700000000007,6:change,-,5:Robin,
    // 7:Flügel,1:3,3:\x00\x01\xff,-,32:" without the line break, 32 zero bytes and ",".
    CHECK(hex(hashOf(row)) == "f16d95af6555e7b7207c6ebbd65756cdb7c1dce9bcdf3e7278ad906d674cf090");
}
