// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/balance/Units.h"
#include "ui/shell/Session.h"
#include "ui/weighing/UnitChange.h"

#include <QWidget>

#include <functional>
#include <memory>

class QPushButton;

namespace lastrivet::ui {

class ActLine;
class LinesEditor;
class RecordForm;

/// The limits of weight and centre of gravity: corners in their order, chord, source.
class LimitsEditor final : public QWidget {
    Q_OBJECT

public:
    explicit LimitsEditor(Session &session, QWidget *parent = nullptr);

    /// Units of limits that are written down from now on.
    void setUnits(balance::Units units);
    void apply(const ChangeNotice &notice);
    /// Whether a corner lacks something, and is none of the limits until it is typed.
    bool hasBegunCorners() const;

Q_SIGNALS:
    void begunChanged();

private:
    void start();
    void refresh();
    QString type(Envelope &envelope, int row, int column, const QString &text) const;
    /// One change of the limits; `body` answers why it cannot be, or nothing. What is not to be
    /// kept is only looked at.
    Session::Outcome change(const std::function<QString(Envelope &)> &body, bool isKept = true);

    Session &m_session;
    balance::Units m_units;
    QPushButton *m_new;
    LinesEditor *m_corners;
    RecordForm *m_form;
    ActLine *m_ask;
    std::shared_ptr<UnitChoice> m_unitChoice = unitChoice(*m_form);
};

} // namespace lastrivet::ui
