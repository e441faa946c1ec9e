// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/WeightReport.h"

#include <QWidget>

namespace lastrivet::ui {

class Theme;

/// The limits of weight and centre of gravity, with the loadings and the extremes in them.
class EnvelopePicture final : public QWidget {
    Q_OBJECT

public:
    explicit EnvelopePicture(const Theme &theme, QWidget *parent = nullptr);

    void show(const packet::WeightReport &report);
    QSize sizeHint() const override { return {420, 280}; }

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    const Theme &m_theme;
    packet::WeightReport m_report;
};

} // namespace lastrivet::ui
