// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/starters/Starter.h"

#include <QTreeWidget>

#include <set>
#include <string>

namespace lastrivet::ui {

/// A text of a starter in the language of the screen.
QString starterText(const std::string &text);

/// The parts that a starter would bring, each with a box to leave it out.
class StarterTree final : public QTreeWidget {
    Q_OBJECT

public:
    explicit StarterTree(QWidget *parent = nullptr);

    void offer(const Starter &starter);
    /// Codes of the parts whose boxes are empty.
    std::set<std::string> leftOut() const;

Q_SIGNALS:
    void pruned();
};

} // namespace lastrivet::ui
