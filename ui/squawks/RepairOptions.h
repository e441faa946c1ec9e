// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Squawk.h"

#include <QWidget>

class QLineEdit;
class QVBoxLayout;

namespace lastrivet::ui {

class Session;

/// The ways in which a squawk may be repaired, what speaks for and against each, and which is
/// chosen.
class RepairOptions final : public QWidget {
    Q_OBJECT

public:
    explicit RepairOptions(Session &session, QWidget *parent = nullptr);

    void show(Id<Squawk> squawk);

private:
    void fill(const std::vector<Squawk::RepairOption> &options);
    QWidget *makeRow(const Squawk::RepairOption &option, std::size_t place);
    void add();
    void choose(std::size_t place);
    void remove(std::size_t place);
    bool change(const QString &what,
                const std::function<void(std::vector<Squawk::RepairOption> &)> &body);

    Session &m_session;
    Id<Squawk> m_squawk;
    std::vector<Squawk::RepairOption> m_shown;
    QVBoxLayout *m_rows;
    QLineEdit *m_title;
    QLineEdit *m_pros;
    QLineEdit *m_cons;
};

} // namespace lastrivet::ui
