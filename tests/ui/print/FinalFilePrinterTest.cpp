// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/FinalFilePrinter.h"

#include "core/readiness/Readiness.h"
#include "tests/support/WingProject.h"
#include "tests/ui/print/PrintedFolder.h"
#include "ui/print/MajorPortionPrinter.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

void addTask(Records &records, std::int64_t id, std::string_view section, std::string_view title,
             const credit::Tenths &tenths, IdSet<Component> parts = {})
{
    CreditTask task;
    task.id = Id<CreditTask>{id};
    task.section = section;
    task.task = title;
    task.not_applicable = tenths.sum() == 0;
    task.component_ids = std::move(parts);
    credit::setTenths(task, tenths);
    records.credit_tasks.put(task);
}

void addTasks(WingProject &project)
{
    addTask(project.records, 1, "Wings", "Ribs of the wing", {3, 1, 4, 2}, {project.rib});
    addTask(project.records, 2, "Wings", "Skins of the wing", {10, 0, 0, 0});
    addTask(project.records, 3, "Floats", "Fitting of floats", {});
    Media photo;
    photo.id = Id<Media>{801};
    photo.file = "photos/ribs.jpg";
    photo.sha256 = "0123456789abcdef" + std::string(48, 'a');
    photo.taken_on = WingProject::at("2026-01-05");
    photo.caption = "Riveting the ribs";
    photo.shows = {Shows::BuilderAtWork};
    photo.links = {{RecordType::Component, project.rib.value()}};
    project.records.media.put(photo);
    photo.id = Id<Media>{802};
    photo.kind = MediaKind::Video;
    photo.file = "photos/ribs.mp4";
    photo.caption = "Film of it";
    project.records.media.put(photo);
}

std::vector<QString> words(std::initializer_list<const char *> list)
{
    std::vector<QString> words;
    for (const char *word : list)
        words.push_back(QString::fromUtf8(word));
    return words;
}

} // namespace

TEST_CASE("The major portion prints its columns, its sums and what shows each task")
{
    const PrintedFolder folder;
    WingProject project;
    addTasks(project);
    const auto form = packet::majorPortion(project.records, project.profile, project.as_of);
    const auto pdf = folder.path("portion.pdf");
    const auto printed =
        print::printMajorPortion(form, imprintOfTest(), folder.pictures(), {}, pdf);
    REQUIRE(printed);
    // The film cannot be printed and is only listed.
    CHECK(printed->pictures == 1);
    CHECK(PrintedFolder::isSound(pdf));
    const QString text = PrintedFolder::text(pdf);
    for (const QString &word :
         words({"MAJOR PORTION", "Ribs of the wing", "does not apply", "Sums",
                "the authority decides", "Riveting the ribs", "video: Film of it", "0123456789ab",
                "pictures 1, 2", "Signature", "Cautions"})) {
        INFO(word.toStdString());
        CHECK(text.contains(word));
    }
}

TEST_CASE("One picture that shows a task is one")
{
    const PrintedFolder folder;
    WingProject project;
    addTasks(project);
    auto form = packet::majorPortion(project.records, project.profile, project.as_of);
    for (auto &task : form.tasks) {
        if (!task.pictures.empty())
            task.pictures.resize(1);
    }
    const auto pdf = folder.path("portion.pdf");
    REQUIRE(print::printMajorPortion(form, imprintOfTest(), folder.pictures(), {}, pdf));
    const QString text = PrintedFolder::text(pdf);
    CHECK(text.contains(QStringLiteral("picture 1")));
    CHECK_FALSE(text.contains(QStringLiteral("pictures 1")));
}

