// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/workshop/OwnLimits.h"
#include "ui/widgets/ActForm.h"

class QLineEdit;

namespace lastrivet::ui {

/// Asks for a limit of the project's own, with its source; empty limits give the table its place
/// back.
class OwnLimitForm final : public ActForm {
    Q_OBJECT

public:
    explicit OwnLimitForm(QWidget *parent = nullptr);

    /// `known` is what stands there already; null when the tables do.
    void start(const QString &subject, const QString &unit, const workshop::OwnLimit *known);

Q_SIGNALS:
    void kept(const lastrivet::workshop::OwnLimit &limit);
    void dropped(const QString &subject);

protected:
    bool perform() override;

private:
    /// False when something is typed that is no number, which is said.
    bool read(const QLineEdit &line, std::optional<double> &number);

    QString m_subject;
    QLineEdit *m_minimum;
    QLineEdit *m_maximum;
    QLineEdit *m_unit;
    QLineEdit *m_source;
};

} // namespace lastrivet::ui
