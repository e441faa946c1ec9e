// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/PersonalSettings.h"

#include <QDialog>

class QComboBox;
class QFormLayout;

namespace lastrivet::ui {

class Session;

/// Language, look, paper and who is working; each counts as soon as it is chosen.
class Preferences final : public QDialog {
    Q_OBJECT

public:
    /// `session` is null while no project is open; `folder` is that of the project.
    Preferences(PersonalSettings settings, Theme &theme, Session *session, const QString &folder,
                QWidget *parent);

    /// True when something was chosen that only a window built anew can show.
    bool needsNewWindow() const { return m_needsNewWindow; }

private:
    QComboBox &addChoice(const QString &label);
    void addLanguages();
    void addLook();
    void addPrint();
    void addProject(Session &session, const QString &folder);
    void addUnits(Session &session);

    PersonalSettings m_settings;
    Theme &m_theme;
    QFormLayout *m_form;
    bool m_needsNewWindow = false;
};

} // namespace lastrivet::ui
