// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFormLayout>

#include <unordered_set>

namespace lastrivet::ui {

/// A form whose rows each have their height, also below one that needs two lines.
///
/// Qt 6.4 lays hidden rows out as well, at the place that they had when they were shown: the row
/// that has this place by now, because one above it came or needs two lines, loses its height. Here
/// a row that was hidden is put in anew, and has no place.
class FormRows final : public QFormLayout {
    Q_OBJECT

public:
    explicit FormRows(QWidget *parent = nullptr);

    void invalidate() override;

private:
    void putInAnew(int row, QWidget *label, QWidget &field);

    /// Fields whose rows were shown when this was last looked at; only compared, they may be gone.
    std::unordered_set<const QWidget *> m_shown;
    bool m_isPuttingIn = false;
};

} // namespace lastrivet::ui
