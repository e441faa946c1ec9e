// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>

#include <vector>

class QCompleter;
class QStringListModel;

namespace lastrivet::ui {

class Session;

/// The log's entry line; offers the parts that the word at the cursor may begin.
class EntryEdit final : public QLineEdit {
    Q_OBJECT

public:
    explicit EntryEdit(Session &session, QWidget *parent = nullptr);

Q_SIGNALS:
    /// Enter, while no part is being chosen.
    void entered();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    void offer();
    void take(int row);

    Session &m_session;
    QStringListModel *m_names;
    QCompleter *m_completer;
    int m_begin = 0;
    int m_end = 0;
};

} // namespace lastrivet::ui
