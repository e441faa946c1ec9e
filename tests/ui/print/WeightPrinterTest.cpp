// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/WeightPrinter.h"

#include "tests/support/WingProject.h"
#include "tests/ui/print/PrintedFolder.h"
#include "ui/print/Language.h"

#include <QRegularExpression>

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

/// FAA-H-8083-30 chapter 4 fig. 4-20, with limits and loads made up around it.
void addWeighing(WingProject &project)
{
    Records &records = project.records;
    Weighing weighing;
    weighing.id = Id<Weighing>{1};
    weighing.weighed_on = WingProject::at("2026-01-05");
    weighing.weight_unit = WeightUnit::Pounds;
    weighing.arm_unit = ArmUnit::Inches;
    weighing.datum = "Leading edge of the wing";
    weighing.scale_readings = {
        {"left main", 650, 5, 70, {}}, {"right main", 640, 5, 70, {}}, {"nose", 225, 2.5, -30, {}}};
    weighing.corrections = {{"Fuel, 30 gal", -177, 95}, {"Unusable fuel", 6, 98}};
    records.weighings.put(weighing);
    Envelope envelope;
    envelope.id = Id<Envelope>{1};
    envelope.weight_unit = WeightUnit::Pounds;
    envelope.arm_unit = ArmUnit::Inches;
    envelope.points = {{1300, 45}, {2000, 48}, {2000, 58}, {1300, 58}};
    envelope.lemac = 40;
    envelope.mac = 50;
    envelope.source = "Drawing W-1";
    records.envelopes.put(envelope);
    LoadingCase loading;
    loading.id = Id<LoadingCase>{1};
    loading.name = "Pilot and full tanks";
    loading.weight_unit = WeightUnit::Pounds;
    loading.arm_unit = ArmUnit::Inches;
    loading.items = {{"Pilot", 170, 60}, {"Fuel", 200, 95}};
    records.loading_cases.put(loading);
    records.project.maximum_weight = 2000;
    records.project.weight_unit = WeightUnit::Pounds;
}

packet::WeightReport reportOf(const WingProject &project)
{
    return packet::weightReport(project.records, project.profile, project.as_of);
}

} // namespace

TEST_CASE("The weight and balance report says how it was weighed and what it came to")
{
    const PrintedFolder folder;
    WingProject project;
    addWeighing(project);
    const auto pdf = folder.path("weight.pdf");
    const auto report = reportOf(project);
    REQUIRE(report.empty);
    CHECK(report.empty->sum.weight == 1331.5);
    REQUIRE(print::printWeightReport(report, imprintOfTest(), {}, pdf));
    CHECK(PrintedFolder::isSound(pdf));
    const QString text = PrintedFolder::text(pdf);
    for (const char *word :
         {"WEIGHT AND BALANCE REPORT", "Leading edge of the wing", "left main", "1331.50", "50.09",
          "66698.0", "Pilot and full tanks", "Pilot: 170.00 lb at 60.00 in", "Farthest forward",
          "Farthest aft", "Loadings and limits in a picture", "Drawing W-1", "Signature",
          "Cautions"}) {
        INFO(word);
        CHECK(text.contains(QString::fromUtf8(word)));
    }
}

TEST_CASE("Arms in inches are printed to the hundredth, as they are written down and shown")
{
    const PrintedFolder folder;
    WingProject project;
    addWeighing(project);
    Weighing weighing = *project.records.weighings.begin();
    weighing.scale_readings[0].arm = 70.25;
    project.records.weighings.put(weighing);
    LoadingCase loading = *project.records.loading_cases.begin();
    loading.items[0] = {"Pilot", 170.75, 60.25};
    project.records.loading_cases.put(loading);
    const auto pdf = folder.path("weight.pdf");
    REQUIRE(print::printWeightReport(reportOf(project), imprintOfTest(), {}, pdf));
    const QString text = PrintedFolder::text(pdf);
    CHECK(text.contains(QStringLiteral("70.25")));
    CHECK(text.contains(QStringLiteral("Pilot: 170.75 lb at 60.25 in")));
}

