// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PdfFinish.h"

#include "tests/ui/print/PrintedFolder.h"

#include <catch2/catch.hpp>

#include <QRegularExpression>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

/// The two parts of the document's identifier, each as hex digits in angle brackets.
QStringList identifierOf(const std::filesystem::path &pdf)
{
    const QString trailer =
        PrintedFolder::run(QStringLiteral("qpdf"), {QStringLiteral("--show-object=trailer"),
                                                    QString::fromStdString(pdf.string())})
            .output;
    static const QRegularExpression identifier(
        QStringLiteral("/ID \\[ (<[0-9a-f]{32}>) (<[0-9a-f]{32}>) \\]"));
    return identifier.match(trailer).capturedTexts().mid(1);
}

} // namespace

TEST_CASE("Each document has an identifier of its own")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    const QStringList first = identifierOf(folder.print(packet, {}, "first.pdf"));
    REQUIRE(first.size() == 2);
    CHECK(first[0] == first[1]);
    packet.as_of = *packet.as_of.plusDays(1);
    const QStringList second = identifierOf(folder.print(packet, {}, "second.pdf"));
    REQUIRE(second.size() == 2);
    CHECK(first[0] != second[0]);
}
