// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"

#include <QObject>
#include <QTimer>

#include <optional>

namespace lastrivet::ui {

class Session;

/// Puts into the project's folder what can be read without the program: the log as PDF, all records
/// as CSV, and a page that explains them. Once a year by itself, and when asked.
class PlainPapers final : public QObject {
    Q_OBJECT

public:
    explicit PlainPapers(Session &session, QObject *parent = nullptr);

    void write();

private:
    void writeWhenDue();

    Session &m_session;
    QTimer m_timer;
    /// The day on which it was last looked whether they are due.
    std::optional<Moment> m_triedOn;
};

} // namespace lastrivet::ui
