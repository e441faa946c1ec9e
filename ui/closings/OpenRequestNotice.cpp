// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/OpenRequestNotice.h"

#include "core/project/acts/Inspecting.h"
#include "ui/closings/ClosingWords.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

OpenRequestNotice::OpenRequestNotice(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_words(new QLabel(this))
    , m_extend(new QPushButton(tr("Add these hold points to it"), this))
    , m_complete(new QPushButton(tr("Mark as complete"), this))
    , m_cancel(new QPushButton(tr("Mark as cancelled"), this))
{
    m_words->setWordWrap(true);
    auto *buttons = new QHBoxLayout;
    for (QPushButton *button : {m_extend, m_complete, m_cancel})
        buttons->addWidget(button);
    buttons->addStretch(1);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 8);
    layout->addWidget(m_words);
    layout->addLayout(buttons);
    connect(m_extend, &QPushButton::clicked, this, [this] { Q_EMIT extendWanted(m_visit); });
    connect(m_complete, &QPushButton::clicked, this, [this] { end(true); });
    connect(m_cancel, &QPushButton::clicked, this, [this] { end(false); });
}

bool OpenRequestNotice::isInTheWay() const
{
    return m_visit && m_session.project().profile().one_open_request;
}

void OpenRequestNotice::refresh()
{
    auto unfinished = acts::unfinishedVisits(*m_session.records(), m_session.now());
    // One that can still be extended first.
    std::ranges::stable_partition(unfinished, [this](const Inspection *visit) {
        return !happened(visit->held_on, m_session.now());
    });
    m_visit = unfinished.empty() ? Id<Inspection>{} : unfinished.front()->id;
    setVisible(bool(m_visit));
    if (!m_visit)
        return;
    const Inspection &visit = *unfinished.front();
    const bool isHeld = happened(visit.held_on, m_session.now());
    const QString since = isHeld ? tr("“%1”, held on %2, is not complete.")
                                       .arg(visitName(visit), dateText(*visit.held_on))
                                 : tr("“%1”, asked for on %2, is still open.")
                                       .arg(visitName(visit), dateText(visit.asked_on));
    m_words->setText(isInTheWay()
                         ? since + QLatin1Char(' ') +
                               tr("This authority takes one request at a time: a visit must be "
                                  "complete before the next one can be asked for.")
                         : since);
    m_extend->setVisible(!isHeld);
    m_complete->setVisible(isHeld);
    m_cancel->setVisible(!isHeld);
}

void OpenRequestNotice::end(bool isComplete)
{
    const int open = int(acts::openFindings(*m_session.records(), m_visit, m_session.now()).size());
    if (isComplete && open > 0) {
        m_words->setText(tr("%n of its findings are neither verified nor accepted; see the visit "
                            "itself.",
                            nullptr, open));
        return;
    }
    const auto id = m_visit;
    m_session.change(isComplete ? tr("Visit complete") : tr("Visit cancelled"), [&](Edit &edit) {
        isComplete ? acts::completeInspection(edit, id, edit.today())
                   : acts::cancelInspection(edit, id, edit.today());
    });
    refresh();
}

} // namespace lastrivet::ui
