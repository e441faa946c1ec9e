// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QSettings;
class QWidget;

namespace lastrivet::ui {
class ClosingsPage;
class MainWindow;
class Theme;
} // namespace lastrivet::ui

namespace lastrivet::test {

/// Takes pictures of a window with a project, for people to look at, and says what is cut in them.
class Gallery {
public:
    Gallery(ui::MainWindow &window, QString folder);

    void take(const QString &name);
    void take(const QString &name, QWidget &widget);
    void takePages();
    /// The page of parts in its other guises: steps drawn, deviations of the whole aircraft, the
    /// preview of a copy, a list that is brought in.
    void takeParts();
    void takeBench();
    /// The log with a line half typed, with its clock, and while it is printed.
    void takeLog();
    /// One closing of each state, opened.
    void takeClosings();
    /// The places of an inspection, from plan to report.
    void takeInspection();
    /// Photos by part, what is missing, and the first one with marks opened.
    void takePhotos();
    /// The line for a new squawk, over a page that shows a part.
    void takeCapture();
    /// Each chart of the hours with its table.
    void takeHours();
    void takeStores();
    /// Each topic of the workshop, a search, and a limit of the project's own.
    void takeWorkshop();
    /// The places of the certificate, and rules with something wrong in them.
    void takeCertificate();
    /// The places of weighing and flights, with what the project has.
    void takeWeighing();
    /// The form of papers, with each paper chosen.
    void takePrints();
    /// The long papers themselves, as PDF.
    void makePapers();
    /// What merges left to decide, one thing after another, and the history of a part.
    void takeJournal();
    void takeBackups();
    /// What lies over the pages.
    void takeShell(QSettings &settings, ui::Theme &theme);

private:
    /// What opening a closed box again would do.
    void takeOpening(ui::ClosingsPage &page);
    void press(const QString &words);

    ui::MainWindow &m_window;
    QString m_folder;
};

} // namespace lastrivet::test
