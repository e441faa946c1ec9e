// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/JournalFilterBar.h"

#include "core/entry/DayText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/FilterLine.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int dayWidth = 132;

} // namespace

JournalFilterBar::JournalFilterBar(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_words(new FilterLine(this))
    , m_who(new QComboBox(this))
    , m_kind(new QComboBox(this))
    , m_from(new QLineEdit(this))
    , m_until(new QLineEdit(this))
    , m_clear(new QPushButton(tr("Clear"), this))
    , m_wrong(new QLabel(this))
{
    build();
    for (QLineEdit *day : {m_from, m_until})
        connect(day, &QLineEdit::textChanged, this, &JournalFilterBar::sayDays);
    for (QLineEdit *field : {m_words, m_from, m_until})
        connect(field, &QLineEdit::textChanged, this, &JournalFilterBar::changed);
    for (const QComboBox *box : {m_who, m_kind})
        connect(box, &QComboBox::currentIndexChanged, this, &JournalFilterBar::changed);
    connect(m_clear, &QPushButton::clicked, this, &JournalFilterBar::clear);
}

void JournalFilterBar::build()
{
    m_words->setPlaceholderText(tr("Words, or the hash at a paper's foot"));
    m_words->setAccessibleName(tr("Filter by words or by a hash"));
    m_who->setAccessibleName(tr("Filter by person"));
    m_who->addItem(tr("anybody"));
    makeNarrow(*m_who, 16);
    m_kind->setAccessibleName(tr("Filter by kind"));
    m_kind->addItem(tr("every kind"));
    for (std::size_t i = 0; i < Words<ChangeKind>::list.size(); ++i)
        m_kind->addItem(kindTitle(ChangeKind(i)), int(i));
    m_from->setPlaceholderText(tr("from which day"));
    m_from->setAccessibleName(tr("From"));
    m_until->setPlaceholderText(tr("until which day"));
    m_until->setAccessibleName(tr("Until"));
    for (QLineEdit *day : {m_from, m_until})
        day->setFixedWidth(dayWidth);
    m_clear->setProperty("flat", true);
    m_clear->setAccessibleName(tr("Clear the filter"));
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    layout->addWidget(m_words);
    auto *rest = new QWidget(this);
    auto *flow = new Flow(rest);
    for (QWidget *choice :
         std::initializer_list<QWidget *>{m_who, m_kind, m_from, m_until, m_clear})
        flow->addWidget(choice);
    layout->addWidget(rest);
    m_wrong->setWordWrap(true);
    m_wrong->hide();
    layout->addWidget(m_wrong);
}

QString JournalFilterBar::objection() const
{
    for (QLineEdit *field : {m_from, m_until}) {
        if (!field->text().trimmed().isEmpty() && !dayIn(*field))
            return tr("“%1” is no day.").arg(field->text().trimmed());
    }
    return {};
}

void JournalFilterBar::sayDays()
{
    const QString why = objection();
    m_wrong->setText(tr("%1 The list goes on as if nothing stood there.").arg(why));
    m_wrong->setVisible(!why.isEmpty());
}

std::optional<Moment> JournalFilterBar::dayIn(QLineEdit &field) const
{
    const QString text = field.text().trimmed();
    auto day = text.isEmpty() ? std::nullopt : entry::parseDayText(toStd(text), m_session.today());
    if (!day && !text.isEmpty())
        day = parseDay(text);
    field.setToolTip(day              ? dayText(*day)
                     : text.isEmpty() ? QString()
                                      : tr("“%1” is no day.").arg(text));
    return day;
}

JournalFilter JournalFilterBar::filter() const
{
    JournalFilter filter;
    filter.words = m_words->text().trimmed();
    if (m_who->currentIndex() > 0)
        filter.who = m_who->currentText();
    if (m_kind->currentIndex() > 0)
        filter.kind = ChangeKind(m_kind->currentData().toInt());
    filter.from = dayIn(*m_from);
    filter.until = dayIn(*m_until);
    return filter;
}

void JournalFilterBar::clear()
{
    {
        const QSignalBlocker quiet(this);
        for (QLineEdit *field : {m_words, m_from, m_until})
            field->clear();
        for (QComboBox *box : {m_who, m_kind})
            box->setCurrentIndex(0);
    }
    Q_EMIT changed();
}

void JournalFilterBar::focusWords()
{
    m_words->setFocus();
    m_words->selectAll();
}

void JournalFilterBar::offerPeople(const QStringList &people)
{
    const QSignalBlocker quiet(m_who);
    const QString chosen = m_who->currentIndex() > 0 ? m_who->currentText() : QString();
    while (m_who->count() > 1)
        m_who->removeItem(1);
    m_who->addItems(people);
    m_who->setCurrentIndex(std::max(0, chosen.isEmpty() ? 0 : m_who->findText(chosen)));
}

} // namespace lastrivet::ui
