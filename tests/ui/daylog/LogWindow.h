// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/support/Workshop.h"
#include "ui/daylog/EntryEdit.h"
#include "ui/daylog/LogPage.h"

#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTest>

#include <catch2/catch.hpp>

#include <memory>

namespace lastrivet::test {

/// The log of the workshop in a window of its own.
struct LogWindow {
    LogWindow() { open(); }
    void open()
    {
        page.reset();
        session = workshop.session();
        page = std::make_unique<ui::LogPage>(*session);
        page->resize(1100, 680);
        page->show();
        REQUIRE(QTest::qWaitForWindowExposed(page.get()));
    }
    ui::EntryEdit &line() { return *page->findChild<ui::EntryEdit *>(); }
    QLineEdit &field(const QString &name)
    {
        for (auto *known : page->findChildren<QLineEdit *>()) {
            if (known->accessibleName() == name && known->isVisible())
                return *known;
        }
        FAIL("no field " << name.toStdString());
        return line();
    }
    void press(const QString &words)
    {
        for (auto *button : page->findChildren<QPushButton *>()) {
            if (button->text() == words && button->isVisible()) {
                QTest::mouseClick(button, Qt::LeftButton);
                return;
            }
        }
        FAIL("no button " << words.toStdString());
    }
    /// The session with the greatest id.
    WorkSession latest()
    {
        const auto &sessions = session->records()->work_sessions;
        return *sessions.find(Id<WorkSession>{sessions.greatestId()});
    }

    Workshop workshop;
    std::unique_ptr<ui::Session> session;
    std::unique_ptr<ui::LogPage> page;
};

} // namespace lastrivet::test
