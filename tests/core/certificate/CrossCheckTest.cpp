// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/certificate/CrossCheck.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::certificate;

namespace {

CertificateDocument document(std::string_view key)
{
    CertificateDocument made;
    made.key = key;
    return made;
}

} // namespace

TEST_CASE("What papers write otherwise than the project is named, spelling aside")
{
    test::ProjectBuilder project;
    project.records.project.model = "Swift 2";
    project.records.project.registration = "C-FABC";
    project.records.project.serial_number = "0042";
    auto paper = document("registration");
    paper.model_as_written = "SWIFT-2";
    paper.registration_as_written = "CFABC";
    paper.serial_as_written = "42";
    const auto id = project.add(paper);
    const auto found = disagreements(project.records);
    REQUIRE(found.size() == 1);
    CHECK(found.front().what == Said::SerialNumber);
    CHECK(found.front().record == RecordRef{RecordType::CertificateDocument, id.value()});
    CHECK(found.front().written == "42");
    CHECK(found.front().expected == "0042");
}

TEST_CASE("A name in capitals is the same name, with its accents too")
{
    test::ProjectBuilder project;
    project.change(project.builder, [](Person &person) { person.name = "Åsa Möller"; });
    auto paper = document("registration");
    paper.name_as_written = "ÅSA MÖLLER";
    const auto id = project.add(paper);
    CHECK(disagreements(project.records).empty());
    project.change(id,
                   [](CertificateDocument &document) { document.name_as_written = "ASA MOLLER"; });
    CHECK(disagreements(project.records).size() == 1);
}

TEST_CASE(
    "One serial number on two parts of one kind is told, and equipment that is the part is not")
{
    test::ProjectBuilder project;
    const auto left = project.part("Left magneto");
    const auto right = project.part("Right magneto");
    for (const auto id : {left, right}) {
        project.change(id, [](Component &part) {
            part.part_number = "M-100";
            part.serial_number = "77 A";
        });
    }
    REQUIRE(sameSerialNumbers(project.records).size() == 1);
    project.change(right, [](Component &part) { part.serial_number = "78A"; });
    Equipment listed;
    listed.name = "Left magneto";
    listed.component_id = left;
    listed.part_number = "M-100";
    listed.serial_number = "77A";
    project.add(listed);
    CHECK(sameSerialNumbers(project.records).empty());
}

TEST_CASE("A paper is held against what the project says, word by word")
{
    test::ProjectBuilder project;
    project.records.project.model = "Swift 2";
    auto paper = document("application");
    paper.model_as_written = "Swift 3";
    paper.registration_as_written = "C-FABC";
    project.add(paper);
    const auto rows = compared(project.records);
    REQUIRE(rows.size() == 1);
    const auto outcome = [&](Said what) { return rows.front().said[std::size_t(what)].outcome; };
    CHECK(outcome(Said::Model) == Compared::Outcome::Differs);
    CHECK(outcome(Said::Registration) == Compared::Outcome::Unknown);
    CHECK(outcome(Said::SerialNumber) == Compared::Outcome::NotWritten);
    project.records.project.registration = "c fabc";
    CHECK(compared(project.records).front().said[std::size_t(Said::Registration)].outcome ==
          Compared::Outcome::Agrees);
    REQUIRE(disagreements(project.records).size() == 1);
    CHECK(english(sentence(disagreements(project.records).front())) ==
          "the model is Swift 3 there, and Swift 2 in the facts of the project");
}

TEST_CASE("The equipment list and the part that it names have to give one serial number")
{
    test::ProjectBuilder project;
    const auto engine = project.part("Engine");
    project.change(engine, [](Component &part) {
        part.part_number = "E-80";
        part.serial_number = "1017";
    });
    Equipment listed;
    listed.name = "Engine";
    listed.component_id = engine;
    listed.part_number = "E80";
    listed.serial_number = "1071";
    const auto id = project.add(listed);
    const auto found = disagreements(project.records);
    REQUIRE(found.size() == 1);
    CHECK(found.front() ==
          Disagreement{Said::SerialNumber, {RecordType::Equipment, id.value()}, "1071", "1017"});
    // A radio in the cabin is not the cabin.
    project.change(id, [](Equipment &piece) { piece.part_number = "R-2"; });
    CHECK(disagreements(project.records).empty());
}