TEST_CASE("The file for the final inspection holds everything that goes there, in one document")
{
    const PrintedFolder folder;
    WingProject project;
    addTasks(project);
    Inspection visit = *project.records.find(Id<Inspection>{1});
    visit.held_on = WingProject::at("2026-03-10");
    visit.report_number = "R-7";
    project.records.inspections.put(visit);
    CertificateDocument letter;
    letter.id = Id<CertificateDocument>{1};
    letter.key = project.profile.documents.empty() ? "letter" : project.profile.documents[0].key;
    letter.number = "A-17";
    letter.received_on = WingProject::at("2026-01-05");
    letter.serial_as_written = "4711";
    project.records.certificate_documents.put(letter);
    const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
    const auto file = packet::finalFile(project.records, project.profile, answer);
    REQUIRE(file.inspections.size() == 1);
    CHECK(file.openFindings() == 1);
    const auto pdf = folder.path("final.pdf");
    REQUIRE(print::printFinalFile(file, imprintOfTest(), folder.pictures(), {}, pdf));
    CHECK(PrintedFolder::isSound(pdf));
    const QString text = PrintedFolder::text(pdf);
    for (const QString &word :
         words({"FILE FOR THE FINAL INSPECTION", "Contents", "Not complete",
                "Documents for the certificate", "A-17", "the serial number is 4711",
                "Inspections, findings and corrections", "R-7", "Rivet set too deep in rib 3",
                "Drilled out and replaced", "Every closing and how it stands",
                "Who did how much of each task", "The log in short", "Thicker doubler",
                "Cautions"})) {
        INFO(word.toStdString());
        CHECK(text.contains(word, Qt::CaseInsensitive));
    }
}

TEST_CASE("The first page of the file says what stands against weight and balance")
{
    const PrintedFolder folder;
    WingProject project;
    const auto firstPage = [&] {
        const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
        const auto pdf = folder.path("final.pdf");
        REQUIRE(print::printFinalFile(packet::finalFile(project.records, project.profile, answer),
                                      imprintOfTest(), folder.pictures(), {}, pdf));
        return PrintedFolder::pageTexts(pdf).front();
    };
    const QString before = firstPage();
    CHECK(before.contains(QLatin1String("has not been weighed")));
    CHECK(before.contains(QLatin1String("weighings")));
    CHECK(before.contains(QLatin1String("loadings")));
    Weighing weighing;
    weighing.id = Id<Weighing>{1};
    weighing.weighed_on = WingProject::at("2026-01-05");
    weighing.scale_readings = {
        {"left", 150, 0, 1800, {}}, {"right", 150, 0, 1800, {}}, {"tail", 40, 0, 5600, {}}};
    project.records.weighings.put(weighing);
    Envelope envelope;
    envelope.id = Id<Envelope>{1};
    envelope.points = {{300, 2100}, {600, 2100}, {600, 2300}, {300, 2300}};
    project.records.envelopes.put(envelope);
    LoadingCase loading;
    loading.id = Id<LoadingCase>{1};
    loading.name = "full";
    loading.items = {{"Pilot", 90, 2400}, {"Baggage", 30, 3200}};
    project.records.loading_cases.put(loading);
    Equipment radio;
    radio.id = Id<Equipment>{901};
    radio.name = "Radio";
    radio.fitted_on = WingProject::at("2026-02-05");
    project.records.equipment.put(radio);
    Deviation moved;
    moved.id = Id<Deviation>{902};
    moved.title = "Battery one bay aft";
    moved.built_on = WingProject::at("2026-01-04");
    moved.weight_change = 0.0;
    moved.weight_unit = WeightUnit::Kilograms;
    project.records.deviations.put(moved);
    CHECK_FALSE(firstPage().contains(QLatin1String("Deviations that change the weight")));
    moved.built_on = WingProject::at("2026-01-06");
    project.records.deviations.put(moved);
    const QString then = firstPage().simplified();
    CHECK(then.contains(QLatin1String("Deviations that change the weight, built since the weighing "
                                      "and not in it: 1.")));
    CHECK_FALSE(then.contains(QLatin1String("has not been weighed")));
    CHECK(then.contains(QLatin1String("Loadings outside the limits: 1.")));
    CHECK(then.contains(QLatin1String("Extremes of loading outside the limits: 2.")));
    CHECK(then.contains(QLatin1String("without weight or arm: 1.")));
}

TEST_CASE("What is open is counted on the first page of the file, and only that")
{
    WingProject project;
    const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
    const auto file = packet::finalFile(project.records, project.profile, answer);
    std::size_t open = 0;
    for (const Squawk &squawk : project.records.squawks)
        open += !squawk.withdrawn_on && happened(squawk.found_on, project.as_of) &&
                        !squawk.verified_on && !squawk.accepted_on
                    ? 1
                    : 0;
    CHECK(file.built.whole.squawks.size() == open);
    std::size_t closed = 0;
    for (const auto &closing : answer.closings)
        closed += closing.state == readiness::State::Closed ||
                          closing.state == readiness::State::ClosedEarly
                      ? 1
                      : 0;
    CHECK(file.openClosings() + closed == answer.closings.size());
}

