// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Closing.h"

#include <QObject>
#include <QStringList>

class QWidget;

namespace lastrivet::ui {

class PhotoIntake;
class Session;

/// What the buttons in the first page's lists do.
class TodayActs final : public QObject {
    Q_OBJECT

public:
    TodayActs(Session &session, QWidget *parent);
    ~TodayActs() override;

    /// Starts the clock on a step, or goes to where the clock is stopped.
    void startWork(RecordRef step);
    /// A step is begun, a closing gets photos, anything else is gone to, where it can be mended.
    void mend(RecordRef record);
    /// Takes files in for a closing: they show what lies in it.
    void takeIn(const QStringList &files, Id<Closing> closing);

private:
    void askForPhotos(Id<Closing> closing);

    Session &m_session;
    QWidget *m_parent;
    PhotoIntake *m_intake;
};

} // namespace lastrivet::ui
