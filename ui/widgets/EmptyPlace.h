// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

/// Stands where nothing is yet: one sentence about what will be here, and one action.
class EmptyPlace final : public QWidget {
    Q_OBJECT

public:
    explicit EmptyPlace(const QString &sentence, QWidget *parent = nullptr);

    void setSentence(const QString &sentence);
    /// Shows the action's button; pressing it emits `acted`.
    void setAction(const QString &words);

Q_SIGNALS:
    void acted();

private:
    QLabel *m_sentence;
    QPushButton *m_button;
};

} // namespace lastrivet::ui
