// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/today/Today.h"

#include <QWidget>

class QGridLayout;

namespace lastrivet::ui {

class Theme;

/// How many closings stand in which state, by hatching, shape and word: also the key to the
/// picture of the aeroplane.
class StandingPanel final : public QWidget {
    Q_OBJECT

public:
    explicit StandingPanel(const Theme &theme, QWidget *parent = nullptr);

    void show(const today::Tally &tally);

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    void addLine(readiness::State state, bool begun, std::int64_t count, const QString &words);
    QPixmap swatch(readiness::State state, bool begun) const;

    const Theme &m_theme;
    QGridLayout *m_lines;
};

} // namespace lastrivet::ui
