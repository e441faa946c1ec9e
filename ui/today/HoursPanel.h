// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/today/Today.h"

#include <QWidget>

class QLabel;

namespace lastrivet::ui {

/// The hours of the week, of the month and in all, figures under each other.
class HoursPanel final : public QWidget {
    Q_OBJECT

public:
    explicit HoursPanel(QWidget *parent = nullptr);

    void show(const today::Hours &hours);

private:
    QLabel *m_figures[3];
};

} // namespace lastrivet::ui
