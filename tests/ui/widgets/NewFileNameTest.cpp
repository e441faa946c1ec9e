// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/NewFileName.h"

#include "tests/support/TemporaryFolder.h"
#include "ui/convert/QtText.h"

#include <QApplication>
#include <QFileDialog>
#include <QLineEdit>
#include <QTimer>

#include <catch2/catch.hpp>

#include <filesystem>

namespace lastrivet::ui {

namespace {

const auto pdf = QStringLiteral("PDF (*.pdf)");
const auto everything = QStringLiteral("Everything (*.zip)");

/// A folder, and somebody who types a name into the dialog that asks for one.
struct Asked {
    Asked() { QApplication::setAttribute(Qt::AA_DontUseNativeDialogs); }
    ~Asked() { QApplication::setAttribute(Qt::AA_DontUseNativeDialogs, false); }
    QString at(const char *name) const { return pathText(folder / name); }
    QString ask(const char *name, const QString &kinds = pdf, const QString &kind = {}) const
    {
        QTimer::singleShot(0, qApp, [typed = at(name), kind] {
            auto *dialog = qobject_cast<QFileDialog *>(QApplication::activeModalWidget());
            if (!dialog)
                return;
            if (!kind.isEmpty())
                dialog->selectNameFilter(kind);
            dialog->findChild<QLineEdit *>(QStringLiteral("fileNameEdit"))->setText(typed);
            QMetaObject::invokeMethod(dialog, "accept");
        });
        return askForNewFile(nullptr, QStringLiteral("Where it goes"), suggested, kinds);
    }

    test::TemporaryFolder folder;
    QString suggested;
};

} // namespace

TEST_CASE("A new file gets the ending of its kind, whatever the line for it held before")
{
    Asked asked;
    // With a point, as if its end were an ending.
    std::filesystem::create_directory(asked.folder / "papers.d");
    SECTION("nothing") {}
    SECTION("a folder")
    {
        asked.suggested = asked.at("papers.d");
    }
    SECTION("a file")
    {
        asked.suggested = asked.at("tags.pdf");
    }
    CHECK(asked.ask("wing.pdf") == asked.at("wing.pdf"));
    CHECK(asked.ask("wing") == asked.at("wing.pdf"));
    CHECK(asked.ask("wing 14.3") == asked.at("wing 14.3.pdf"));
}

TEST_CASE("Of several kinds a new file gets the ending of the chosen one, unless one was typed")
{
    const Asked asked;
    const QString kinds = pdf + QStringLiteral(";;") + everything;
    CHECK(asked.ask("wing 14.3", kinds) == asked.at("wing 14.3.pdf"));
    CHECK(asked.ask("wing 14.3", kinds, everything) == asked.at("wing 14.3.zip"));
    CHECK(asked.ask("wing.zip", kinds) == asked.at("wing.zip"));
}

} // namespace lastrivet::ui
