// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/hours/ForecastWish.h"

#include <QWidget>

namespace lastrivet::ui {

class Flow;
class NumberBox;
class RecordLine;
class Session;

/// How many hours a week are meant to be worked, and which parts the forecast leaves out.
class WishBar final : public QWidget {
    Q_OBJECT

public:
    explicit WishBar(Session &session, QWidget *parent = nullptr);

    /// Shows what is kept.
    void refresh();

Q_SIGNALS:
    /// Something else was chosen, and kept.
    void changed();

private:
    void keep(const ForecastWish &wish);
    void leaveOut(Id<Component> part);
    void takeBack(Id<Component> part);
    void fill();

    Session &m_session;
    ForecastWish m_wish;
    /// While it is not known what was kept, nothing is kept in its place.
    bool m_isRead = false;
    NumberBox *m_hours;
    RecordLine *m_line;
    Flow *m_flow;
    std::vector<QWidget *> m_chips;
};

} // namespace lastrivet::ui
