// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/ConflictPanel.h"

#include "core/base/Error.h"
#include "core/journal/Account.h"
#include "ui/convert/QtText.h"
#include "ui/convert/RefusalText.h"
#include "ui/journal/AccountDelegate.h"
#include "ui/journal/AccountModel.h"
#include "ui/journal/ConflictWords.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"

#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QVBoxLayout>

#include <utility>

namespace lastrivet::ui {

namespace {

/// Narrower than this, the sides stand one below the other.
constexpr int besideFrom = 480;

/// Can be copied.
QLabel *selectable(QWidget *parent)
{
    auto *label = wrappedLabel({}, parent);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

} // namespace

ConflictPanel::ConflictPanel(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_record(selectable(this))
    , m_field(selectable(this))
    , m_sides(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_stands(addSide())
    , m_lost(addSide())
    , m_leftOutHead(heading(tr("What it would have changed"), this))
    , m_leftOut(new AccountModel(this))
    , m_leftOutList(new QListView(this))
    , m_hint(selectable(this))
    , m_keep(new QPushButton(this))
    , m_take(new QPushButton(this))
    , m_go(new QPushButton(tr("Go to the record"), this))
{
    build();
}

ConflictPanel::Side ConflictPanel::addSide()
{
    auto *frame = new QFrame(this);
    frame->setFrameShape(QFrame::StyledPanel);
    const Side side{heading({}, frame), selectable(frame), selectable(frame)};
    side.value->setFont(m_session.theme().font(1));
    side.author->setForegroundRole(QPalette::PlaceholderText);
    auto *layout = new QVBoxLayout(frame);
    layout->setContentsMargins(12, 8, 12, 8);
    side.head->setWordWrap(true);
    frame->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    for (QLabel *label : {side.head, side.value, side.author})
        layout->addWidget(label);
    layout->addStretch(1);
    m_sides->addWidget(frame, 1);
    return side;
}

void ConflictPanel::build()
{
    m_record->setFont(m_session.theme().font(1));
    m_leftOutList->setModel(m_leftOut);
    m_leftOutList->setItemDelegate(new AccountDelegate(m_session.theme(), this));
    m_leftOutList->setAccessibleName(m_leftOutHead->text());
    m_leftOutList->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_leftOutList->setResizeMode(QListView::Adjust);
    m_sides->setSpacing(12);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 0, 0, 0);
    layout->setSpacing(8);
    layout->addWidget(m_record);
    layout->addWidget(m_field);
    layout->addLayout(m_sides);
    layout->addWidget(m_leftOutHead);
    layout->addWidget(m_leftOutList, 1000);
    layout->addWidget(m_hint);
    buildActs(*layout);
    layout->addStretch(1);
}

void ConflictPanel::buildActs(QLayout &layout)
{
    auto *acts = new QWidget(this);
    auto *flow = new Flow(acts);
    for (QPushButton *button : {m_keep, m_take, m_go})
        flow->addWidget(button);
    layout.addWidget(acts);
    connect(m_keep, &QPushButton::clicked, this, &ConflictPanel::keep);
    connect(m_take, &QPushButton::clicked, this, &ConflictPanel::take);
    connect(m_go, &QPushButton::clicked, this, &ConflictPanel::goToRecord);
}

void ConflictPanel::show(const MergeConflict &conflict, std::int64_t seqOfLost)
{
    m_conflict = conflict;
    const auto records = m_session.records();
    m_record->setText(recordIn(*records, conflict));
    const QString field = fieldIn(*records, conflict);
    m_field->setText(field);
    m_field->setVisible(!field.isEmpty());
    showSides();
    showLeftOut(conflict.kind == ConflictKind::SetAside ? seqOfLost : 0);
    showButtons();
}

void ConflictPanel::showSides()
{
    const auto records = m_session.records();
    const auto fill = [&](const Side &side, const QString &head, const QString &value,
                          const MergeConflict::Change &author) {
        side.head->setText(head);
        side.value->setText(value);
        side.author->setText(authorIn(*records, author));
    };
    m_stands.head->parentWidget()->setVisible(m_conflict.kind != ConflictKind::SetAside);
    switch (m_conflict.kind) {
    case ConflictKind::Value:
        fill(m_stands, tr("Came later, and stood after the merge"), keptIn(*records, m_conflict),
             m_conflict.kept_by);
        fill(m_lost, tr("Came earlier, and lost"), lostIn(*records, m_conflict),
             m_conflict.lost_by);
        break;
    case ConflictKind::Existence:
        fill(m_stands, tr("One copy went on with it: it stayed"), tr("is on record"),
             m_conflict.kept_by);
        fill(m_lost, tr("The other copy took it back"), tr("was taken back"), m_conflict.lost_by);
        break;
    case ConflictKind::SetAside:
        fill(m_lost, tr("This change was left out"), reasonIn(m_conflict), m_conflict.lost_by);
        break;
    }
}

void ConflictPanel::showLeftOut(std::int64_t seq)
{
    SomeChanges row;
    try {
        if (seq > 0)
            row = m_session.project().someChangesOf(seq, AccountModel::mostRecords);
    } catch (const Fault &fault) {
        m_session.complain(inWords(fault.message()));
    }
    for (QWidget *part :
         {static_cast<QWidget *>(m_leftOutHead), static_cast<QWidget *>(m_leftOutList)})
        part->setVisible(!row.changes.empty());
    m_leftOut->show(*m_session.records(), row);
}

void ConflictPanel::showButtons()
{
    const bool isOpen = !m_conflict.decision && !m_session.isReadOnly();
    switch (m_conflict.kind) {
    case ConflictKind::Value:
        m_keep->setText(tr("Keep what stands (K)"));
        m_take->setText(tr("Take the other (T)"));
        break;
    case ConflictKind::Existence:
        m_keep->setText(tr("Keep the record (K)"));
        m_take->setText(tr("Withdraw it (T)"));
        break;
    case ConflictKind::SetAside:
        m_keep->setText(tr("Leave it out (K)"));
        m_take->setText(tr("Try it again (T)"));
        break;
    }
    const bool isThere =
        m_session.records()->find(m_conflict.record.type, m_conflict.record.id) != nullptr;
    m_keep->setVisible(isOpen);
    m_take->setVisible(isOpen && m_conflict.canBeTaken);
    m_go->setVisible(isThere);
    setPrimary(*m_go, isOpen && !m_conflict.canBeTaken);
    m_hint->setText(hint());
    m_hint->setVisible(!m_hint->text().isEmpty());
}

QString ConflictPanel::hint() const
{
    if (m_conflict.decision)
        return decisionIn(m_conflict);
    if (m_conflict.kind == ConflictKind::SetAside)
        return tr("What stands against it can be put right, and this tried again. Or write it down "
                  "anew, and leave this out.");
    if (m_conflict.canBeTaken)
        return {};
    return tr("The other value cannot be put here by itself. Where it is the right one, go to the "
              "record and write it there; then keep what stands.");
}

void ConflictPanel::keep()
{
    if (!m_keep->isHidden())
        decide(ConflictDecision::Kept);
}

void ConflictPanel::take()
{
    if (!m_take->isHidden())
        decide(ConflictDecision::Taken);
}

void ConflictPanel::goToRecord()
{
    if (!m_go->isHidden())
        m_session.goTo(m_conflict.record);
}

void ConflictPanel::decide(ConflictDecision decision)
{
    try {
        const auto done = m_session.project().decide(m_conflict.id, decision);
        if (!done) {
            m_session.complain(withNames(nothingChanged(done.reason()), m_conflict.record));
            return;
        }
        Q_EMIT m_session.said(toQt(done->label), true);
    } catch (const Fault &fault) {
        m_session.complain(nothingChanged(fault));
    }
}

void ConflictPanel::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    m_sides->setDirection(width() < besideFrom ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

} // namespace lastrivet::ui
