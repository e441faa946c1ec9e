// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Clock.h"

#include <QCoreApplication>
#include <QString>

namespace lastrivet::ui {

/// The invented project to look around in: a project, or where a package brought only its document,
/// what is made of that when somebody first wants it.
class Demo {
    Q_DECLARE_TR_FUNCTIONS(Demo)

public:
    Demo() = default;
    /// `document` is made into a project at `folder` unless there is one.
    Demo(QString folder, QString document);

    bool isThere() const;
    /// The project's folder, made when it is not there. Throws `Fault`, and leaves nothing half
    /// made at that place.
    QString open(const Clock &clock) const;

private:
    QString m_folder;
    QString m_document;
};

} // namespace lastrivet::ui
