// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Readiness.h"
#include "tests/support/WingProject.h"
#include "tests/ui/print/PrintedFolder.h"
#include "ui/print/ChangesPrinter.h"
#include "ui/print/CorrectionsPrinter.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

/// The wing after a visit with findings, worked on since.
struct Visited : WingProject {
    Visited()
    {
        Inspection visit = *records.find(Id<Inspection>{1});
        visit.held_on = at("2026-02-05");
        visit.asked_on = at("2026-01-20");
        visit.report_number = "R-17";
        records.inspections.put(visit);
        Squawk late = *records.find(Id<Squawk>{1});
        late.found_on = at("2026-02-05");
        late.fixed_on = at("2026-02-11");
        records.squawks.put(late);
        records.sign_offs.put({.id = Id<SignOff>{1},
                               .hold_point_id = preCover,
                               .inspection_id = visit.id,
                               .person_id = inspector,
                               .signed_on = at("2026-02-05"),
                               .result = SignOffResult::AcceptedWithFindings});
    }
};

QString pages(const std::filesystem::path &pdf)
{
    const auto run =
        PrintedFolder::run(QStringLiteral("pdfinfo"), {QString::fromStdString(pdf.string())});
    const auto at = run.output.indexOf(QStringLiteral("Pages:"));
    return run.output.mid(at + 6).section(QLatin1Char('\n'), 0, 0).trimmed();
}

QString embeddedPictures(const std::filesystem::path &pdf)
{
    return PrintedFolder::run(QStringLiteral("pdfimages"),
                              {QStringLiteral("-list"), QString::fromStdString(pdf.string())})
        .output;
}

} // namespace

TEST_CASE(
    "The corrections report names finding, correction and who has to verify, with both pictures")
{
    const PrintedFolder folder;
    const Visited project;
    const auto report = packet::correctionsReport(project.records, project.profile,
                                                  Id<Inspection>{1}, project.as_of);
    REQUIRE(report);
    const auto file = folder.path("corrections.pdf");
    const auto printed =
        print::printCorrections(*report, imprintOfTest(), folder.pictures(), {}, file);
    REQUIRE(printed);
    CHECK(printed->pictures == 2);
    const QString text = PrintedFolder::text(file).simplified();
    for (const char *words : {"CORRECTIONS REPORT", "report R-17", "Rivet set too deep in rib 3",
                              "Drilled out and replaced", "waits for: inspector", "Before", "After",
                              "Neither verified nor accepted: 1"})
        CHECK(text.contains(QLatin1String(words)));
    CHECK(embeddedPictures(file).count(QStringLiteral("jpeg")) == 2);
    CHECK(PrintedFolder::run(QStringLiteral("qpdf"),
                             {QStringLiteral("--check"), QString::fromStdString(file.string())})
              .exit_code == 0);
}

TEST_CASE("A day that is known only roughly is no certain day in the corrections report")
{
    const PrintedFolder folder;
    Visited project;
    Squawk finding = *project.records.find(Id<Squawk>{1});
    finding.approximate = true;
    project.records.squawks.put(finding);
    const auto report = packet::correctionsReport(project.records, project.profile,
                                                  Id<Inspection>{1}, project.as_of);
    REQUIRE(report);
    const auto file = folder.path("corrections.pdf");
    REQUIRE(print::printCorrections(*report, imprintOfTest(), folder.pictures(), {}, file));
    CHECK(PrintedFolder::text(file).simplified().contains(QStringLiteral("found about 5 Feb")));
}

TEST_CASE("What is not corrected waits for nobody to verify it")
{
    const PrintedFolder folder;
    Visited project;
    Squawk squawk = *project.records.find(Id<Squawk>{1});
    squawk.fixed_on.reset();
    project.records.squawks.put(squawk);
    const auto report = packet::correctionsReport(project.records, project.profile,
                                                  Id<Inspection>{1}, project.as_of);
    REQUIRE(report);
    const auto file = folder.path("corrections.pdf");
    REQUIRE(print::printCorrections(*report, imprintOfTest(), folder.pictures(), {}, file));
    const QString text = PrintedFolder::text(file).simplified();
    CHECK_FALSE(text.contains(QLatin1String("waits for")));
    CHECK(text.contains(QLatin1String("not corrected yet not corrected")));
}

