// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <QWidget>

class QLineEdit;

namespace lastrivet::ui {

class RowListView;
class Session;

/// Chooses the part to work on: those worked on last, or what is typed.
class BenchPartChooser final : public QWidget {
    Q_OBJECT

public:
    explicit BenchPartChooser(Session &session, QWidget *parent = nullptr);

    /// Starts anew, with the cursor in the line.
    void begin();
    /// The part to begin with: where the clock runs, else where work was last; none in a project
    /// without work.
    Id<Component> usualPart() const;
    void recordsChanged();

Q_SIGNALS:
    void chosen(lastrivet::Id<lastrivet::Component> part);
    void left();

protected:
    void keyPressEvent(QKeyEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void fill();

    Session &m_session;
    QLineEdit *m_line;
    RowListView *m_list;
};

} // namespace lastrivet::ui
