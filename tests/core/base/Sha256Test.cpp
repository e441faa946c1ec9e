// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Sha256.h"

#include <catch2/catch.hpp>

using namespace lastrivet;

// NIST, "Cryptographic Standards and Guidelines: Example Values", SHA-256 with one and two blocks;
// the empty message is in the Secure Hash Algorithm validation vectors (SHA256ShortMsg, Len = 0).
TEST_CASE("SHA-256 gives the published example values, in one piece or several")
{
    Sha256 one;
    one.add("abc");
    CHECK(hex(one.digest()) == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    Sha256 two;
    two.add("abcdbcdecdefdefgefghfghigh");
    two.add("ijhijkijkljklmklmnlmnomnopnopq");
    CHECK(hex(two.digest()) == "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    CHECK(sha256({}) == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

TEST_CASE("Only 64 lower-case hex digits are taken for a hash")
{
    const std::string hash(64, 'a');
    CHECK(isSha256(hash));
    CHECK_FALSE(isSha256(hash.substr(1)));
    CHECK_FALSE(isSha256(std::string(64, 'A')));
    CHECK_FALSE(isSha256("../" + hash.substr(3)));
}

TEST_CASE("A hash in capitals is written small, what is none stays as it is")
{
    CHECK(withLowerCaseHex("0123456789ABCDEFabcdef" + std::string(42, 'F')) ==
          "0123456789abcdefabcdef" + std::string(42, 'f'));
    CHECK(withLowerCaseHex(std::string(64, 'G')) == std::string(64, 'G'));
    CHECK(withLowerCaseHex("ABC") == "ABC");
    CHECK(withLowerCaseHex({}).empty());
}
