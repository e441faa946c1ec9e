// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"

#include <QLineEdit>

#include <optional>

namespace lastrivet::ui {

class Session;

/// A line for a day, with a time where one is known; the arrow keys go a day up or down. It reads
/// what the fields of records read, also “yesterday” and “3 Mar”.
class MomentLine final : public QLineEdit {
    Q_OBJECT

public:
    explicit MomentLine(const Session &session, QWidget *parent = nullptr);

    void setMoment(std::optional<Moment> moment);
    /// Empty when nothing is typed, or no such day.
    std::optional<Moment> moment() const;
    /// True when something is typed that is no day.
    bool isWrong() const;
    /// One sentence why it is no day on which something has happened by `now`; empty when it is.
    QString whyNotHappened(Moment now) const;

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    const Session &m_session;
};

} // namespace lastrivet::ui
