// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/WorkersEditor.h"

#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"

#include <QLineEdit>
#include <QTest>

#include <catch2/catch.hpp>

#include <filesystem>
#include <memory>
#include <optional>
#include <vector>

namespace lastrivet::test {

namespace {

/// Two log entries of the builder; the first one's workers are shown, with the keyboard.
struct Workers {
    Workers()
    {
        const auto records = session->records();
        for (const WorkSession &entry : records->work_sessions)
            (first ? second : first) = entry.id;
        REQUIRE(session->change(QStringLiteral("Who worked"), [this](Edit &edit) {
            for (const Id<WorkSession> id : {first, second})
                edit.update(id, [this](WorkSession &entry) {
                    entry.workers = {{workshop.builder, std::nullopt, false}};
                });
        }));
        editor.show(first);
        picture(editor, 420, 160, "workers");
        editor.activateWindow();
        REQUIRE(QTest::qWaitForWindowActive(&editor));
    }
    void typeMinutes(const QString &name, const QString &text)
    {
        type(editor, QStringLiteral("How long %1 worked").arg(name), text);
    }
    std::vector<WorkSession::Worker> of(Id<WorkSession> id)
    {
        return session->records()->find(id)->workers;
    }

    Workshop workshop;
    std::unique_ptr<ui::Session> session = workshop.session();
    Id<WorkSession> first;
    Id<WorkSession> second;
    ui::WorkersEditor editor{*session};
};

} // namespace

TEST_CASE("How long somebody worked is kept for the entry that it was typed for", "[daylog]")
{
    Workers shown;
    shown.typeMinutes(QStringLiteral("Robin Vale"), QStringLiteral("2h"));
    shown.editor.show(shown.second);
    REQUIRE(shown.of(shown.second).size() == 1);
    CHECK_FALSE(shown.of(shown.second).front().minutes);
    REQUIRE(shown.of(shown.first).size() == 1);
    CHECK(shown.of(shown.first).front().minutes == Minutes{120});
}

TEST_CASE("What is typed for somebody whom an undo takes away is nobody else's", "[daylog]")
{
    Workers shown;
    QObject::connect(shown.session.get(), &ui::Session::changed, &shown.editor,
                     [&] { shown.editor.show(shown.first); });
    REQUIRE(shown.session->change(QStringLiteral("Sam, too"), [&](Edit &edit) {
        edit.update(shown.first, [&](WorkSession &entry) {
            const WorkSession::Worker sam{shown.workshop.inspector, std::nullopt, false};
            entry.workers.insert(entry.workers.begin(), sam);
        });
    }));
    shown.typeMinutes(QStringLiteral("Sam Orrin"), QStringLiteral("2h"));
    shown.session->undo();
    REQUIRE(shown.of(shown.first).size() == 1);
    CHECK(shown.of(shown.first).front().person_id == shown.workshop.builder);
    CHECK_FALSE(shown.of(shown.first).front().minutes);
}

TEST_CASE("How long somebody worked stays as it was typed while it cannot be saved", "[daylog]")
{
    Workers shown;
    const auto place = shown.workshop.folder();
    auto elsewhere = place;
    elsewhere += ".unplugged";
    std::filesystem::rename(place, elsewhere);
    shown.typeMinutes(QStringLiteral("Robin Vale"), QStringLiteral("2h"));
    QLineEdit &line = field(shown.editor, QStringLiteral("How long Robin Vale worked"));
    QTest::keyClick(&line, Qt::Key_Return);
    CHECK_FALSE(shown.of(shown.first).front().minutes);
    CHECK(line.text() == QStringLiteral("2h"));
    std::filesystem::rename(elsewhere, place);
    QTest::keyClick(&line, Qt::Key_Return);
    CHECK(shown.of(shown.first).front().minutes == Minutes{120});
}

} // namespace lastrivet::test
