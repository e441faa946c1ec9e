// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace lastrivet::ui {

/// Where the person's papers usually go: a folder that is there.
QString documentsFolder();
/// Where the person's photos usually lie: a folder that is there.
QString picturesFolder();

} // namespace lastrivet::ui
