// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/BenchView.h"

#include "core/entry/SquawkLine.h"
#include "core/fasteners/FastenerState.h"
#include "core/fasteners/TorqueUnits.h"
#include "core/project/acts/BenchActs.h"
#include "core/project/acts/ClosingUp.h"
#include "core/project/acts/SquawkActs.h"
#include "core/project/acts/WorkActs.h"
#include "core/readiness/Sentences.h"
#include "ui/bench/BenchClock.h"
#include "ui/bench/BenchPartChooser.h"
#include "ui/bench/BenchRows.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/MediaModel.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/Section.h"
#include "ui/widgets/WrappedText.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QStackedWidget>

#include <algorithm>

namespace lastrivet::ui {

void BenchView::showPart(Id<Component> part)
{
    const bool isOther = part != m_part;
    m_part = part;
    m_torque->follow({{RecordType::Component, part.value()}});
    m_clock->setPart(part);
    m_stack->setCurrentIndex(1);
    m_change->show();
    fill();
    m_clock->button().setFocus();
    // Nothing beside the lines says what they are about.
    if (isOther && !(m_squawk->text() + m_note->text()).trimmed().isEmpty())
        m_session.say(tr("What is typed for a squawk or a note goes to %1 now.")
                          .arg(partName(*m_session.records(), part)));
}

void BenchView::choosePart()
{
    m_name->setText(tr("Bench"));
    m_torque->follow({});
    m_change->hide();
    m_stack->setCurrentWidget(m_chooser);
    m_chooser->begin();
}

bool BenchView::hasPart()
{
    const bool isChosen = m_stack->currentWidget() != m_chooser;
    if (!isChosen)
        m_session.say(tr("Choose the part first."));
    return isChosen;
}

/// Esc and F11 leave the bench at any time, in the middle of a word too.
void BenchView::keepDrafts()
{
    for (LineDraft &draft : m_drafts)
        draft.keep();
}

void BenchView::hideEvent(QHideEvent *event)
{
    keepDrafts();
    QWidget::hideEvent(event);
}

void BenchView::fill()
{
    const auto records = m_session.records();
    const auto answer = m_session.answer();
    if (m_stack->currentWidget() == m_chooser)
        return;
    if (!records->findLive(m_part)) {
        m_part = {};
        choosePart();
        return;
    }
    m_here = today::atPart(*records, *answer, m_part);
    m_name->setText(breakable(unbroken(partName(*records, m_part))));
    m_steps->setRows(benchStepRows(m_here, *records));
    m_fasteners->setRows(benchFastenerRows(m_here, *records));
    m_checks->setRows(benchCheckRows(m_here, *records));
    m_staysOpen->setRows(benchClosingRows(m_here, *records, *answer));
    showPictures();
}

void BenchView::tickStep(RecordRef record)
{
    const Id<Step> id{record.id};
    const auto workable = m_here.steps.begin() + std::ptrdiff_t(m_here.workable);
    if (std::find(m_here.steps.begin(), workable, id) == workable) {
        m_session.say(tr("This step has to wait for another."));
        return;
    }
    const QString title = toQt(m_session.records()->find(id)->title);
    m_session.change(tr("Done: %1").arg(title),
                     [id](Edit &edit) { acts::tickStep(edit, id, edit.today()); });
}

void BenchView::tickNextStep()
{
    if (m_here.workable > 0)
        tickStep({RecordType::Step, m_here.steps.front().value()});
    else
        m_session.say(tr("No step of this part can be worked on now."));
}

void BenchView::tickCheck(RecordRef record)
{
    const Id<Check> id{record.id};
    const auto records = m_session.records();
    m_session.change(tr("Ticked: %1").arg(listLine(records->find(id)->item)), [&](Edit &edit) {
        acts::tick(edit, {id}, records->project.builder_id, edit.today());
    });
}

void BenchView::workOn(RecordRef record)
{
    const auto records = m_session.records();
    const Fastener &fastener = *records->find(Id<Fastener>{record.id});
    const auto act = acts::nextAct(fastener);
    if (!act)
        return;
    const Id<Fastener> id = fastener.id;
    const QString place = toQt(fastener.place);
    switch (*act) {
    case acts::FastenerAct::Fit:
        m_session.change(tr("Fitted: %1").arg(place),
                         [id](Edit &edit) { acts::fitFastener(edit, id, edit.today()); });
        break;
    case acts::FastenerAct::Torque:
        askTorque(fastener);
        break;
    case acts::FastenerAct::Lock:
        m_session.change(tr("Locked: %1").arg(place),
                         [id](Edit &edit) { acts::lockFastener(edit, id, edit.today()); });
        break;
    case acts::FastenerAct::Mark:
        m_session.change(tr("Torque seal put on: %1").arg(place),
                         [id](Edit &edit) { acts::markFastener(edit, id, edit.today()); });
        break;
    }
}

void BenchView::askTorque(const Fastener &fastener)
{
    const QString place = toQt(fastener.place);
    const ActLine::Question question{
        .words = tr("%1: %2").arg(place, torqueWords(fastener)),
        .confirm = tr("Record the torque"),
        .textLabel = tr("Torque in %1").arg(toQt(word(fastener.torque_unit))),
        .textMissing = tr("What did the wrench say?"),
    };
    m_torque->ask(question, [this, fastener, place](const ActLine::Answer &answer) {
        const auto read = readTyped(fasteners::readTorque, answer.text, fastener.torque_unit);
        if (!read) {
            m_session.complain(inWords(read.reason()));
            return false;
        }
        const double value = *read;
        const QString label = fasteners::isOutside(fastener, value)
                                  ? tr("Torqued outside its limits: %1")
                                  : tr("Torqued: %1");
        return m_session.change(label.arg(place), [&](Edit &edit) {
            acts::torqueFastener(edit, fastener.id, edit.today(), value);
        });
    });
}

void BenchView::addSquawk()
{
    const auto line = toStd(m_squawk->text());
    if (line.empty())
        return;
    const auto read = entry::readSquawk(line, m_session.partFinder(),
                                        {.today = m_session.today(), .part_shown = m_part});
    if (read.problem) {
        m_session.complain(inWords(*read.problem));
        return;
    }
    const Squawk &squawk = read.squawk;
    const bool isDone = m_session.change(tr("New squawk: %1").arg(toQt(squawk.title)),
                                         [&](Edit &edit) { acts::addSquawk(edit, squawk); });
    if (!isDone)
        return;
    // Undo is about the squawk from here on, not about its words.
    m_squawk->setText({});
    keepDrafts();
}

void BenchView::addNote()
{
    const auto line = toStd(m_note->text());
    if (line.empty())
        return;
    const QString part = partName(*m_session.records(), m_part);
    const bool isDone = m_session.change(tr("Note on %1").arg(part),
                                         [&](Edit &edit) { acts::addNote(edit, m_part, line); });
    if (!isDone)
        return;
    m_note->setText({});
    keepDrafts();
}

void BenchView::explain(RecordRef record)
{
    const auto open =
        std::ranges::find(m_here.stays_open, Id<Closing>{record.id}, &today::StaysOpen::closing);
    if (open != m_here.stays_open.end())
        m_session.say(asSentence(readiness::clearedBy(open->nearest, *m_session.records(),
                                                      m_session.project().profile())));
}

void BenchView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape && isEnlarged())
        reduce();
    else if (event->key() == Qt::Key_Escape)
        Q_EMIT left();
    else
        QWidget::keyPressEvent(event);
}

} // namespace lastrivet::ui
