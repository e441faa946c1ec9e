// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/workshop/OwnLimits.h"
#include "ui/widgets/ActForm.h"

#include <functional>

class QLineEdit;

namespace lastrivet::ui {

/// Asks for a limit of the project's own, with its source; empty limits give the table its place
/// back.
class OwnLimitForm final : public ActForm {
    Q_OBJECT

public:
    /// Keeps a limit, or drops that of the subject when it has neither end; true when that is done.
    using Keep = std::function<bool(const workshop::OwnLimit &limit)>;

    explicit OwnLimitForm(Keep keep, QWidget *parent = nullptr);

    /// `known` is what stands there already; null when the tables do.
    void start(const QString &subject, const QString &unit, const workshop::OwnLimit *known);

protected:
    bool perform() override;

private:
    /// False when something is typed that is no number, which is said.
    bool read(const QLineEdit &line, std::optional<double> &number);

    Keep m_keep;
    QString m_subject;
    /// What it stands in the place of has a unit.
    bool m_hasUnit = false;
    QLineEdit *m_minimum;
    QLineEdit *m_maximum;
    QLineEdit *m_unit;
    QLineEdit *m_source;
};

} // namespace lastrivet::ui
