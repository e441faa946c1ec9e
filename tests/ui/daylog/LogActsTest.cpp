// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/LogActs.h"

#include "tests/ui/daylog/LogWindow.h"
#include "tests/ui/support/ReadOnlyPage.h"
#include "ui/daylog/LogModel.h"
#include "ui/daylog/LogbookForm.h"

#include <QComboBox>
#include <QFile>
#include <QProcess>

namespace lastrivet::test {

namespace {

/// The entry of the bay, 135 minutes, chosen in the list.
WorkSession chosenEntry(LogWindow &window)
{
    for (const WorkSession &entry : window.session->records()->work_sessions) {
        if (entry.component_id != window.workshop.bay)
            continue;
        window.page->showRecord({RecordType::WorkSession, entry.id.value()});
        return entry;
    }
    FAIL("no entry on the bay");
    return {};
}

QListView &list(LogWindow &window)
{
    for (auto *view : window.page->findChildren<QListView *>()) {
        if (view->accessibleName() == QStringLiteral("Log entries"))
            return *view;
    }
    FAIL("no list");
    return *window.page->findChild<QListView *>();
}

void answer(LogWindow &window, const QString &field, const QString &text)
{
    QTest::keyClicks(&window.field(field), text);
    QTest::keyClick(&window.field(field), Qt::Key_Return);
}

} // namespace

TEST_CASE("An entry is split with a key, and its time is whole again with one undo")
{
    LogWindow window;
    const WorkSession entry = chosenEntry(window);
    list(window).setFocus();
    QTest::keyClick(&list(window), Qt::Key_S);
    answer(window, QStringLiteral("Pieces"), QStringLiteral("35m + RU"));
    const Snapshot records = window.session->records();
    CHECK(records->find(entry.id)->minutes == Minutes{35});
    CHECK(window.latest().minutes == Minutes{100});
    CHECK(window.latest().component_id == window.workshop.rudder);
    window.session->undo();
    CHECK(window.session->records()->find(entry.id)->minutes == Minutes{135});
}

TEST_CASE("Pieces that do not add up change nothing, and what was typed stays")
{
    LogWindow window;
    const WorkSession entry = chosenEntry(window);
    window.press(QStringLiteral("Split this entry…"));
    answer(window, QStringLiteral("Pieces"), QStringLiteral("35m + 35m"));
    CHECK(window.session->records()->find(entry.id)->minutes == Minutes{135});
    CHECK(window.field(QStringLiteral("Pieces")).text() == QStringLiteral("35m + 35m"));
}

TEST_CASE("What is asked about an entry is asked no more when another is chosen")
{
    LogWindow window;
    const WorkSession entry = chosenEntry(window);
    window.press(QStringLiteral("Split this entry…"));
    REQUIRE(window.field(QStringLiteral("Pieces")).isVisible());
    for (const WorkSession &other : window.session->records()->work_sessions) {
        if (other.id != entry.id)
            window.page->showRecord({RecordType::WorkSession, other.id.value()});
    }
    for (const auto *field : window.page->findChildren<QLineEdit *>())
        CHECK_FALSE((field->accessibleName() == QStringLiteral("Pieces") && field->isVisible()));
}

TEST_CASE("Several entries are moved together, and withdrawn together with one reason")
{
    LogWindow window;
    list(window).setFocus();
    QTest::keySequence(&list(window), QKeySequence::SelectAll);
    QTest::keyClick(&list(window), Qt::Key_M);
    answer(window, QStringLiteral("To"), QStringLiteral("3 Mar rudder"));
    for (const WorkSession &entry : window.session->records()->work_sessions) {
        CHECK(entry.began == Moment::parse("2026-03-03"));
        CHECK(entry.component_id == window.workshop.rudder);
    }
    QTest::keySequence(&list(window), QKeySequence::SelectAll);
    QTest::keyClick(&list(window), Qt::Key_Delete);
    answer(window, QStringLiteral("Why"), QStringLiteral("of another aircraft"));
    for (const WorkSession &entry : window.session->records()->work_sessions)
        CHECK(entry.withdrawn_why == "of another aircraft");
    window.session->undo();
    CHECK(window.session->records()->work_sessions.size() == 2);
}

TEST_CASE("Keys of the log ask for nothing while somebody else has the project open")
{
    ReadOnlyPage<ui::LogPage> reader;
    QListView *entries = nullptr;
    for (auto *view : reader.page.findChildren<QListView *>()) {
        if (view->accessibleName() == QStringLiteral("Log entries"))
            entries = view;
    }
    REQUIRE(entries);
    const Snapshot records = reader.session->records();
    reader.page.showRecord({RecordType::WorkSession, records->work_sessions.begin()->id.value()});
    entries->setFocus();
    for (const auto key : {Qt::Key_S, Qt::Key_M, Qt::Key_Delete})
        QTest::keyClick(entries, key);
    CHECK(reader.complaints.size() == 3);
    for (const QString &words : reader.complaints)
        CHECK(words.contains(QStringLiteral("open for writing")));
    for (const auto *field : reader.page.findChildren<QLineEdit *>())
        CHECK((field->accessibleName() != QStringLiteral("Pieces") || !field->isVisible()));
}

TEST_CASE("The log is printed from the page, and the journal says so")
{
    LogWindow window;
    const QString file =
        QString::fromStdString((window.workshop.folder().parent_path() / "log.pdf").string());
    auto &form = *window.page->findChild<ui::LogbookForm *>();
    form.setChooseFile([&](const QString &) { return file; });
    window.press(QStringLiteral("Print…"));
    REQUIRE(form.isVisible());
    QTest::keyClick(&form, Qt::Key_Return, Qt::ControlModifier);
    REQUIRE(QFile::exists(file));
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"),
                 {QStringLiteral("-layout"), file, QStringLiteral("-")});
    REQUIRE(reader.waitForFinished());
    const QString text = QString::fromUtf8(reader.readAllStandardOutput());
    CHECK(text.contains(QStringLiteral("March 2026")));
    CHECK(text.contains(QStringLiteral("3 h 15")));
    const auto journal = window.session->project().journal();
    CHECK(journal.back().kind == ChangeKind::Printed);
    CHECK(text.contains(QString::fromStdString(journal.back().hash.substr(0, 16))));
}

TEST_CASE("A day that is none keeps the form open")
{
    LogWindow window;
    auto &form = *window.page->findChild<ui::LogbookForm *>();
    bool isAsked = false;
    form.setChooseFile([&](const QString &) {
        isAsked = true;
        return QString();
    });
    window.press(QStringLiteral("Print…"));
    window.field(QStringLiteral("From")).setText(QStringLiteral("31 Apr"));
    QTest::keyClick(&form, Qt::Key_Return, Qt::ControlModifier);
    CHECK_FALSE(isAsked);
    CHECK(form.isVisible());
}

} // namespace lastrivet::test