TEST_CASE("Papers in another language say the words of the core in it")
{
    const PrintedFolder folder;
    Visited project;
    project.records.work_sessions.put({.id = Id<WorkSession>{10},
                                       .began = WingProject::at("2026-02-10"),
                                       .component_id = project.rib,
                                       .kind = WorkKind::Assembly,
                                       .changed_inspected = true});
    // Each pattern says itself in capitals, which nothing in English does.
    const print::Wording loud(QLocale(QLocale::German), [](std::string_view pattern) {
        return QString::fromUtf8(pattern.data(), qsizetype(pattern.size())).toUpper();
    });
    const print::Choices choices{print::Paper::A4, loud};
    const auto report = packet::correctionsReport(project.records, project.profile,
                                                  Id<Inspection>{1}, project.as_of);
    REQUIRE(report);
    const auto corrections = folder.path("corrections.pdf");
    REQUIRE(
        print::printCorrections(*report, imprintOfTest(), folder.pictures(), choices, corrections));
    CHECK(PrintedFolder::text(corrections)
              .simplified()
              .contains(QStringLiteral("WAITS FOR: INSPECTOR")));
    const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
    const auto changes =
        packet::changesSince(project.records, project.profile, answer, project.preCover);
    REQUIRE(changes);
    const auto file = folder.path("changes.pdf");
    REQUIRE(print::printChanges(*changes, imprintOfTest(), folder.pictures(), choices, file));
    const QString text = PrintedFolder::text(file).simplified();
    for (const char *words : {"PRE-COVER INSPECTION", "ACCEPTED WITH FINDINGS", "WORK: ASSEMBLY"})
        CHECK(text.contains(QLatin1String(words)));
}

TEST_CASE("What changed since a signature stands on one page, however much it was")
{
    const PrintedFolder folder;
    Visited project;
    for (std::int64_t day = 10; day < 28; ++day)
        project.records.work_sessions.put(
            {.id = Id<WorkSession>{day},
             .began = WingProject::at("2026-02-" + std::to_string(day)),
             .component_id = project.rib,
             .kind = WorkKind::Assembly,
             .changed_inspected = true,
             .note = "Riveted another row along the flange and deburred the holes of the next"});
    const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
    const auto changes =
        packet::changesSince(project.records, project.profile, answer, project.preCover);
    REQUIRE(changes);
    REQUIRE(changes->changes.size() > 18);
    const auto file = folder.path("changes.pdf");
    for (const auto paper : {print::Paper::A4, print::Paper::Letter}) {
        REQUIRE(
            print::printChanges(*changes, imprintOfTest(), folder.pictures(), {paper, {}}, file));
        CHECK(pages(file) == QStringLiteral("1"));
        const QString text = PrintedFolder::text(file).simplified();
        for (const char *words :
             {"Signed by Ines Inspector (No. 77)",
              "Earlier changes, in the inspection packet:", "Report of the visit: R-17",
              "3 photographs taken since, not", "Findings inside, and what became of them",
              "Does your signature still hold?", "Yes, it holds."})
            CHECK(text.contains(QLatin1String(words)));
    }
}

TEST_CASE("Long captions do not drive the answer from the page")
{
    const PrintedFolder folder;
    Visited project;
    project.records.work_sessions = {};
    project.records.steps = {};
    project.records.fasteners = {};
    for (std::int64_t id = 1; id <= 3; ++id) {
        Media photo = *project.records.find(Id<Media>{id});
        for (int i = 0; i < 30; ++i)
            photo.caption += " seen from the root towards the tip";
        project.records.media.put(photo);
    }
    const auto file = folder.path("changes.pdf");
    for (const auto paper : {print::Paper::A4, print::Paper::Letter}) {
        const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
        const auto changes =
            packet::changesSince(project.records, project.profile, answer, project.preCover);
        REQUIRE(changes);
        const auto printed =
            print::printChanges(*changes, imprintOfTest(), folder.pictures(), {paper, {}}, file);
        REQUIRE(printed);
        CHECK(printed->pages == 1);
    }
}

TEST_CASE("One photograph taken since a signature has no missing one beside it")
{
    const PrintedFolder folder;
    Visited project;
    project.records.work_sessions = {};
    project.records.steps = {};
    project.records.fasteners = {};
    const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
    auto changes = packet::changesSince(project.records, project.profile, answer, project.preCover);
    REQUIRE(changes);
    REQUIRE(!changes->photos.empty());
    changes->photos.erase(changes->photos.begin() + 1, changes->photos.end());
    const auto file = folder.path("changes.pdf");
    REQUIRE(print::printChanges(*changes, imprintOfTest(), folder.pictures(), {}, file));
    const QString text = PrintedFolder::text(file).simplified();
    CHECK(text.contains(QStringLiteral("Photographed since: 1 of 1")));
    CHECK_FALSE(text.contains(QStringLiteral("No photograph on record")));
}

