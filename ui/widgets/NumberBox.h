// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSpinBox>
#include <QString>

#include <optional>

namespace lastrivet::ui {

/// A box for a whole number. What cannot stand there is refused whole, and said, when it is left:
/// sign by sign, −7 would become 7 and 7.5 become 75.
class NumberBox final : public QSpinBox {
    Q_OBJECT

public:
    explicit NumberBox(QWidget *parent = nullptr);

    /// Takes the place of what was typed, which is refused no more.
    void setValue(int value);
    void stepBy(int steps) override;
    /// Why what was typed last cannot stand here, once; nothing when it can.
    QString takeRefused();

Q_SIGNALS:
    void refused(const QString &why);

protected:
    QValidator::State validate(QString &input, int &position) const override;
    void focusOutEvent(QFocusEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    void noteTyping();
    void look();

    QString m_refused;
    /// The number from before somebody began to type.
    std::optional<int> m_before;
};

} // namespace lastrivet::ui