TEST_CASE("The first page of the file counts gaps, deviations and bulletins that are open")
{
    const PrintedFolder folder;
    WingProject project;
    const auto printed = [&] {
        const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
        const auto pdf = folder.path("final.pdf");
        REQUIRE(print::printFinalFile(packet::finalFile(project.records, project.profile, answer),
                                      imprintOfTest(), folder.pictures(), {}, pdf));
        return PrintedFolder::pageTexts(pdf).first().simplified();
    };
    const QString before = printed();
    CHECK(before.contains(QLatin1String("Closings closed with gaps and accepted by nobody: ")));
    CHECK(before.contains(QLatin1String("Bulletins not complied with: 1.")));
    CHECK_FALSE(before.contains(QLatin1String("Deviations not decided")));
    Deviation deviation = *project.records.find(Id<Deviation>{1});
    deviation.decision = Decision::Rejected;
    deviation.built_on = WingProject::at("2026-01-10");
    project.records.deviations.put(deviation);
    Bulletin bulletin = *project.records.find(Id<Bulletin>{1});
    bulletin.applies = false;
    project.records.bulletins.put(bulletin);
    const QString after = printed();
    CHECK(after.contains(QLatin1String("Deviations not decided, or rejected and still built: 1.")));
    CHECK_FALSE(after.contains(QLatin1String("Bulletins not complied with")));
}

TEST_CASE("A project without records gives a file that says what is not on record")
{
    const PrintedFolder folder;
    const WingProject wing;
    Records records;
    records.project.name = "Begun today";
    const auto answer = readiness::readiness(records, wing.profile, wing.as_of);
    const auto pdf = folder.path("final.pdf");
    REQUIRE(print::printFinalFile(packet::finalFile(records, wing.profile, answer), imprintOfTest(),
                                  folder.pictures(), {}, pdf));
    const QString text = PrintedFolder::text(pdf);
    CHECK(text.contains(QLatin1String("Begun today")));
    CHECK(text.contains(QLatin1String("Nothing on record of")));
}

TEST_CASE("A closing without any work stands in the file as not begun")
{
    const PrintedFolder folder;
    WingProject project;
    project.records.components.put({.id = Id<Component>{9}, .code = "F", .name = "Flap"});
    project.records.closings.put({.id = Id<Closing>{9},
                                  .component_id = Id<Component>{9},
                                  .title = "Flap skin",
                                  .encloses = {Id<Component>{9}}});
    const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
    const auto pdf = folder.path("final.pdf");
    REQUIRE(print::printFinalFile(packet::finalFile(project.records, project.profile, answer),
                                  imprintOfTest(), folder.pictures(), {}, pdf));
    const QString text = PrintedFolder::text(pdf);
    CHECK(text.contains(QLatin1String("not begun")));
    CHECK_FALSE(text.contains(QLatin1String("nothing on record against closing")));
}

TEST_CASE("The file names who signed each closing, late acceptances with their remarks too")
{
    const PrintedFolder folder;
    WingProject project;
    project.records.sign_offs.put({.id = Id<SignOff>{1},
                                   .hold_point_id = project.preCover,
                                   .person_id = project.inspector,
                                   .signed_on = WingProject::at("2026-03-12"),
                                   .result = SignOffResult::Accepted});
    project.records.sign_offs.put({.id = Id<SignOff>{2},
                                   .person_id = project.inspector,
                                   .signed_on = WingProject::at("2026-03-13"),
                                   .result = SignOffResult::Accepted,
                                   .remarks = "borescope through the drain"});
    Closing baffle = *project.records.find(project.tankBaffle);
    baffle.late_acceptances = {Id<SignOff>{2}};
    project.records.closings.put(baffle);
    const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
    const auto pdf = folder.path("final.pdf");
    REQUIRE(print::printFinalFile(packet::finalFile(project.records, project.profile, answer),
                                  imprintOfTest(), folder.pictures(), {}, pdf));
    const QString text = PrintedFolder::text(pdf).simplified();
    for (const QString &word :
         words({"Who signed each closing", "Accepted, 12 Mar 2026", "Ines Inspector (No. 77)",
                "no sheet filed", "Accepted late", "borescope through the drain"})) {
        INFO(word.toStdString());
        CHECK(text.contains(word));
    }
}
