// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"

#include <QWidget>

namespace lastrivet::ui {

class Theme;

/// The state of a closing: shape, colour and word.
class StateBadge final : public QWidget {
    Q_OBJECT

public:
    explicit StateBadge(const Theme &theme, QWidget *parent = nullptr);

    /// `gap` is what was missing when it was closed with gaps.
    void show(const readiness::ClosingAnswer &answer, const QString &gap = {});
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    const Theme &m_theme;
    readiness::State m_state = readiness::State::Hold;
    bool m_begun = true;
    QString m_words;
};

} // namespace lastrivet::ui
