// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/support/Workshop.h"
#include "ui/parts/PartsPage.h"

#include <QString>

#include <memory>

class QLineEdit;
class QPushButton;
class QTreeView;

namespace lastrivet::test {

/// The page of parts in a window of its own, to be driven as a person would.
struct PartsWindow {
    PartsWindow();

    QTreeView &tree();
    /// The list of the section that is shown.
    QTreeView &list();
    QLineEdit &field(const QString &name);
    QPushButton &button(const QString &words);
    /// Types into the field and presses Enter.
    void enter(const QString &name, const QString &words);
    void show(RecordRef record) { page.showRecord(record); }
    Snapshot records() const { return session->records(); }

    Workshop workshop;
    std::unique_ptr<ui::Session> session = workshop.session();
    ui::PartsPage page{*session};
};

} // namespace lastrivet::test
