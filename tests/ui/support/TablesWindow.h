// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/support/Workshop.h"
#include "ui/shell/Session.h"
#include "ui/workshop/FigureView.h"
#include "ui/workshop/SumPanel.h"
#include "ui/workshop/TopicView.h"
#include "ui/workshop/WorkshopPage.h"

#include <cstddef>
#include <memory>

namespace lastrivet::test {

/// The page of tables and sums.
struct TablesWindow {
    TablesWindow() { picture(page, 1120, 680, "workshop"); }

    ui::SumPanel &sum(int topic, std::size_t index) { return *page.topic(topic).sums()[index]; }
    /// The cell of an answer.
    static QString cell(const ui::SumPanel &panel, std::size_t row, int column)
    {
        return panel.figures().table().rows.at(row).cells.value(column).replace(QChar(QChar::Nbsp),
                                                                                QLatin1Char(' '));
    }

    Workshop workshop;
    std::unique_ptr<ui::Session> session = workshop.session();
    ui::WorkshopPage page{*session};
};

} // namespace lastrivet::test
