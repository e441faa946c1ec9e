// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/squawks/SquawkActForm.h"
#include "ui/squawks/SquawkEditor.h"
#include "ui/squawks/SquawksPage.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>
#include <functional>
#include <memory>
#include <string_view>
#include <vector>

namespace lastrivet::test {

/// The page of squawks in a window of its own, with what the tests press and read.
struct SquawksWindow {
    SquawksWindow()
    {
        page.resize(1200, 1400);
        page.show();
        REQUIRE(QTest::qWaitForWindowExposed(&page));
        QObject::connect(session.get(), &ui::Session::recordWanted, &page,
                         [this](RecordRef record) { wanted = record; });
        QObject::connect(session.get(), &ui::Session::complained, &page,
                         [this](const QString &sentence) { complaints.append(sentence); });
    }
    QLineEdit &field(const char *name) { return test::field(page, QString::fromUtf8(name)); }
    QComboBox &by() { return choice(page, QStringLiteral("By")); }
    void enter(const char *name, const char *text)
    {
        QLineEdit &line = field(name);
        line.setFocus();
        line.selectAll();
        QTest::keyClicks(&line, QString::fromUtf8(text));
        QTest::keyClick(&line, Qt::Key_Return);
    }
    QPushButton *button(const char *text) { return test::button(page, QString::fromUtf8(text)); }
    void press(const char *text) { test::press(page, QString::fromUtf8(text)); }
    ui::SquawkEditor &editor() { return *page.findChild<ui::SquawkEditor *>(); }
    /// What the form of the act says below its fields.
    bool isHinted(const char *words)
    {
        const auto labels = page.findChild<ui::SquawkActForm *>()->findChildren<QLabel *>();
        return std::ranges::any_of(labels, [&](const QLabel *label) {
            return label->isVisible() && label->text().contains(QString::fromUtf8(words));
        });
    }
    void show(Id<Squawk> id) { page.showRecord({RecordType::Squawk, id.value()}); }
    void change(const std::function<void(Edit &)> &body)
    {
        REQUIRE(session->change(QStringLiteral("Setting"), body));
    }
    const Squawk &squawk(std::string_view number)
    {
        const auto records = session->records();
        for (const Squawk &known : records->squawks) {
            if (known.number == number)
                return known;
        }
        FAIL("no squawk " << number);
        return *records->squawks.begin();
    }
    /// One more squawk on the bay.
    Id<Squawk> addSquawk()
    {
        Id<Squawk> added;
        change([&](Edit &edit) {
            added = edit.put(Squawk{.number = "2",
                                    .component_id = workshop.bay,
                                    .title = "Scratch",
                                    .found_on = edit.today()});
        });
        return added;
    }
    std::vector<WorkSession> sessionsOn(Id<Squawk> id)
    {
        std::vector<WorkSession> found;
        for (const WorkSession &work : session->records()->work_sessions) {
            if (work.squawk_id == id)
                found.push_back(work);
        }
        return found;
    }

    Workshop workshop;
    std::unique_ptr<ui::Session> session = workshop.session();
    ui::SquawksPage page{*session};
    RecordRef wanted{};
    QStringList complaints;
};

} // namespace lastrivet::test
