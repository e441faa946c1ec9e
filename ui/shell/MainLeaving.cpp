// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/MainWindow.h"

#include "ui/bench/BenchView.h"
#include "ui/shell/Page.h"
#include "ui/shell/ProjectView.h"
#include "ui/shell/StartPage.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/Unfinished.h"
#include "ui/widgets/UnkeptHold.h"

#include <QAbstractItemView>
#include <QApplication>

#include <memory>

// Leaving loses nothing without a warning: what is begun stops it once.
namespace lastrivet::ui {

namespace {

std::shared_ptr<Progress> bringing(const Session &session)
{
    for (const auto &progress : session.running()) {
        if (progress->isBringing() && !progress->isCancelled())
            return progress;
    }
    return {};
}

/// Commits what is being typed into a cell of a list, as when it loses the focus.
void settleCell()
{
    const QWidget *typing = QApplication::focusWidget();
    const QWidget *place = typing ? typing->parentWidget() : nullptr;
    auto *list = place ? qobject_cast<QAbstractItemView *>(place->parentWidget()) : nullptr;
    if (list && list->viewport() == place)
        list->setFocus();
}

/// Commits what is typed into the fields of a record. A form in which that fails counts as begun.
void settleForms(const ProjectView &view)
{
    settleCell();
    for (const QWidget *page : view.pages()) {
        for (RecordForm *form : page->findChildren<RecordForm *>())
            form->settle();
        for (UnkeptHold *hold : page->findChildren<UnkeptHold *>())
            hold->settle();
    }
}

} // namespace

std::vector<Unfinished *> MainWindow::begun() const
{
    std::vector<Unfinished *> found;
    const auto look = [&found](const QWidget &place) {
        for (Unfinished *one : place.findChildren<Unfinished *>()) {
            if (one->isBegun())
                found.push_back(one);
        }
    };
    if (m_bench)
        look(*m_bench);
    if (m_view) {
        for (const QWidget *page : m_view->pages())
            look(*page);
        if (Unfinished *over = m_view->overPages(); over && over->isBegun())
            found.push_back(over);
    } else {
        look(*m_start);
    }
    return found;
}

QString MainWindow::showBegun(Unfinished &form)
{
    if (!m_view) {
        form.takeKeyboard();
        return tr("A new project is begun and not made. Make it, press Escape to drop it, or do "
                  "the same once more to leave without it.");
    }
    if (!m_bench || !m_bench->isAncestorOf(&form)) {
        leaveBench();
        m_view->openPageOf(form);
    }
    form.takeKeyboard();
    return form.heldBackWords();
}

QString MainWindow::bringingWords(const Progress &progress) const
{
    if (progress.total() == 0)
        return tr("Photos are being taken in. They are kept when that is done; do the same once "
                  "more to stop it.");
    return tr("%1 of %n photos are being taken in. They are kept when that is done; do the same "
              "once more to stop it.",
              nullptr, int(progress.total()))
        .arg(progress.done());
}

bool MainWindow::mayLeave()
{
    if (m_view)
        settleForms(*m_view);
    const auto begunNow = begun();
    const auto coming = m_view ? bringing(m_view->session()) : nullptr;
    QStringList what;
    for (const Unfinished *one : begunNow)
        what += one->contents();
    if (coming)
        what += coming->title();
    if ((begunNow.empty() && !coming) || what == m_heldBackBy)
        return true;
    QStringList sentences;
    if (!begunNow.empty())
        sentences += showBegun(*begunNow.front());
    if (coming)
        sentences += bringingWords(*coming);
    complain(sentences.join(QLatin1Char(' ')));
    m_heldBackBy = what;
    return false;
}

bool MainWindow::mayLeaveBench()
{
    Unfinished *first = nullptr;
    QStringList what;
    for (Unfinished *one : m_bench->findChildren<Unfinished *>()) {
        if (!one->isBegun())
            continue;
        first = first ? first : one;
        what += one->contents();
    }
    if (!first || what == m_heldBackBy)
        return true;
    complain(showBegun(*first));
    m_heldBackBy = what;
    return false;
}

bool MainWindow::leaveProject()
{
    // What is begun on the start page stays there.
    if (m_view && !mayLeave())
        return false;
    closeProject();
    return true;
}

} // namespace lastrivet::ui
