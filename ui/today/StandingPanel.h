// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/today/Today.h"

#include <QWidget>

class QGridLayout;

namespace lastrivet::ui {

class Theme;

/// How many closings stand in which state, by shape and word.
class StandingPanel final : public QWidget {
    Q_OBJECT

public:
    explicit StandingPanel(const Theme &theme, QWidget *parent = nullptr);

    void show(const today::Tally &tally);

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    void addLine(const QString &icon, const QColor &colour, std::int64_t count,
                 const QString &words);

    const Theme &m_theme;
    QGridLayout *m_lines;
};

} // namespace lastrivet::ui
