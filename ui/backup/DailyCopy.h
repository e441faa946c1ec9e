// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QTimer>

namespace lastrivet::ui {

class Session;

/// Keeps earlier states of an open project's database in its `backups`: one a day while it is open,
/// the first a moment after it was opened, and one when it is closed after a change. Copies on a
/// worker, with a connection of its own.
class DailyCopy final : public QObject {
    Q_OBJECT

public:
    explicit DailyCopy(Session &session, QObject *parent = nullptr);
    ~DailyCopy() override;

    /// Copies when this day has no copy yet.
    void look();

private:
    void copy();

    Session &m_session;
    QTimer m_timer;
    bool m_isChanged = false;
    bool m_isCopying = false;
};

} // namespace lastrivet::ui
