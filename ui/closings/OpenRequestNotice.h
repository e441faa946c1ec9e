// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Inspection.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class Session;

/// Says that a visit asked for before is not complete, and what can be done about it in place.
class OpenRequestNotice final : public QWidget {
    Q_OBJECT

public:
    explicit OpenRequestNotice(Session &session, QWidget *parent = nullptr);

    /// Looks at the records.
    void refresh();
    /// True while the rules take no other request.
    bool isInTheWay() const;
    Id<Inspection> visit() const { return m_visit; }

Q_SIGNALS:
    /// The chosen hold points are to be added to that visit.
    void extendWanted(lastrivet::Id<lastrivet::Inspection> visit);

private:
    void end(bool isComplete);

    Session &m_session;
    Id<Inspection> m_visit;
    QLabel *m_words;
    QPushButton *m_extend;
    QPushButton *m_complete;
    QPushButton *m_cancel;
};

} // namespace lastrivet::ui
