// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/TemporaryFolder.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/squawks/SavedFilters.h"
#include "ui/squawks/SquawkFilterBar.h"
#include "ui/squawks/SquawkModel.h"
#include "ui/squawks/SquawksPage.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QProcess>
#include <QPushButton>
#include <QTest>
#include <QTimer>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::test {

namespace {

using Standing = readiness::SquawkFilter::Standing;

void addSquawks(ui::Session &session, const Workshop &workshop)
{
    session.change(QStringLiteral("More"), [&](Edit &edit) {
        edit.put(Squawk{.number = "7",
                        .component_id = workshop.aileron,
                        .title = "=cmd, \"nick\"",
                        .severity = Severity::Airworthiness,
                        .found_on = edit.today()});
        Squawk done{.number = "8",
                    .component_id = workshop.rudder,
                    .title = "Scratch",
                    .severity = Severity::Cosmetic,
                    .found_on = edit.today()};
        done.correction = "Polished";
        done.fixed_on = edit.today();
        done.verified_on = edit.today();
        done.verified_by = workshop.builder;
        edit.put(done);
    });
}

QStringList shown(const QAbstractItemModel &model)
{
    QStringList numbers;
    for (int row = 0; row < model.rowCount(); ++row)
        numbers.append(model.index(row, 0).data(ui::SquawkModel::NumberRole).toString());
    return numbers;
}

QPushButton &moreButton(ui::SquawkFilterBar &bar)
{
    const auto buttons = bar.findChildren<QPushButton *>();
    const auto found =
        std::ranges::find(buttons, QStringLiteral("More filters"), &QWidget::accessibleName);
    REQUIRE(found != buttons.end());
    return **found;
}

QString textOf(const QString &pdf)
{
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"),
                 {QStringLiteral("-layout"), pdf, QStringLiteral("-")});
    REQUIRE(reader.waitForFinished());
    REQUIRE(reader.exitCode() == 0);
    return QString::fromUtf8(reader.readAllStandardOutput());
}

/// The page with squawks 1, 7 (airworthiness) and 8 (done).
struct Window {
    Window()
    {
        addSquawks(*session, workshop);
        page.resize(1200, 800);
        page.show();
        REQUIRE(QTest::qWaitForWindowExposed(&page));
    }
    const QAbstractItemModel &model()
    {
        for (const auto *list : page.findChildren<QListView *>()) {
            if (list->accessibleName() == QStringLiteral("Squawks"))
                return *list->model();
        }
        FAIL("no list");
        return *page.findChild<QListView *>()->model();
    }
    QStringList numbers() { return shown(model()); }

    Workshop workshop;
    std::unique_ptr<ui::Session> session = workshop.session();
    ui::SquawksPage page{*session};
};

} // namespace

TEST_CASE("The list is headed by how long squawks can be reached", "[squawks]")
{
    Window window;
    window.page.filterBar().setFilter({.standing = Standing::All});
    const auto &model = window.model();
    CHECK(window.numbers() ==
          QStringList{QStringLiteral("7"), QStringLiteral("1"), QStringLiteral("8")});
    const auto heading = [&](int row) {
        return model.index(row, 0).data(ui::SquawkModel::HeadingRole).toString();
    };
    CHECK(heading(0) == QStringLiteral("In reach (2)"));
    CHECK(heading(1).isEmpty());
    CHECK(heading(2) == QStringLiteral("Done (1)"));
}

TEST_CASE("The choices of the bar filter the list, and clearing brings it back", "[squawks]")
{
    Window window;
    ui::SquawkFilterBar &bar = window.page.filterBar();
    auto *text = bar.findChild<QLineEdit *>();
    QTest::keyClicks(text, QStringLiteral("rivet"));
    CHECK(window.numbers() == QStringList{QStringLiteral("1")});
    text->clear();
    moreButton(bar).click();
    for (auto *box : bar.findChildren<QComboBox *>()) {
        if (box->accessibleName() == QStringLiteral("Filter by severity"))
            QTest::keyClick(box, Qt::Key_Down);
    }
    CHECK(window.numbers() == QStringList{QStringLiteral("7")});
    bar.setFilter({});
    CHECK(window.numbers().size() == 2);
    bar.setFilter({.part = window.workshop.wing});
    CHECK(window.numbers() == QStringList{QStringLiteral("1")});
}

