// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/workshop/Sum.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;

namespace lastrivet::ui {

class FigureView;

/// A sum to fill in, with its answer below, worked out with every letter typed.
class SumPanel final : public QWidget {
    Q_OBJECT

public:
    explicit SumPanel(Sum sum, QWidget *parent = nullptr);

    const Sum &sum() const { return m_sum; }
    /// What is typed is kept and means the same in the new units.
    void setUnits(UnitSystem units);
    void setOwnLimits(std::vector<workshop::OwnLimit> own);
    /// What the shown answer is about, where the project may have a limit of its own; else empty.
    QString subject() const { return m_subject; }
    FigureView &figures() const { return *m_figures; }

Q_SIGNALS:
    /// The answer is another one, or a field is wrong and there is none.
    void worked();

private:
    /// One of the two is null.
    struct Input {
        QLineEdit *line = nullptr;
        QComboBox *choice = nullptr;
    };

    void addInput(QFormLayout &form, const SumField &field);
    /// Nothing when a field is wrong, which is said.
    std::optional<Entered> entered();
    void work();
    void show(const SumAnswer &answer);
    void refuse(const QString &why);

    Sum m_sum;
    UnitSystem m_units = UnitSystem::Imperial;
    std::vector<workshop::OwnLimit> m_own;
    std::vector<Input> m_inputs;
    FigureView *m_figures;
    QLabel *m_refusal;
    QString m_subject;
};

} // namespace lastrivet::ui
