// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"
#include "ui/widgets/RowListModel.h"

#include <QFrame>

#include <vector>

class QAction;
class QLineEdit;

namespace lastrivet::ui {

class ProjectView;
class RowListView;
class Theme;

/// Finds records, pages and commands while their words are being typed.
class Finder final : public QFrame {
    Q_OBJECT

public:
    explicit Finder(const Theme &theme, QWidget *parent);

    /// Opens over the middle of the window.
    void open(ProjectView &view, const std::vector<QAction *> &commands);
    QLineEdit &line() const { return *m_line; }
    RowListView &list() const { return *m_list; }

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void find();
    void choose(int row);
    void addPages(std::vector<ListRow> &rows) const;
    void addCommands(std::vector<ListRow> &rows) const;
    void addRecords(std::vector<ListRow> &rows) const;
    bool fits(const QString &words) const;

    RowListView *m_list;
    QLineEdit *m_line;
    ProjectView *m_view = nullptr;
    std::vector<QAction *> m_commands;
};

} // namespace lastrivet::ui
