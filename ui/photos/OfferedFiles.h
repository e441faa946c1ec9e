// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QTemporaryDir>

class QMimeData;

namespace lastrivet::ui {

/// What was dropped or pasted, as files: those named, those in a folder that is named, or the
/// picture itself, kept as a file of its own for as long as this lives.
class OfferedFiles {
public:
    static bool canBeTaken(const QMimeData &offer);
    QStringList from(const QMimeData &offer);

private:
    QTemporaryDir m_pictures;
    int m_count = 0;
};

} // namespace lastrivet::ui
