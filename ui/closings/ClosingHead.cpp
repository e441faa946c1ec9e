// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/ClosingHead.h"

#include "core/project/acts/ClosingUp.h"
#include "core/readiness/Sentences.h"
#include "ui/convert/QtText.h"
#include "ui/journal/HistoryButton.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/StateBadge.h"
#include "ui/widgets/WrappedText.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

ClosingHead::ClosingHead(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_title(new QLabel(this))
    , m_place(new QLabel(this))
    , m_badge(new StateBadge(session.theme(), this))
    , m_back(new QPushButton(tr("← All closings"), this))
    , m_packet(new QPushButton(tr("Make packet"), this))
    , m_visit(new QPushButton(tr("Inspection visit"), this))
    , m_accept(new QPushButton(tr("Accepted afterwards"), this))
    , m_close(new QPushButton(this))
{
    build();
    connect(m_back, &QPushButton::clicked, this, &ClosingHead::backWanted);
    connect(m_packet, &QPushButton::clicked, this, &ClosingHead::packetWanted);
    connect(m_visit, &QPushButton::clicked, this, &ClosingHead::visitWanted);
    connect(m_accept, &QPushButton::clicked, this, &ClosingHead::acceptWanted);
    connect(m_close, &QPushButton::clicked, this, &ClosingHead::closeWanted);
}

void ClosingHead::build()
{
    m_back->setProperty("flat", true);
    m_title->setFont(m_session.theme().font(2));
    m_title->setWordWrap(true);
    m_place->setForegroundRole(QPalette::PlaceholderText);
    m_place->setWordWrap(true);
    auto *actions = new QWidget(this);
    auto *flow = new Flow(actions);
    flow->addWidget(m_badge);
    for (QPushButton *button : {m_packet, m_visit, m_accept, m_close})
        flow->addWidget(button);
    auto *back = new QHBoxLayout;
    back->addWidget(m_back);
    back->addStretch(1);
    auto *history = new HistoryButton(
        [this] {
            return RecordRef{RecordType::Closing, m_shown.value()};
        },
        this);
    back->addWidget(history);
    setTabOrder(m_back, history);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 8);
    layout->setSpacing(Theme::space);
    layout->addLayout(back);
    layout->addWidget(m_title);
    layout->addWidget(m_place);
    layout->addWidget(actions);
}

void ClosingHead::setBackWords(const QString &words)
{
    m_back->setText(words);
}

QString ClosingHead::placeOf(const Closing &closing) const
{
    if (closing.scope == ClosingScope::Aircraft)
        return tr("Before the final inspection and first flight: the whole aircraft");
    const auto records = m_session.records();
    QStringList hidden;
    for (const auto id : closing.encloses) {
        if (const Component *part = records->find(id))
            hidden << toQt(part->name);
    }
    const Component *part = records->find(closing.component_id);
    const QString home = part ? toQt(part->name) : QString();
    if (hidden.isEmpty() || hidden == QStringList{home})
        return home;
    return tr("%1; hides %2").arg(home, hidden.join(QStringLiteral(", ")));
}

QString ClosingHead::gapOf(const Closing &closing, const readiness::ClosingAnswer &answer) const
{
    if (answer.state != readiness::State::ClosedEarly)
        return {};
    if (closing.made_by == MadeBy::Factory)
        return tr("its document is not on record");
    if (closing.made_by == MadeBy::EarlierBuilder)
        return tr("closed before these records began; the inspector decides");
    const auto isMust = [](const readiness::Blocker &blocker) {
        return blocker.weight == readiness::Weight::Must;
    };
    const auto first = std::ranges::find_if(answer.blockers, isMust);
    if (first == answer.blockers.end())
        return {};
    const auto more = std::ranges::count_if(answer.blockers, isMust) - 1;
    const QString words = inWords(readiness::sentence(*first, *m_session.records()));
    return more == 0 ? words : tr("%1, and %2 more").arg(words, QString::number(more));
}

void ClosingHead::show(const Closing &closing, const readiness::ClosingAnswer &answer)
{
    m_shown = closing.id;
    m_title->setText(breakable(toQt(closing.title)));
    m_place->setText(placeOf(closing));
    m_badge->show(answer, gapOf(closing, answer));
    const bool isClosed = acts::isClosed(closing, m_session.now());
    const bool isClear = answer.state == readiness::State::Clear;
    m_close->setText(isClosed ? tr("Record an opening") : tr("Record the closing"));
    setPrimary(*m_close, isClear);
    m_accept->setVisible(answer.state == readiness::State::ClosedEarly);
    m_visit->setVisible(closing.made_by != MadeBy::Factory);
    for (QPushButton *button : {m_close, m_accept, m_visit})
        button->setEnabled(!m_session.isReadOnly());
}

} // namespace lastrivet::ui
