// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Money.h"

#include <QString>
#include <QWidget>

#include <vector>

namespace lastrivet::ui {

class Theme;

/// An amount with its name.
struct NamedAmount {
    QString name;
    Money amount;
};

/// Amounts of one currency as bars below each other, each with its name and its figure.
class AmountBars final : public QWidget {
    Q_OBJECT

public:
    AmountBars(const Theme &theme, const QString &name, QWidget *parent = nullptr);

    void show(std::vector<NamedAmount> amounts);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return {200, sizeHint().height()}; }

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    int rowHeight() const;

    const Theme &m_theme;
    std::vector<NamedAmount> m_amounts;
};

/// Amounts of one currency over time as columns side by side, each named on hovering.
class AmountColumns final : public QWidget {
    Q_OBJECT

public:
    AmountColumns(const Theme &theme, const QString &name, QWidget *parent = nullptr);

    void show(std::vector<NamedAmount> amounts);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;
    bool event(QEvent *event) override;

private:
    QRectF column(std::size_t place) const;
    qreal mostShown() const;

    const Theme &m_theme;
    std::vector<NamedAmount> m_amounts;
};

} // namespace lastrivet::ui
