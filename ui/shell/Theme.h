// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Colours.h"

#include <QFont>
#include <QIcon>
#include <QObject>
#include <QString>

class QApplication;

namespace lastrivet::ui {

/// How everything looks: Fusion with our colours, one accent, spaces in multiples of 4.
class Theme final : public QObject {
    Q_OBJECT

public:
    enum class Choice { System, Light, Dark };

    static constexpr int space = 4;
    static constexpr int rowHeight = 28;

    explicit Theme(QApplication &application, Choice choice = Choice::System,
                   QObject *parent = nullptr);

    Choice choice() const { return m_choice; }
    void choose(Choice choice);
    bool isDark() const { return m_isDark; }
    const Colours &colours() const { return m_isDark ? Colours::dark() : Colours::light(); }

    /// An icon of resources/icons by its path there ("pages/today"), in the colour of text.
    QIcon icon(const QString &name) const;
    /// The same in a colour of its own.
    QIcon icon(const QString &name, const QColor &colour) const;

    /// The base font `steps` sizes up, each × 1.25.
    QFont font(int steps) const;

Q_SIGNALS:
    void changed();

protected:
    /// Hears of it when the system changes between light and dark.
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    bool wantsDark() const;
    void apply();
    void lookAtSystem();

    QApplication &m_application;
    Choice m_choice = Choice::System;
    bool m_isDark = false;
    bool m_systemIsDark = false;
    bool m_isToLook = false;
};

} // namespace lastrivet::ui
