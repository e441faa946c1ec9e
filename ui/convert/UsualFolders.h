// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace lastrivet::ui {

/// Where the person's papers usually go: a folder that is there.
QString documentsFolder();
/// Where the person's photos usually lie: a folder that is there.
QString picturesFolder();

/// A place that a person typed, the same wherever the program was started: what does not begin at
/// the root is in `folder`, and after `~` in the person's own one, as in the terminal. An empty one
/// stays so.
QString wholePath(const QString &typed, const QString &folder);

} // namespace lastrivet::ui