TEST_CASE("Most choices of the bar are shown when wanted, and whenever one of them is set",
          "[squawks]")
{
    Window window;
    ui::SquawkFilterBar &bar = window.page.filterBar();
    const auto boxes = bar.findChildren<QComboBox *>();
    const auto severity =
        *std::ranges::find(boxes, QStringLiteral("Filter by severity"), &QWidget::accessibleName);
    QPushButton *more = &moreButton(bar);
    // Beside it stand the saved filters, which are none of the more.
    CHECK(more->text() == QStringLiteral("More"));
    CHECK(button(bar, QStringLiteral("Saved")));
    CHECK_FALSE(severity->isVisible());
    QTest::keyClick(more, Qt::Key_Space);
    CHECK(severity->isVisible());
    QTest::keyClick(more, Qt::Key_Space);
    CHECK_FALSE(severity->isVisible());
    bar.setFilter({.standing = Standing::All, .text = "rivet"});
    CHECK_FALSE(severity->isVisible());
    bar.setFilter({.severity = Severity::Airworthiness});
    CHECK(severity->isVisible());
    CHECK_FALSE(more->isEnabled());
    bar.setFilter({});
    QTest::keyClick(more, Qt::Key_Space);
    CHECK_FALSE(severity->isVisible());
}

TEST_CASE("Filters are saved by name and come back after a restart, as does the last one",
          "[squawks]")
{
    Workshop workshop;
    const readiness::SquawkFilter urgent{.severity = Severity::Airworthiness,
                                         .part = workshop.wing,
                                         .verifier = SignerRole::Inspector,
                                         .text = "rivet\thead"};
    {
        const auto session = workshop.session();
        ui::SavedFilters filters(*session);
        filters.save(QStringLiteral("For Sam"), urgent);
        filters.save(QStringLiteral("Done"), {.standing = Standing::Done});
        filters.rename(QStringLiteral("Done"), QStringLiteral("Settled"));
        filters.keepLast({.standing = Standing::ToFix});
    }
    const auto session = workshop.session();
    ui::SavedFilters filters(*session);
    REQUIRE(filters.all().size() == 2);
    REQUIRE(filters.find(QStringLiteral("for sam")));
    readiness::SquawkFilter expected = urgent;
    expected.text = "rivet head";
    CHECK(filters.find(QStringLiteral("for sam"))->filter == expected);
    CHECK(filters.find(QStringLiteral("Settled"))->filter.standing == Standing::Done);
    CHECK(filters.last().standing == Standing::ToFix);
    const ui::SquawksPage page(*session);
    CHECK(page.filterBar().filter().standing == Standing::ToFix);
    filters.remove(QStringLiteral("Settled"));
    CHECK(ui::SavedFilters(*session).all().size() == 1);
}

TEST_CASE("The last filter is kept when the page goes, not at every letter", "[squawks]")
{
    Window window;
    auto &bar = window.page.filterBar();
    auto *text = bar.findChild<QLineEdit *>();
    REQUIRE(text);
    QTest::keyClicks(text, QStringLiteral("nick"));
    REQUIRE(bar.filter().text == "nick");
    CHECK(ui::SavedFilters(*window.session).last().text.empty());
    window.page.hide();
    CHECK(ui::SavedFilters(*window.session).last().text == "nick");
}

