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

TEST_CASE("A new file gets the ending of its kind, whatever the line for it held before")
{
    const test::TemporaryFolder folder;
    // With a point, as if its end were an ending.
    std::filesystem::create_directory(folder / "papers.d");
    QString suggested;
    SECTION("nothing") {}
    SECTION("a folder")
    {
        suggested = pathText(folder / "papers.d");
    }
    SECTION("a file")
    {
        suggested = pathText(folder / "tags.pdf");
    }
    const auto ask = [&](const char *name) {
        const QString typed = pathText(folder / name);
        QTimer::singleShot(0, qApp, [typed] {
            auto *dialog = qobject_cast<QFileDialog *>(QApplication::activeModalWidget());
            if (!dialog)
                return;
            dialog->findChild<QLineEdit *>(QStringLiteral("fileNameEdit"))->setText(typed);
            QMetaObject::invokeMethod(dialog, "accept");
        });
        return askForNewFile(nullptr, QStringLiteral("Where it goes"), suggested,
                             QStringLiteral("PDF (*.pdf)"));
    };
    QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
    CHECK(ask("wing.pdf") == pathText(folder / "wing.pdf"));
    CHECK(ask("wing") == pathText(folder / "wing.pdf"));
    CHECK(ask("wing 14.3") == pathText(folder / "wing 14.3.pdf"));
    QApplication::setAttribute(Qt::AA_DontUseNativeDialogs, false);
}

} // namespace lastrivet::ui
