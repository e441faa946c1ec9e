// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/PageList.h"

#include <QWidget>

class QButtonGroup;

namespace lastrivet::ui {

class Theme;

/// The pages down the left edge, by icon and word; by icon alone in a narrow window. Up and Down go
/// from page to page, Right and Enter into the one that is shown.
class Rail final : public QWidget {
    Q_OBJECT

public:
    explicit Rail(const Theme &theme, QWidget *parent = nullptr);

    void choose(PageId page);
    void setNarrow(bool isNarrow);

Q_SIGNALS:
    void chosen(lastrivet::ui::PageId page);
    /// The page is to be shown, and the keyboard stays here.
    void passed(lastrivet::ui::PageId page);
    /// The keyboard is to go into the page that is shown.
    void entered();

protected:
    void paintEvent(QPaintEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    const Theme &m_theme;
    QButtonGroup *m_buttons;
};

} // namespace lastrivet::ui
