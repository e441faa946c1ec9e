// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/support/Workshop.h"
#include "ui/bench/BenchView.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RowListView.h"

#include <QLabel>
#include <QLineEdit>
#include <QTest>

#include <catch2/catch.hpp>

#include <cstdlib>
#include <memory>
#include <string_view>

namespace lastrivet::test {

/// The bench with a bolt on the part that was worked on last.
struct BenchWindow {
    Workshop workshop;
    std::unique_ptr<ui::Session> session = workshop.session();
    Id<Fastener> bolt;
    std::unique_ptr<ui::BenchView> view;

    explicit BenchWindow(std::string_view name = "bench")
    {
        session->change(QStringLiteral("A bolt"), [this](Edit &edit) {
            Fastener hinge;
            hinge.component_id = workshop.bay;
            hinge.place = "Bracket at rib 3";
            hinge.torque_min = 20;
            hinge.torque_max = 25;
            hinge.locking = Locking::SplitPin;
            bolt = edit.put(hinge);
        });
        view = std::make_unique<ui::BenchView>(*session);
        picture(*view, 1280, 720, name);
    }
    const Records &records() const { return *session->records(); }
    const Fastener &hinge() const { return *records().find(bolt); }

    ui::RowListView &list(const QString &name) const
    {
        for (ui::RowListView *list : view->findChildren<ui::RowListView *>()) {
            if (list->accessibleName().startsWith(name))
                return *list;
        }
        FAIL("no such list: " << name.toStdString());
        std::abort();
    }
    QLineEdit &line(const QString &name) const
    {
        for (QLineEdit *line : view->findChildren<QLineEdit *>()) {
            if (line->accessibleName() == name && line->isVisible())
                return *line;
        }
        FAIL("no such line: " << name.toStdString());
        std::abort();
    }
    /// Presses Space on the first row of a list.
    void actOnFirst(const QString &name) const
    {
        ui::RowListView &rows = list(name);
        rows.setFocus();
        rows.setCurrentIndex(rows.model()->index(0, 0));
        QTest::keyClick(&rows, Qt::Key_Space);
    }
    /// The hyphens of codes that do not break count as plain ones.
    bool says(const QString &words) const
    {
        for (const QLabel *label : view->findChildren<QLabel *>()) {
            const QString text = label->text().replace(QChar(0x2011), QLatin1Char('-'));
            if (text.contains(words) && !label->isHidden())
                return true;
        }
        return false;
    }
    void key(Qt::Key key) const { QTest::keyClick(view.get(), key); }
};

} // namespace lastrivet::test
