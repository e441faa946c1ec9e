// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/SquawkOrder.h"

#include <QWidget>

class QLabel;

namespace lastrivet::ui {

class Flow;
class Session;

/// Whether a squawk can still be got at: names the closings to open for it, or that would soon bury
/// it, and goes to them.
class SquawkReach final : public QWidget {
    Q_OBJECT

public:
    explicit SquawkReach(Session &session, QWidget *parent = nullptr);

    void show(const readiness::ListedSquawk *listed);

private:
    void addClosing(Id<Closing> closing);

    Session &m_session;
    readiness::ListedSquawk m_shown;
    QLabel *m_words;
    Flow *m_closings;
};

} // namespace lastrivet::ui
