// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/weighing/LinesEditor.h"
#include "ui/weighing/LinesModel.h"
#include "ui/weighing/WeighingView.h"
#include "ui/workshop/FigureView.h"

#include <QTableView>

#include <memory>
#include <stdexcept>

namespace lastrivet::test {

/// The weighing of a workshop, shown by itself.
struct WeighingShown {
    WeighingShown()
    {
        QObject::connect(session.get(), &ui::Session::changed, &view,
                         [this](const ChangeNotice &notice) { view.apply(notice); });
        QObject::connect(session.get(), &ui::Session::complained, &view,
                         [this](const QString &sentence) { complaint = sentence; });
        picture(view, 1120, 640, "weighing");
    }

    ui::LinesEditor &lines(const QString &name)
    {
        for (ui::LinesEditor *editor : view.findChildren<ui::LinesEditor *>()) {
            if (editor->view().accessibleName() == name)
                return *editor;
        }
        throw std::runtime_error("no such lines");
    }
    void type(const QString &name, int row, int column, const char *text)
    {
        ui::LinesModel &model = lines(name).model();
        model.setData(model.index(row, column), QString::fromUtf8(text), Qt::EditRole);
    }
    const Weighing &weighing() { return *session->records()->weighings.begin(); }
    /// The weighing was made before today, so that what is fitted today came after it.
    void weighEarlier()
    {
        session->change(QStringLiteral("Weighed earlier"), [&](Edit &edit) {
            Weighing earlier = *edit.records().weighings.begin();
            earlier.weighed_on = Moment::parse("2026-03-01");
            edit.put(earlier);
        });
    }
    const ui::FigureTable &table(const QString &title)
    {
        for (const ui::FigureView *figures : view.findChildren<ui::FigureView *>()) {
            if (figures->table().title == title)
                return figures->table();
        }
        throw std::runtime_error("no such table");
    }

    Workshop workshop;
    std::unique_ptr<ui::Session> session = workshop.session();
    ui::WeighingView view{*session};
    QString complaint;
};

inline const QString scales = QStringLiteral("Scales");
inline const QString corrections = QStringLiteral("Taken off and added");

/// FAA-H-8083-30 chapter 4 fig. 4-20.
inline void weighLikeTheHandbook(WeighingShown &shown)
{
    press(shown.view, QStringLiteral("Write the first weighing down"));
    const char *const rows[][4] = {{"left main", "650 lb", "5 lb", "70 in"},
                                   {"right main", "640 lb", "5 lb", "70 in"},
                                   {"nose", "225 lb", "2.5 lb", "-30 in"}};
    for (int row = 0; row < 3; ++row) {
        shown.type(scales, row, 0, rows[row][0]);
        shown.type(scales, row, 1, rows[row][1]);
        shown.type(scales, row, 2, rows[row][2]);
        shown.type(scales, row, 4, rows[row][3]);
    }
    shown.type(corrections, 0, 0, "Fuel");
    shown.type(corrections, 0, 1, "-177 lb");
    shown.type(corrections, 0, 2, "95 in");
}

} // namespace lastrivet::test
