// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/WorkSession.h"
#include "ui/shell/Session.h"

#include <QWidget>

#include <functional>

class QVBoxLayout;

namespace lastrivet::ui {

class RecordLine;

/// Who worked in a session, how long where that is less than the whole, and whether for pay.
class WorkersEditor final : public QWidget {
    Q_OBJECT

public:
    explicit WorkersEditor(Session &session, QWidget *parent = nullptr);

    void show(Id<WorkSession> session);

private:
    using Workers = std::vector<WorkSession::Worker>;

    void fill();
    QWidget *makeRow(std::size_t place);
    /// Somebody in a row, which may go by the time that what is typed there is kept.
    struct Place {
        Id<WorkSession> session;
        std::size_t row;
        Id<Person> person;
    };

    /// False when they could not be saved, and stay as they were typed.
    bool setMinutes(const Place &place, const QString &text);
    void change(const std::function<void(Workers &)> &body);
    /// Nothing is changed when the person is not in that row any more.
    Session::Outcome changeAt(const Place &place,
                              const std::function<void(WorkSession::Worker &)> &body);
    Session::Outcome changeOf(Id<WorkSession> session, const std::function<void(Workers &)> &body);

    Session &m_session;
    Id<WorkSession> m_shown;
    Workers m_workers;
    QVBoxLayout *m_rows;
    RecordLine *m_add;
};

} // namespace lastrivet::ui