TEST_CASE("What goes to whoever decides ends with the cautions that bear on it")
{
    const PrintedFolder folder;
    Visited project;
    project.profile.cautions = {{"records_not_work", "Clear is not right."},
                                {"makers_data_first", "The maker's data comes first."},
                                {"cure_temperature", "Cold cures slowly."},
                                {"builders_record", "The builder's record alone."},
                                {"own", "One of one's own."}};
    const auto says = [](const QString &text, const char *words) {
        return text.contains(QLatin1String(words));
    };
    const auto report = packet::correctionsReport(project.records, project.profile,
                                                  Id<Inspection>{1}, project.as_of);
    REQUIRE(report);
    const auto file = folder.path("paper.pdf");
    REQUIRE(print::printCorrections(*report, imprintOfTest(), folder.pictures(), {}, file));
    const QString corrections = PrintedFolder::text(file).simplified();
    const auto changesText = [&] {
        const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
        const auto changes =
            packet::changesSince(project.records, project.profile, answer, project.preCover);
        REQUIRE(changes);
        const auto printed =
            print::printChanges(*changes, imprintOfTest(), folder.pictures(), {}, file);
        REQUIRE(printed);
        CHECK(printed->pages == 1);
        return PrintedFolder::text(file).simplified();
    };
    const QString withTorque = changesText();
    project.records.fasteners = {};
    const QString without = changesText();
    for (const QString &text : {corrections, withTorque, without}) {
        CHECK(says(text, "The builder's record alone."));
        CHECK(says(text, "One of one's own."));
        CHECK_FALSE(says(text, "Clear is not right."));
        CHECK_FALSE(says(text, "Cold cures slowly."));
    }
    CHECK(says(withTorque, "The maker's data comes first."));
    CHECK_FALSE(says(corrections, "The maker's data comes first."));
    CHECK_FALSE(says(without, "The maker's data comes first."));
}

TEST_CASE("Without a rule profile's cautions the papers of a visit end with the program's own")
{
    const PrintedFolder folder;
    Visited project;
    project.profile.cautions.clear();
    const auto report = packet::correctionsReport(project.records, project.profile,
                                                  Id<Inspection>{1}, project.as_of);
    REQUIRE(report);
    const auto file = folder.path("corrections.pdf");
    REQUIRE(print::printCorrections(*report, imprintOfTest(), folder.pictures(), {}, file));
    CHECK(PrintedFolder::text(file).simplified().contains(
        QLatin1String("the drawings, the authority and the inspector decide.")));
}

TEST_CASE("Where only corrections touched the inside, the page says so")
{
    const PrintedFolder folder;
    Visited project;
    SignOff late = *project.records.find(Id<SignOff>{1});
    late.signed_on = WingProject::at("2026-03-05");
    project.records.sign_offs.put(late);
    const auto correct = [&](std::string_view day) {
        Squawk squawk = *project.records.find(Id<Squawk>{1});
        squawk.fixed_on = WingProject::at(day);
        project.records.squawks.put(squawk);
    };
    const auto sentenceOf = [&] {
        const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
        const auto changes =
            packet::changesSince(project.records, project.profile, answer, project.preCover);
        REQUIRE(changes);
        REQUIRE(changes->changes.empty());
        const auto file = folder.path("changes.pdf");
        REQUIRE(print::printChanges(*changes, imprintOfTest(), folder.pictures(), {}, file));
        return PrintedFolder::text(file).simplified();
    };
    correct("2026-03-08");
    CHECK(sentenceOf().contains(QLatin1String("Nothing besides the corrections below.")));
    correct("2026-03-04");
    CHECK(sentenceOf().contains(QLatin1String("Nothing on record was touched since.")));
}

TEST_CASE("A visit without findings does not claim that nothing was found, and names an adviser so")
{
    const PrintedFolder folder;
    Visited project;
    project.records.squawks = {};
    Person visitor = *project.records.find(project.inspector);
    visitor.roles = {Role::Adviser};
    project.records.people.put(visitor);
    const auto report = packet::correctionsReport(project.records, project.profile,
                                                  Id<Inspection>{1}, project.as_of);
    REQUIRE(report);
    CHECK(report->visit.visitor_role == SignerRole::Adviser);
    const auto file = folder.path("corrections.pdf");
    REQUIRE(print::printCorrections(*report, imprintOfTest(), folder.pictures(), {}, file));
    const QString text = PrintedFolder::text(file).simplified();
    CHECK(text.contains(QLatin1String("No finding of this visit is on record.")));
    CHECK_FALSE(text.contains(QLatin1String("found nothing")));
    CHECK(text.contains(QLatin1String("Adviser")));
}

TEST_CASE("Where there is room no text is cut, and a torque stands with value, limits and wrench")
{
    const PrintedFolder folder;
    Visited project;
    project.records.work_sessions = {};
    project.records.steps = {};
    Fastener bolt = *project.records.find(Id<Fastener>{1});
    bolt.note =
        "The nut ran hard for the first three turns, was taken off, its thread cleaned, and "
        "then it went on by hand until it seated";
    project.records.fasteners.put(bolt);
    const auto file = folder.path("changes.pdf");
    const auto picturesOf = [&] {
        const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
        const auto changes =
            packet::changesSince(project.records, project.profile, answer, project.preCover);
        REQUIRE(changes);
        const auto printed =
            print::printChanges(*changes, imprintOfTest(), folder.pictures(), {}, file);
        REQUIRE(printed);
        CHECK(printed->pages == 1);
        return printed->pictures;
    };
    picturesOf();
    const QString text = PrintedFolder::text(file);
    for (const char *word : {"limits", "6.5", "wrench", "seated"})
        CHECK(text.contains(QLatin1String(word)));
    project.records.fasteners = {};
    CHECK(picturesOf() == 2);
    CHECK(PrintedFolder::text(file).contains(QLatin1String("Photographed since: 2 of 3")));
}
