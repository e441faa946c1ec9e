// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/gallery/Gallery.h"

#include "tests/ui/support/Looks.h"
#include "ui/backup/BackupForm.h"
#include "ui/backup/RestoreForm.h"
#include "ui/journal/ConflictsView.h"
#include "ui/journal/JournalPage.h"
#include "ui/shell/Finder.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/Page.h"
#include "ui/shell/PageList.h"
#include "ui/shell/PersonalSettings.h"
#include "ui/shell/Preferences.h"
#include "ui/shell/ProjectView.h"

#include <QCoreApplication>
#include <QDir>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QScrollBar>
#include <QSettings>
#include <QTreeView>

#include <cstdio>

namespace lastrivet::test {

Gallery::Gallery(ui::MainWindow &window, QString folder)
    : m_window(window)
    , m_folder(std::move(folder))
{
    QDir().mkpath(m_folder);
}

void Gallery::take(const QString &name)
{
    take(name, m_window);
}

void Gallery::take(const QString &name, QWidget &widget)
{
    for (int i = 0; i < 5; ++i)
        QCoreApplication::processEvents();
    for (const QString &cut : test::cutTexts(widget))
        std::fprintf(stderr, "%s: cut: %s\n", qPrintable(name), qPrintable(cut));
    for (const QTreeView *list : widget.findChildren<QTreeView *>()) {
        if (list->isVisible() && list->horizontalScrollBar()->isVisible())
            std::fprintf(stderr, "%s: a list scrolls sideways\n", qPrintable(name));
    }
    widget.grab().save(QDir(m_folder).filePath(name + QStringLiteral(".png")));
}

void Gallery::takePages()
{
    for (const auto &page : ui::pageList()) {
        m_window.view()->open(page.id);
        take(page.name().toLower());
    }
}

void Gallery::takeJournal()
{
    auto &view = *m_window.view();
    view.open(ui::PageId::Journal);
    auto &page = static_cast<ui::JournalPage &>(view.page(ui::PageId::Journal));
    page.showDecisions();
    auto &list = page.conflicts().list();
    for (int row = 0; list.isVisible() && row < list.model()->rowCount(); ++row) {
        list.setCurrentIndex(list.model()->index(row, 0));
        take(QStringLiteral("journal-to-decide-%1").arg(row));
    }
    for (const Component &part : view.session().records()->components) {
        page.showRecord({RecordType::Component, part.id.value()});
        take(QStringLiteral("journal-of-a-part"));
        return;
    }
}

void Gallery::takeBackups()
{
    m_window.view()->open(ui::PageId::Today);
    m_window.backupForm().open(m_window.view()->backups());
    take(QStringLiteral("backup"));
    m_window.backupForm().hide();
    m_window.restoreForm().open();
    take(QStringLiteral("restore"));
    m_window.restoreForm().hide();
}

void Gallery::takeShell(QSettings &settings, ui::Theme &theme)
{
    m_window.view()->open(ui::PageId::Today);
    m_window.openFinder();
    take(QStringLiteral("finder"));
    m_window.finder().line().setText(QStringLiteral("wing"));
    take(QStringLiteral("finder-wing"));
    m_window.finder().hide();
    ui::Preferences preferences(ui::PersonalSettings(settings), theme, &m_window.view()->session(),
                                m_window.openedFolder(), &m_window);
    preferences.show();
    take(QStringLiteral("preferences"), preferences);
}

void Gallery::press(const QString &words)
{
    for (auto *button : m_window.findChildren<QPushButton *>()) {
        if (button->text() == words && button->isVisible()) {
            button->click();
            return;
        }
    }
}

} // namespace lastrivet::test
