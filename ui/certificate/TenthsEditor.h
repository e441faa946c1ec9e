// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/credit/Tenths.h"

#include <QWidget>

#include <array>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class NumberBox;

/// The four columns of one task, to be filled in until they make ten tenths; Enter keeps them, Esc
/// shows again what is on record.
class TenthsEditor final : public QWidget {
    Q_OBJECT

public:
    explicit TenthsEditor(QWidget *parent = nullptr);

    /// Shows what is on record; what is being typed goes.
    void show(const credit::Tenths &tenths, bool isApplicable);
    /// As if somebody had typed them.
    void type(const credit::Tenths &tenths);
    credit::Tenths tenths() const;
    bool isBeingTyped() const;
    void startTyping();

Q_SIGNALS:
    /// The four columns are right and to be kept.
    void kept();
    /// What the columns hold changed, by whomever.
    void changed();
    void notApplicable();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void build();
    void keep();
    void updateWords();

    credit::Tenths m_shown;
    bool m_isApplicable = true;
    std::array<NumberBox *, 4> m_boxes{};
    QLabel *m_sum;
    QPushButton *m_keep;
    QPushButton *m_none;
};

} // namespace lastrivet::ui
