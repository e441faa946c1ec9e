// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"
#include "ui/widgets/RowListModel.h"

#include <QFrame>
#include <QPointer>

#include <functional>
#include <vector>

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

    /// Something that can be done now.
    struct Command {
        QString words;
        QString keys;
        /// The menu that it stands in, whose name finds it as well.
        QString menu;
        std::function<void()> act;
    };

    /// Opens over the middle of the window.
    void open(ProjectView &view, std::vector<Command> commands);
    QLineEdit &line() const { return *m_line; }
    RowListView &list() const { return *m_list; }

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void find();
    void place();
    void choose(int row);
    void point(int row);
    int rowsOfPage() const;
    void giveFocusBack();
    void addPages(std::vector<ListRow> &rows) const;
    void addCommands(std::vector<ListRow> &rows) const;
    void addVisited(std::vector<ListRow> &rows) const;
    void addRecords(std::vector<ListRow> &rows) const;
    void addKinds(std::vector<ListRow> &rows) const;
    bool fits(const QString &words) const;

    RowListView *m_list;
    QLineEdit *m_line;
    ProjectView *m_view = nullptr;
    /// What had the keyboard when the finder opened.
    QPointer<QWidget> m_before;
    std::vector<Command> m_commands;
};

} // namespace lastrivet::ui
