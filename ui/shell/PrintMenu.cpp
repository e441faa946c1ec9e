// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/ClosingsPage.h"
#include "ui/prints/PrintForm.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/Page.h"
#include "ui/shell/ProjectView.h"

#include <QAction>
#include <QMenu>
#include <QMenuBar>
#include <QString>

// The Print menu; each document opens the one form with that document chosen.
namespace lastrivet::ui {

namespace {

/// Where the letter stands that is to choose a line: the first of a word that no other line has,
/// else any; -1 where all are taken.
qsizetype letterIn(const QString &words, const QString &taken)
{
    qsizetype inside = -1;
    for (qsizetype at = 0; at < words.size(); ++at) {
        const QChar letter = words[at].toLower();
        if (letter < QLatin1Char('a') || letter > QLatin1Char('z') || taken.contains(letter))
            continue;
        if (at == 0 || !words[at - 1].isLetter())
            return at;
        if (inside < 0)
            inside = at;
    }
    return inside;
}

/// A letter for each line, in whichever language they are: the keyboard need not go down to it.
void giveLetters(const QMenu &menu)
{
    QString taken;
    for (QAction *line : menu.actions()) {
        QString words = line->text();
        const qsizetype at = letterIn(words, taken);
        if (at < 0)
            continue;
        taken += words[at].toLower();
        line->setText(words.insert(at, QLatin1Char('&')));
    }
}

} // namespace

void MainWindow::buildPrintMenu()
{
    QMenu &menu = *menuBar()->addMenu(tr("&Print"));
    const auto open = [this](PrintKind kind) {
        const auto *closings = qobject_cast<const ClosingsPage *>(&m_view->page(m_view->current()));
        const Id<Closing> chosen = closings ? closings->chosenClosing() : Id<Closing>{};
        leaveForms(m_printForm);
        m_printForm->open(m_view->session(), kind, chosen);
    };
    const auto words = [](const QString &paper) { return tr("%1…", "a paper to make").arg(paper); };
    // Each has its form on the page that it is about.
    add(menu, words(tr("Inspection packet")), {}, [this] { startPacket(); });
    add(menu, words(tr("Builder's log")), {}, [this] { startLogbook(); });
    menu.addSeparator();
    for (int index = 0; index < printKindCount; ++index) {
        const PrintKind kind = PrintKind(index);
        QAction *paper = add(menu, words(nameOf(kind)), {}, [open, kind] { open(kind); });
        if (index == 0)
            m_print = paper;
    }
    giveLetters(menu);
}

void MainWindow::startPacket()
{
    auto *closings = qobject_cast<ClosingsPage *>(&m_view->page(PageId::Closings));
    // A page that is only opened by this has a row chosen by itself.
    const bool isThere = m_view->current() == PageId::Closings;
    const Id<Closing> meant = isThere ? closings->chosenClosing() : closings->shownClosing();
    leaveForms(m_view);
    m_view->open(PageId::Closings);
    if (meant)
        closings->startPacket({meant});
    else
        m_view->session().say(tr("Open the closing that the packet is for; it is made there."));
}

void MainWindow::startLogbook()
{
    leaveForms(m_view);
    m_view->open(PageId::Log);
    m_view->page(PageId::Log).startPrinting();
}

} // namespace lastrivet::ui
