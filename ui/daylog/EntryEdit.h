// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/EntryLine.h"

#include <QLineEdit>

#include <vector>

class QCompleter;
class QStringListModel;

namespace lastrivet::ui {

class Session;

/// A line for an entry; offers the parts that the words at the cursor may begin.
class EntryEdit : public QLineEdit {
    Q_OBJECT

public:
    explicit EntryEdit(Session &session, QWidget *parent = nullptr);

Q_SIGNALS:
    /// Enter, while no part is being chosen.
    void entered();

protected:
    /// The words at the cursor (in bytes) that name a part, or may once they are whole.
    virtual entry::PartWords partWords(std::string_view line, std::size_t cursor,
                                       const entry::PartFinder &finder) const;
    Session &session() const { return m_session; }
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
