// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/acts/Inspecting.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/closings/ClosingsPage.h"
#include "ui/closings/InspectionView.h"
#include "ui/closings/VisitBoard.h"
#include "ui/closings/VisitPlanModel.h"
#include "ui/widgets/RowListView.h"
#include "ui/widgets/Section.h"

#include <QDir>
#include <QImage>
#include <QTest>
#include <QTreeView>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::test {

/// The page of closings on a project of its own, with hands to work it.
struct InspectionLoop {
    Workshop workshop;
    std::unique_ptr<ui::Session> session = workshop.session();
    ui::ClosingsPage page{*session};
    QString complained;

    InspectionLoop()
    {
        QObject::connect(session.get(), &ui::Session::complained, &page,
                         [this](const QString &sentence) { complained = sentence; });
        picture(page, 1110, 700, "loop-board");
    }

    Snapshot records() const { return session->records(); }
    QString file(const QString &name) const
    {
        return QDir(QString::fromStdString(workshop.folder().parent_path().string()))
            .filePath(name);
    }
    /// A picture on disk of a colour of its own.
    QString photo(const QString &name, int hue) const
    {
        QImage image(320, 240, QImage::Format_RGB32);
        image.fill(QColor::fromHsv(hue, 180, 200));
        const QString path = file(name);
        REQUIRE(image.save(path));
        return path;
    }
    Id<HoldPoint> preCover(Id<Closing> closing) const
    {
        return Workshop::point(*records(), closing, HoldPointKind::PreCover);
    }
    /// Picks the row of a closing in the plan with the keyboard.
    void pick(Id<Closing> closing)
    {
        QTreeView &table = page.visits().table();
        for (int row = 0; row < page.visits().plan().rowCount(); ++row) {
            if (page.visits().plan().closing(row) != closing)
                continue;
            table.setCurrentIndex(page.visits().plan().index(row, ui::VisitPlanModel::Title));
            QTest::keyClick(&table, Qt::Key_Space);
        }
        REQUIRE(std::ranges::binary_search(page.visits().plan().picked(), closing));
    }
    Id<Inspection> ask(IdSet<HoldPoint> points)
    {
        std::ranges::sort(points);
        Id<Inspection> id;
        session->change(QStringLiteral("Asked"), [&](Edit &edit) {
            Inspection visit;
            visit.reference = "17-3";
            visit.inspector_id = workshop.inspector;
            visit.hold_point_ids = points;
            id = acts::askForInspection(edit, visit);
        });
        return id;
    }
    const Squawk *finding(const std::string &number) const
    {
        for (const Squawk &squawk : records()->squawks) {
            if (squawk.inspection_id && squawk.finding_number == number)
                return &squawk;
        }
        return nullptr;
    }
    /// Space on the row of a finding: the button at its right.
    void actOn(int row)
    {
        ui::RowListView &list = page.inspection().findings().list();
        list.setFocus();
        list.setCurrentIndex(list.model()->index(row, 0));
        QTest::keyClick(&list, Qt::Key_Space);
    }
};

} // namespace lastrivet::test
