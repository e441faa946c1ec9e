// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>

namespace lastrivet::ui {

class Theme;

/// One page in the rail: icon and word, with a bar of the accent when it is the one shown.
class RailButton final : public QAbstractButton {
    Q_OBJECT

public:
    RailButton(const Theme &theme, const QString &icon, const QString &words,
               QWidget *parent = nullptr);

    void setNarrow(bool isNarrow);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    const Theme &m_theme;
    QString m_icon;
    bool m_isNarrow = false;
};

} // namespace lastrivet::ui
