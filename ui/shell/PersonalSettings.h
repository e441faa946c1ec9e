// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/Language.h"
#include "ui/print/Paper.h"
#include "ui/shell/Theme.h"

#include <QSettings>

namespace lastrivet::ui {

/// What a person chose for this computer, whatever project is open.
class PersonalSettings {
public:
    explicit PersonalSettings(QSettings &settings);

    /// Code of the language of the screen; empty for the system's.
    QString language() const;
    void setLanguage(const QString &code);
    Theme::Choice theme() const;
    void setTheme(Theme::Choice choice);
    /// Rows for fingers and gloves.
    bool hasTallRows() const;
    void setTallRows(bool areTall);
    /// What was chosen, else what the system's country prints on.
    print::Paper paper() const;
    void setPaper(print::Paper paper);
    /// The language of what is printed: what was chosen, else that of the screen.
    const print::Language &printLanguage() const;
    /// Empty for that of the screen.
    QString printLanguageCode() const;
    void setPrintLanguage(const QString &code);
    /// Who works on the project in this folder at this computer; empty for its builder.
    QString who(const QString &folder) const;
    void setWho(const QString &folder, const QString &name);
    /// The folder that somebody at this computer chose to be watched for the project in this
    /// folder; empty when nobody did.
    QString watchedFolder(const QString &folder) const;
    void setWatchedFolder(const QString &folder, const QString &watched);

private:
    void set(const QString &key, const QString &value);

    QSettings &m_settings;
};

/// The file in which this computer keeps them for its user.
QSettings settingsOfUser();

} // namespace lastrivet::ui
