// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QTranslator>

#include <memory>
#include <vector>

namespace lastrivet::ui {

/// The language of the screen: the system's or the one chosen, for our texts and for Qt's.
///
/// A window speaks the language it was built in; choosing another asks for a new window.
class Speech {
public:
    ~Speech();

    /// Speaks the language of the code, or the system's when it is empty or unknown; windows that
    /// are built from now on do.
    void speak(const QString &code);

private:
    void install(const QString &file, const QString &folder);

    std::vector<std::unique_ptr<QTranslator>> m_translators;
};

} // namespace lastrivet::ui
