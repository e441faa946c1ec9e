// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Squawk.h"

#include <QWidget>

#include <functional>
#include <optional>
#include <vector>

class QBoxLayout;
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
    QWidget *makeRow(const Squawk::RepairOption &option, std::size_t place);
    void addAct(QBoxLayout &layout, const QString &words, const QString &name,
                const std::function<void()> &act);
    QString reasonsFor(const Squawk::RepairOption &option) const;
    void keepLine();
    void leaveLine();
    void edit(std::size_t place);
    void choose(std::size_t place);
    void remove(std::size_t place);
    bool change(const QString &what, const std::function<void(Squawk &)> &body);

    Session &m_session;
    Id<Squawk> m_squawk;
    std::vector<Squawk::RepairOption> m_shown;
    /// The way whose words are in the line; none when the line is for a new one.
    std::optional<std::size_t> m_edited;
    QVBoxLayout *m_rows;
    QLineEdit *m_title;
    QLineEdit *m_pros;
    QLineEdit *m_cons;
};

} // namespace lastrivet::ui
