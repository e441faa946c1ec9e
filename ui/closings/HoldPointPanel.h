// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <QWidget>

class QLayout;
class QVBoxLayout;

namespace lastrivet::ui {

class Session;

/// The hold points of a closing with their signatures, and what can be done at each. A button that
/// has the keyboard keeps it while it is there.
class HoldPointPanel final : public QWidget {
    Q_OBJECT

public:
    explicit HoldPointPanel(Session &session, QWidget *parent = nullptr);

    void show(Id<Closing> closing);

Q_SIGNALS:
    void signWanted(lastrivet::Id<lastrivet::HoldPoint> point);
    void waiveWanted(lastrivet::Id<lastrivet::HoldPoint> point);
    void withdrawWanted(lastrivet::Id<lastrivet::SignOff> signature);
    /// What changed since the signature is to be written down, and the answer recorded.
    void changesWanted(lastrivet::Id<lastrivet::HoldPoint> point);
    void answerWanted(lastrivet::Id<lastrivet::HoldPoint> point);
    void planWanted();

private:
    void fill(Id<Closing> closing);
    QString forgetButtons();
    void addPoint(const HoldPoint &point, bool isClosed);
    void addButtons(const HoldPoint &point, const SignOff *signature, bool isClosed);
    void addAnswerButtons(QLayout &buttons, const HoldPoint &point);
    bool isOutdated(const HoldPoint &point) const;
    QString standing(const HoldPoint &point, const SignOff *signature) const;

    Session &m_session;
    QVBoxLayout *m_points;
};

} // namespace lastrivet::ui
