// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/DocumentWriter.h"
#include "core/project/Project.h"
#include "tests/ui/support/FileDrop.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/WholeWindow.h"
#include "ui/convert/QtText.h"
#include "ui/lists/ListDialog.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/NoticeBars.h"
#include "ui/shell/Page.h"
#include "ui/shell/PageList.h"
#include "ui/shell/ProjectView.h"
#include "ui/widgets/PictureInbox.h"

#include <QApplication>
#include <QMimeData>
#include <QTest>
#include <QTimer>
#include <QUrl>

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>

namespace lastrivet::ui {

namespace {

/// Drops a file there and waits for what comes of it.
bool drop(QWidget &place, const QString &file)
{
    const bool isTaken = test::dropFile(place, file);
    if (isTaken)
        QTest::qWait(20);
    return isTaken;
}

} // namespace

TEST_CASE("A project's folder that is dropped on the window is opened, and is no folder of photos")
{
    test::WholeWindow opened;
    opened.show();
    REQUIRE_FALSE(opened.window.view());
    const QString project = pathText(opened.workshop.folder());
    CHECK_FALSE(drop(opened.window, pathText(opened.folder.path())));
    CHECK(drop(opened.window, project));
    REQUIRE(opened.window.view());
    CHECK(opened.window.openedFolder() == project);
    QMimeData offered;
    offered.setUrls({QUrl::fromLocalFile(project)});
    CHECK_FALSE(PictureInbox::canTake(offered));
    offered.setUrls({QUrl::fromLocalFile(project + QStringLiteral("/photos"))});
    CHECK(PictureInbox::canTake(offered));
}

TEST_CASE("Records that are dropped on the window are brought in when that is confirmed")
{
    test::WholeWindow opened;
    opened.show();
    const auto document = opened.folder / "more.json";
    const QString file = pathText(document);
    Records records = *Project::open(opened.workshop.folder(), {&opened.workshop.clock})->records();
    Component part;
    part.id = Id<Component>{records.components.greatestId() + 1};
    part.name = "Winglet";
    records.components.put(part);
    exchange::writeDocumentFile(records, document);
    CHECK_FALSE(drop(opened.window, file));
    opened.open();
    ProjectView &view = *opened.window.view();
    const auto parts = [&] { return view.session().records()->components.size(); };
    const auto before = parts();
    CHECK(drop(opened.window, file));
    CHECK(parts() == before);
    CHECK(test::says(view.notices(), QStringLiteral("more.json")));
    test::press(view.notices(), QStringLiteral("Import records"));
    CHECK(parts() == before + 1);
    CHECK(QTest::qWaitFor([&] { return view.notices().texts().isEmpty(); }, 1000));
}

TEST_CASE("Records that are dropped on the photos are no photos, and asked about once")
{
    test::WholeWindow opened;
    opened.openAndShow();
    ProjectView &view = *opened.window.view();
    view.open(PageId::Photos);
    Page &photos = view.page(PageId::Photos);
    const auto media = view.session().records()->media.size();
    for (const auto *name : {"more.json", "other.json"}) {
        const auto file = opened.folder / name;
        std::ofstream(file) << "{}";
        CHECK(drop(photos, pathText(file)));
    }
    REQUIRE(view.notices().texts().size() == 1);
    CHECK(view.notices().texts().front().contains(QStringLiteral("other.json")));
    CHECK(view.session().records()->media.size() == media);
    QMimeData offered;
    for (const auto *name : {"parts.csv", "parts.TSV"}) {
        offered.setUrls({QUrl::fromLocalFile(pathText(opened.folder / name))});
        CHECK_FALSE(PictureInbox::canTake(offered));
    }
    // Of several it is not said which is meant.
    offered.setUrls({QUrl::fromLocalFile(QStringLiteral("/a.csv")),
                     QUrl::fromLocalFile(QStringLiteral("/b.csv"))});
    CHECK(PictureInbox::canTake(offered));
}

TEST_CASE("A list that is dropped on the window is shown before it is taken in")
{
    test::WholeWindow opened;
    opened.openAndShow();
    const auto list = opened.folder / "parts.csv";
    std::ofstream(list) << "name,code\nWinglet,WL\n";
    bool isShown = false;
    QTimer::singleShot(200, &opened.window, [&] {
        auto *dialog = qobject_cast<ListDialog *>(QApplication::activeModalWidget());
        isShown = dialog != nullptr;
        if (dialog)
            dialog->done(0);
    });
    CHECK(drop(opened.window, pathText(list)));
    CHECK(QTest::qWaitFor([&] { return isShown; }, 2000));
}

TEST_CASE("Nothing is dropped on the window while a dialog about its project is open")
{
    test::WholeWindow opened;
    opened.openAndShow();
    const QString project = pathText(opened.workshop.folder());
    ListDialog dialog(opened.window.view()->session(), &opened.window);
    dialog.open();
    CHECK_FALSE(drop(opened.window, project));
    dialog.done(0);
    CHECK(drop(opened.window, project));
}

} // namespace lastrivet::ui
