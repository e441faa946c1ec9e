// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QAbstractItemView;
class QModelIndex;

namespace lastrivet::ui {

/// Makes a row the current one and the only one that is chosen, whatever keys are held: of its own
/// accord a view adds to what is chosen, or changes nothing, while Ctrl is down as in Ctrl+Enter.
void chooseOneRow(QAbstractItemView &view, const QModelIndex &row);

} // namespace lastrivet::ui
