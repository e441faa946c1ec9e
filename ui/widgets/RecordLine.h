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
    /// Takes what is typed when it fits one record best; false when it fits none.
    bool settle();
    /// Where something is done with what is chosen: words that fit no record stay, instead of
    /// giving way to what was chosen before.
    void keepUnknown() { m_keepsUnknown = true; }
    /// What is said of words that fit no record.
    QString unknownWords() const;
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
    bool m_keepsUnknown = false;
    QStringListModel *m_names;
    QCompleter *m_completer;
    std::vector<std::int64_t> m_offered;
};

} // namespace lastrivet::ui
