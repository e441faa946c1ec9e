// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Clock.h"
#include "ui/shell/Demo.h"

#include <QPointer>
#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace lastrivet::ui {

class NewProjectForm;
class RecentProjects;
class Theme;

/// Stands in the window while no project is open: open one, try the demo, make a new one.
class StartPage final : public QWidget {
    Q_OBJECT

public:
    StartPage(const Theme &theme, const Clock &clock, QWidget *parent = nullptr);

    void setRecent(const RecentProjects &recent);
    void setDemo(const Demo &demo);
    void complain(const QString &sentence);
    void startNew();
    /// Puts the keyboard on the project that was open last, or into the form for a new one.
    void takeKeyboard();
    /// Made when somebody first sees the page: whoever opens a project right away never does.
    NewProjectForm &form();

Q_SIGNALS:
    void folderWanted(const QString &folder);
    void browseWanted();
    void restoreWanted();

protected:
    void showEvent(QShowEvent *event) override;

private:
    QLayout *buildHead(const Theme &theme);
    void buildDemo();
    void openDemo();
    QLayout *buildInvitation(const Theme &theme);

    Demo m_demo;
    QLabel *m_complaint;
    QWidget *m_demoPlace;
    QVBoxLayout *m_recent;
    /// Opens what was open last; null where nothing was.
    QPointer<QPushButton> m_newest;
    QVBoxLayout *m_right;
    NewProjectForm *m_form = nullptr;
    const Clock &m_clock;
};

} // namespace lastrivet::ui
