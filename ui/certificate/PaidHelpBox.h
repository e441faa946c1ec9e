// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/credit/PaidHelp.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class NumberBox;
class Session;

/// "What if this were paid help?", asked before the work: the account as it would be.
class PaidHelpBox final : public QWidget {
    Q_OBJECT

public:
    PaidHelpBox(Session &session, QWidget *parent = nullptr);

    void show(Id<CreditTask> task);
    QString answer() const;
    /// The tenths of the task with the help that is asked about.
    credit::Tenths tenths() const;
    /// Asks about nothing any more.
    void clear();

Q_SIGNALS:
    /// It is or will be so: the tenths are to be kept.
    void wanted();

private:
    void build();
    void ask();
    QString outlook(const CreditTask &task) const;
    QString room() const;
    credit::PaidHelp help() const;

    Session &m_session;
    Id<CreditTask> m_task;
    NumberBox *m_assembly;
    NumberBox *m_fabrication;
    QLabel *m_answer;
    QPushButton *m_take;
};

} // namespace lastrivet::ui
