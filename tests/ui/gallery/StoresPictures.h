// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <functional>

class QWidget;

namespace lastrivet::ui {
class ProjectView;
}

namespace lastrivet::test {

/// Takes a picture of the window, or of what lies over it.
using TakePicture = std::function<void(const QString &name, QWidget *over)>;

/// Every board of the stores, a claim, and what is asked about a lot and a tool.
void takeStores(ui::ProjectView &view, const TakePicture &take);

} // namespace lastrivet::test