TEST_CASE("Cautions about closings and curing stand on papers about structure alone")
{
    const PrintedFolder folder;
    const std::vector<Profile::Caution> cautions{{"current_edition", "Rules change."},
                                                 {"records_not_work", "Clear is not right."},
                                                 {"cure_temperature", "Cold cures slowly."}};
    WingProject project;
    addWeighing(project);
    packet::WeightReport report = reportOf(project);
    report.cautions = cautions;
    const auto pdf = folder.path("weight.pdf");
    REQUIRE(print::printWeightReport(report, imprintOfTest(), {}, pdf));
    const QString weight = PrintedFolder::text(pdf);
    CHECK(weight.contains(QStringLiteral("Rules change.")));
    CHECK_FALSE(weight.contains(QStringLiteral("Clear is not right.")));
    CHECK_FALSE(weight.contains(QStringLiteral("Cold cures slowly.")));
    packet::Packet packet = wingPacket();
    packet.cautions = cautions;
    const QString inspected = PrintedFolder::text(folder.print(packet));
    CHECK(inspected.contains(QStringLiteral("Clear is not right.")));
    CHECK(inspected.contains(QStringLiteral("Cold cures slowly.")));
}

TEST_CASE("The axes have round figures also around the empty weight alone")
{
    const PrintedFolder folder;
    WingProject project;
    addWeighing(project);
    project.records.envelopes = {};
    project.records.loading_cases = {};
    const auto pdf = folder.path("weight.pdf");
    REQUIRE(print::printWeightReport(reportOf(project), imprintOfTest(), {}, pdf));
    const QString text = PrintedFolder::text(pdf);
    CHECK(text.contains(QStringLiteral("Centre of gravity, in")));
    CHECK_FALSE(text.contains(QRegularExpression(QStringLiteral("\\d\\.\\d{4}"))));
}

TEST_CASE("Figures too large to be told apart leave the picture empty and do not hang")
{
    const PrintedFolder folder;
    WingProject project;
    addWeighing(project);
    project.records.envelopes = {};
    project.records.loading_cases = {};
    Weighing weighing = *project.records.weighings.begin();
    for (auto &scale : weighing.scale_readings)
        scale.arm = 1e17;
    weighing.corrections.clear();
    project.records.weighings.put(weighing);
    const auto pdf = folder.path("weight.pdf");
    REQUIRE(print::printWeightReport(reportOf(project), imprintOfTest(), {}, pdf));
    CHECK(PrintedFolder::isSound(pdf));
}

TEST_CASE("Without a weighing the report says so, and still lists equipment and loadings")
{
    const PrintedFolder folder;
    WingProject project;
    addWeighing(project);
    project.records.weighings = {};
    Deviation thicker = *project.records.deviations.begin();
    thicker.built_on = WingProject::at("2026-02-01");
    thicker.undone_on.reset();
    thicker.weight_change = 0.2;
    thicker.weight_unit = WeightUnit::Kilograms;
    project.records.deviations.put(thicker);
    const auto pdf = folder.path("weight.pdf");
    REQUIRE(print::printWeightReport(reportOf(project), imprintOfTest(), {}, pdf));
    const QString text = PrintedFolder::text(pdf);
    CHECK(text.contains(QStringLiteral("has not been weighed")));
    CHECK(text.contains(QStringLiteral("not weighed yet")));
    CHECK_FALSE(text.contains(QStringLiteral("before the weighing")));
    CHECK(text.contains(QStringLiteral("Pilot and full tanks")));
    CHECK(text.contains(QStringLiteral("no weighing to count on")));
}

TEST_CASE("No head of the equipment list is cut in German, and what was removed says when")
{
    const PrintedFolder folder;
    WingProject project;
    addWeighing(project);
    Equipment radio;
    radio.id = Id<Equipment>{1};
    radio.name = "Radio";
    radio.maker = "Maker of the test";
    radio.part_number = "PN-12";
    radio.serial_number = "SN-34";
    radio.weight = 2.5;
    radio.weight_unit = WeightUnit::Pounds;
    radio.arm = 41;
    radio.arm_unit = ArmUnit::Inches;
    radio.fitted_on = WingProject::at("2025-11-02");
    radio.removed_on = WingProject::at("2026-02-03");
    project.records.equipment.put(radio);
    const print::Choices german{print::Paper::A4,
                                print::wordingIn(print::languageFor(QLocale::German))};
    const auto pdf = folder.path("weight.pdf");
    REQUIRE(print::printWeightReport(reportOf(project), imprintOfTest(), german, pdf));
    const QString text = PrintedFolder::text(pdf);
    for (const char *word :
         {"Hersteller,", "Teilenummer", "Eingebaut", "PN-12", "SN-34", "ausgebaut"}) {
        INFO(word);
        CHECK(text.contains(QLatin1String(word)));
    }
    // Among the particulars of the aeroplane, and over the column.
    CHECK(text.count(QStringLiteral("Werk-/Seriennummer")) == 2);
}
