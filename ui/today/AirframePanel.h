// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/airframe/Airframe.h"

#include <QWidget>

#include <optional>

class QLabel;
class QMenu;
class QPushButton;

namespace lastrivet::ui {

class AirframePicture;
class Session;

/// The picture of the aeroplane with what is said about the zone that is looked at, what the
/// picture does not show, and the choice of the drawing.
class AirframePanel final : public QWidget {
    Q_OBJECT

public:
    explicit AirframePanel(Session &session, QWidget *parent = nullptr);

    void showAnswer();
    AirframePicture &picture() const { return *m_picture; }

private:
    void build();
    /// `own` is the kind that the records speak of.
    void fillDrawings(airframe::AircraftKind own);
    void fillElsewhere();
    std::optional<airframe::AircraftKind> chosenKind() const;
    void chooseKind(std::optional<airframe::AircraftKind> kind);
    void say(const QModelIndex &zone);

    Session &m_session;
    AirframePicture *m_picture;
    QLabel *m_why;
    QPushButton *m_elsewhere;
    QPushButton *m_drawing;
    QMenu *m_elsewhereMenu;
    QMenu *m_drawingMenu;
    airframe::Airframe m_drawn;
};

} // namespace lastrivet::ui
