// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/JournalPrinter.h"

#include "core/base/Tongue.h"
#include "core/records/Description.h"
#include "tests/ui/print/PrintedFolder.h"
#include "ui/print/Language.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

/// A journal of one row, which wrote down one part with its name.
packet::JournalReport reportOfOne()
{
    journal::FieldAccount name;
    name.field = describe(RecordType::Component).find("name");
    name.to.parts.push_back({name.field, std::string("Bay 3")});
    journal::RecordAccount part;
    part.record = {RecordType::Component, 1};
    part.name = verbatim("LW-B3");
    part.kind = RowChange::Insert;
    part.fields = {name};
    JournalEntry row;
    row.seq = 1;
    row.who = "Berta Builder";
    row.label = "Bay made";
    row.hash = std::string(64, 'a');
    const packet::JournalReport::Entry entry{
        row, *Moment::parse("2026-03-14T15:20"), {}, false, {}, {part}};
    return {{}, *Moment::parse("2026-03-14"), {}, 1, {entry}, {}};
}

} // namespace

TEST_CASE("A printed journal sets its colons as the paper's language does")
{
    const PrintedFolder folder;
    const auto pdf = folder.path("journal.pdf");
    const auto textIn = [&](QLocale::Language id) {
        const print::Choices choices{print::Paper::A4, print::wordingIn(print::languageFor(id))};
        REQUIRE(print::printJournal(reportOfOne(), imprintOfTest(), choices, pdf));
        return PrintedFolder::text(pdf).simplified();
    };
    const QString english = textIn(QLocale::English);
    CHECK(english.contains(QStringLiteral("LW-B3: written down")));
    CHECK(english.contains(QStringLiteral(": Bay 3")));
    CHECK(english.contains(QStringLiteral("Nothing is left out: 1 row.")));
    CHECK_FALSE(english.contains(QStringLiteral(" : ")));
    const QString french = textIn(QLocale::French);
    CHECK(french.contains(QStringLiteral("LW-B3 : ")));
    CHECK(french.contains(QStringLiteral(" : Bay 3")));
}
