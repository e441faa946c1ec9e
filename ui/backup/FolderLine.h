// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace lastrivet::ui {

class PathLine;

/// A line for a folder, typed or chosen.
class FolderLine final : public QWidget {
    Q_OBJECT

public:
    /// `name` is what the folder is, for screen readers and as the title of the choice.
    explicit FolderLine(const QString &name, QWidget *parent = nullptr);

    /// With its whole path; empty while nothing is typed.
    QString folder() const;
    void setFolder(const QString &folder);

Q_SIGNALS:
    /// While it is typed, and when one is chosen.
    void changed();

private:
    void browse();

    PathLine *m_line;
};

} // namespace lastrivet::ui
