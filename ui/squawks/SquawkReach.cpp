// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkReach.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordNames.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

using readiness::Reachable;

SquawkReach::SquawkReach(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_words(new QLabel(this))
{
    m_words->setWordWrap(true);
    auto *closings = new QWidget(this);
    m_closings = new Flow(closings);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(m_words);
    layout->addWidget(closings);
    hide();
}

void SquawkReach::show(const readiness::ListedSquawk *listed)
{
    const auto wanted = listed ? *listed : readiness::ListedSquawk{};
    const bool isSaid = !wanted.closings.empty();
    setVisible(isSaid);
    if (wanted == m_shown)
        return;
    m_shown = wanted;
    clearLayout(*m_closings);
    if (!isSaid)
        return;
    const int count = int(wanted.closings.size());
    m_words->setText(
        wanted.reachable == Reachable::NoLonger
            ? tr("Out of reach. To get at it, open again:", nullptr, count)
            : tr("Soon out of reach. This is the last chance before:", nullptr, count));
    for (const Id<Closing> closing : wanted.closings)
        addClosing(closing);
}

void SquawkReach::addClosing(Id<Closing> closing)
{
    const RecordRef record{RecordType::Closing, closing.value()};
    const QString title = shortName(*m_session.records(), record);
    auto *button = new QPushButton(onButton(title), this);
    button->setAccessibleName(tr("Go to the closing %1").arg(title));
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, [this, record] { m_session.goTo(record); });
    m_closings->addWidget(button);
}

} // namespace lastrivet::ui