TEST_CASE("A filter gets its name in place, is taken up from the menu, and deleted there",
          "[squawks]")
{
    Window window;
    ui::SquawkFilterBar &bar = window.page.filterBar();
    const auto trigger = [&](const QString &words) {
        auto &menu = *bar.findChild<QMenu *>();
        Q_EMIT menu.aboutToShow();
        for (QAction *action : menu.actions()) {
            if (action->text() == words)
                return action->trigger();
        }
        FAIL("no action " << words.toStdString());
    };
    bar.setFilter({.severity = Severity::Airworthiness});
    trigger(QStringLiteral("Save this filter…"));
    auto *name = qobject_cast<QLineEdit *>(window.page.focusWidget());
    REQUIRE(name);
    QTest::keyClick(name, Qt::Key_Return);
    CHECK(name->isVisible());
    QTest::keyClicks(name, QStringLiteral("Serious"));
    QTest::keyClick(name, Qt::Key_Return);
    CHECK_FALSE(name->isVisible());
    bar.setFilter({});
    trigger(QStringLiteral("Serious"));
    CHECK(window.numbers() == QStringList{QStringLiteral("7")});
    trigger(QStringLiteral("Delete “Serious”"));
    CHECK(ui::SavedFilters(*window.session).all().empty());
}

TEST_CASE("The list is printed as it is filtered, with the journal's hash and a row for it",
          "[squawks]")
{
    Window window;
    const TemporaryFolder folder;
    window.page.filterBar().setFilter({.severity = Severity::Airworthiness});
    const QString file = QString::fromStdString((folder / "list.pdf").string());
    window.page.writeList(file);
    const QString text = textOf(file);
    CHECK(text.contains(QStringLiteral("nick")));
    CHECK_FALSE(text.contains(QStringLiteral("Overdriven rivet")));
    CHECK(text.contains(QStringLiteral("outstanding; airworthiness")));
    const auto journal = window.session->project().journal();
    CHECK(journal.back().kind == ChangeKind::Printed);
    CHECK(text.contains(QString::fromStdString(journal.back().hash)));
}

TEST_CASE("The list becomes a file for a spreadsheet that runs nothing", "[squawks]")
{
    Window window;
    const TemporaryFolder folder;
    const QString file = QString::fromStdString((folder / "list.csv").string());
    window.page.writeList(file);
    QFile written(file);
    REQUIRE(written.open(QIODevice::ReadOnly));
    const QString text = QString::fromUtf8(written.readAll());
    CHECK(text.count(QStringLiteral("\r\n")) == 3);
    CHECK(text.contains(QStringLiteral("\"'=cmd, \"\"nick\"\"\"")));
    CHECK_FALSE(text.contains(QStringLiteral("Scratch")));
}

TEST_CASE("A name without an ending gets that of what was pressed", "[squawks]")
{
    Window window;
    const TemporaryFolder folder;
    const auto save = [&](const char *words, const char *name) {
        const QString typed = QString::fromStdString((folder / name).string());
        QTimer::singleShot(0, &window.page, [typed] {
            auto *dialog = qobject_cast<QFileDialog *>(QApplication::activeModalWidget());
            if (!dialog)
                return;
            dialog->findChild<QLineEdit *>(QStringLiteral("fileNameEdit"))->setText(typed);
            QMetaObject::invokeMethod(dialog, "accept");
        });
        press(window.page, QString::fromUtf8(words));
    };
    QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
    save("CSV…", "squawks");
    save("CSV…", "squawks 14.3");
    save("Print the list…", "printed");
    QApplication::setAttribute(Qt::AA_DontUseNativeDialogs, false);
    CHECK(std::filesystem::exists(folder / "squawks.csv"));
    CHECK_FALSE(std::filesystem::exists(folder / "squawks"));
    CHECK(std::filesystem::exists(folder / "squawks 14.3.csv"));
    CHECK_FALSE(std::filesystem::exists(folder / "squawks 14.3"));
    QFile printed(QString::fromStdString((folder / "printed.pdf").string()));
    REQUIRE(printed.open(QIODevice::ReadOnly));
    CHECK(printed.read(5) == "%PDF-");
}

TEST_CASE("A list that cannot be written is said in one sentence, and no half file stays",
          "[squawks]")
{
    Window window;
    QStringList said;
    QObject::connect(window.session.get(), &ui::Session::complained, &window.page,
                     [&](const QString &sentence) { said.append(sentence); });
    for (const char *name : {"/nowhere/list.csv", "/nowhere/list.pdf"}) {
        window.page.writeList(QString::fromUtf8(name));
        CHECK_FALSE(QFile::exists(QString::fromUtf8(name)));
    }
    CHECK(said.size() == 2);
}

} // namespace lastrivet::test
