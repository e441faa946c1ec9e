// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/DocumentSchema.h"
#include "core/exchange/DocumentWriter.h"
#include "tests/support/RandomRecords.h"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

/// The first line in which two texts differ, as each has it; empty when there is none.
std::string firstDifference(const std::string &published, const std::string &described)
{
    std::istringstream one(published);
    std::istringstream other(described);
    std::string has;
    std::string wants;
    for (int number = 1; published != described; ++number) {
        const bool isLonger = bool(std::getline(one, has));
        if (bool(std::getline(other, wants)) != isLonger || has != wants)
            return "line " + std::to_string(number) + ": " + has + " | " + wants;
        if (!isLonger)
            return "the last line ends otherwise";
    }
    return {};
}

} // namespace

TEST_CASE("The published schema is the one that follows from the descriptions")
{
    const std::filesystem::path file = LASTRIVET_SOURCE "/resources/schema/records.schema.json";
    if (std::getenv("LASTRIVET_APPROVE"))
        std::ofstream(file, std::ios::binary) << documentSchema();
    std::ostringstream published;
    published << std::ifstream(file, std::ios::binary).rdbuf();
    INFO("LASTRIVET_APPROVE=1 in the environment writes it anew");
    CHECK(firstDifference(published.str(), documentSchema()) == "");
}

// jsonschema (Debian's python3-jsonschema) is the independent reader of the schema.
TEST_CASE("A general library accepts a written document by the schema, and refuses faulty ones")
{
    const auto folder = std::filesystem::temp_directory_path() / "lastrivet-schema-test";
    std::filesystem::create_directories(folder);
    exchange::writeDocumentFile(RandomRecords(3, 6).all(), folder / "document.json");
    const auto command = std::string("'") + LASTRIVET_PYTHON +
                         "' '" LASTRIVET_SOURCE
                         "/tests/reference/check_schema.py' '" LASTRIVET_SOURCE
                         "/resources/schema/records.schema.json' '" +
                         (folder / "document.json").string() + "'";
    CHECK(std::system(command.c_str()) == 0);
    std::filesystem::remove_all(folder);
}
