// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/BlankForm.h"

#include "tests/support/WingProject.h"
#include "tests/ui/print/PrintedFolder.h"
#include "ui/print/Language.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A blank form is one sheet with project, columns and caution, on either paper")
{
    const PrintedFolder folder;
    const WingProject project;
    const auto aircraft = packet::aircraftOf(project.records, project.profile);
    const std::pair<print::BlankFormKind, std::vector<const char *>> forms[] = {
        {print::BlankFormKind::Torque, {"Hardware", "Limits", "Reading", "Drag", "Marked"}},
        {print::BlankFormKind::Batches, {"Material and lot", "Mix", "humidity", "Cure time"}},
        {print::BlankFormKind::Week, {"What was done", "Kind", "Mon", "Sun"}},
        {print::BlankFormKind::Findings,
         {"Finding", "Report number", "Seen again", "Signature", "report form"}},
    };
    for (const print::Paper paper : {print::Paper::A4, print::Paper::Letter}) {
        for (const auto &[kind, words] : forms) {
            const auto pdf = folder.path("form.pdf");
            const auto printed = print::printBlankForm({kind, aircraft, UnitSystem::Metric, 1},
                                                       imprintOfTest(), {paper, {}}, pdf);
            REQUIRE(printed);
            CHECK(printed->pages == 1);
            CHECK(PrintedFolder::isSound(pdf));
            const QString text = PrintedFolder::text(pdf);
            CHECK(text.contains(QLatin1String("X-TEST")));
            CHECK(text.contains(QLatin1String("no approval")));
            CHECK_FALSE(text.contains(QLatin1String("what the builder wrote")));
            for (const char *word : words) {
                INFO(word);
                CHECK(text.contains(QLatin1String(word)));
            }
        }
    }
}

TEST_CASE("Several sheets of a form are as many pages")
{
    const PrintedFolder folder;
    const auto printed =
        print::printBlankForm({print::BlankFormKind::Torque, {}, UnitSystem::Imperial, 3},
                              imprintOfTest(), {}, folder.path("form.pdf"));
    REQUIRE(printed);
    CHECK(printed->pages == 3);
}

TEST_CASE("No name below a line to write on is cut in another language")
{
    const PrintedFolder folder;
    const std::pair<print::BlankFormKind, std::vector<const char *>> forms[] = {
        {print::BlankFormKind::Torque, {"Part", "Wrench and its number", "Unit", "Who"}},
        {print::BlankFormKind::Batches, {"Part", "Place of work", "Who"}},
        {print::BlankFormKind::Week, {"Week from", "Who"}},
        {print::BlankFormKind::Findings,
         {"Inspector, name and number", "What was looked at", "Report number",
          "Signature of the inspector, day", "Signature of the builder, day"}},
    };
    for (const print::Language &language : print::languages()) {
        const print::Choices choices{print::Paper::A4, print::wordingIn(language)};
        for (const auto &[kind, names] : forms) {
            const auto pdf = folder.path("form.pdf");
            REQUIRE(print::printBlankForm({kind, {}, UnitSystem::Metric, 1}, imprintOfTest(),
                                          choices, pdf));
            const QString text = PrintedFolder::text(pdf);
            for (const char *name : names) {
                INFO(language.code.toStdString() << ": " << name);
                CHECK(text.contains(choices.wording.text(name)));
            }
        }
    }
}
