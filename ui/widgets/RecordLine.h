// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"

#include <QLineEdit>

#include <vector>

class QCompleter;
class QStringListModel;

namespace lastrivet::ui {

class Session;

/// A line that holds one record of a type, found by typing a few letters of its name.
class RecordLine final : public QLineEdit {
    Q_OBJECT

public:
    RecordLine(Session &session, RecordType type, QWidget *parent = nullptr);

    /// 0 when none is chosen.
    std::int64_t chosen() const { return m_chosen; }
    /// Shows a record; emits nothing.
    void setChosen(std::int64_t id);
    /// Takes what is typed when it fits one record best.
    void settle();
    /// True between typing and settling.
    bool isBeingTyped() const { return isModified(); }
    /// Puts words in that were typed before and are to be settled yet.
    void typeAgain(const QString &words);

Q_SIGNALS:
    void chosenByPerson(qint64 id);

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    void offer();
    void take(int row);

    Session &m_session;
    RecordType m_type;
    std::int64_t m_chosen = 0;
    QStringListModel *m_names;
    QCompleter *m_completer;
    std::vector<std::int64_t> m_offered;
};

} // namespace lastrivet::ui
