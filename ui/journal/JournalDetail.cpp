// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/JournalDetail.h"

#include "core/base/Error.h"
#include "ui/convert/QtText.h"
#include "ui/journal/AccountDelegate.h"
#include "ui/journal/AccountModel.h"
#include "ui/journal/JournalModel.h"
#include "ui/journal/ScreenWording.h"
#include "ui/print/JournalWords.h"
#include "ui/shell/Session.h"
#include "ui/widgets/WrappedText.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QVBoxLayout>

#include <utility>

namespace lastrivet::ui {

namespace {

/// A hash can be broken across lines only where there is something to break at.
QString inGroups(const QString &hash)
{
    constexpr qsizetype group = 16;
    QStringList groups;
    for (qsizetype at = 0; at < hash.size(); at += group)
        groups << hash.mid(at, group);
    return groups.join(QLatin1Char(' '));
}

} // namespace

JournalDetail::JournalDetail(Session &session, const JournalModel &model, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_model(model)
    , m_account(new AccountModel(this))
    , m_title(new QLabel(this))
    , m_facts(new QLabel(this))
    , m_takeBack(new QPushButton(tr("Take this back"), this))
    , m_hash(new QLabel(this))
    , m_copy(new QPushButton(tr("Copy the hash"), this))
    , m_list(new QListView(this))
{
    build();
    show(nullptr);
}

void JournalDetail::build()
{
    m_title->setFont(m_session.theme().font(1));
    for (QLabel *label : {m_title, m_facts, m_hash}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    }
    m_hash->setForegroundRole(QPalette::PlaceholderText);
    m_copy->setProperty("flat", true);
    m_takeBack->setToolTip(
        tr("Makes a new change: fields become what they were before this one, and "
           "what it made is withdrawn"));
    m_list->setModel(m_account);
    m_list->setItemDelegate(new AccountDelegate(m_session.theme(), this));
    m_list->setAccessibleName(tr("What was changed"));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setResizeMode(QListView::Adjust);
    auto *foot = new QHBoxLayout;
    foot->addWidget(m_hash, 1);
    foot->addWidget(m_copy, 0, Qt::AlignTop);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 0, 0, 0);
    layout->addWidget(m_title);
    layout->addWidget(m_facts);
    layout->addWidget(m_takeBack, 0, Qt::AlignLeft);
    layout->addWidget(m_list, 1);
    layout->addLayout(foot);
    connect(m_list, &QListView::activated, this,
            [this](const QModelIndex &index) { goToRecord(index.row()); });
    connect(m_list, &QListView::clicked, this,
            [this](const QModelIndex &index) { goToRecord(index.row()); });
    connect(m_takeBack, &QPushButton::clicked, this, &JournalDetail::takeBack);
    connect(m_copy, &QPushButton::clicked, this, &JournalDetail::copyHash);
}

void JournalDetail::show(const JournalEntry *entry)
{
    for (QWidget *part : std::initializer_list<QWidget *>{m_title, m_facts, m_hash, m_copy, m_list})
        part->setVisible(entry != nullptr);
    m_takeBack->setVisible(entry && canBeReversed(entry->kind));
    m_takeBack->setEnabled(!m_session.isReadOnly());
    if (entry)
        fill(*entry);
    else
        m_account->show(*m_session.records(), {});
}

void JournalDetail::fill(const JournalEntry &entry)
{
    const print::Wording words = screenWording();
    QStringList facts{dateText(m_model.timeOf(entry))};
    if (!entry.who.empty())
        facts[0] = tr("%1, %2").arg(toQt(entry.who), facts[0]);
    QStringList marks{print::kindIn(words, entry)};
    marks << m_model.marksOf(entry);
    marks.removeAll(QString());
    if (!marks.isEmpty())
        facts << marks.join(QStringLiteral(" · "));
    if (const QString undone = m_model.undoneBy(entry); !undone.isEmpty())
        facts << (entry.kind == ChangeKind::Redo ? tr("It does again: %1").arg(undone)
                                                 : tr("It takes back: %1").arg(undone));
    if (entry.kind == ChangeKind::Printed)
        facts << tr("The hash below stands at the foot of the pages that were printed.");
    m_seq = entry.seq;
    m_label = toQt(entry.label);
    m_title->setText(breakable(m_label));
    m_facts->setText(facts.join(QLatin1Char('\n')));
    m_hashText = toQt(entry.hash);
    QString hash = tr("Row %1, hash %2").arg(entry.seq).arg(inGroups(m_hashText));
    if (!entry.origin_hash.empty())
        hash += QLatin1Char('\n') +
                tr("in the copy that wrote it %1").arg(inGroups(toQt(entry.origin_hash)));
    m_hash->setText(hash);
    try {
        m_account->show(*m_session.records(), m_session.project().someChangesOf(
                                                  entry.seq, AccountModel::mostRecords, m_about));
    } catch (const Fault &fault) {
        m_account->show(*m_session.records(), {});
        m_session.complain(inWords(fault.message()));
    }
    m_list->scrollToTop();
}

QString JournalDetail::facts() const
{
    return m_facts->text();
}

void JournalDetail::goToRecord(int row)
{
    if (const RecordRef record = m_account->recordAt(row); record.id > 0)
        m_session.goTo(record);
}

void JournalDetail::takeBack()
{
    m_session.reverse(m_seq, m_label);
}

void JournalDetail::copyHash()
{
    QGuiApplication::clipboard()->setText(m_hashText);
    m_session.say(tr("The hash is copied."));
}

} // namespace lastrivet::ui
