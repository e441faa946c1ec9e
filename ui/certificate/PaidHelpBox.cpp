// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/certificate/PaidHelpBox.h"

#include "core/credit/CreditSentences.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/NumberBox.h"

#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

PaidHelpBox::PaidHelpBox(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_assembly(new NumberBox(this))
    , m_fabrication(new NumberBox(this))
    , m_answer(new QLabel(this))
    , m_take(new QPushButton(tr("It will be so: keep these tenths"), this))
{
    build();
}

void PaidHelpBox::build()
{
    auto *heading = new QLabel(tr("What if paid help did some of it?"), this);
    QFont bold = font();
    bold.setBold(true);
    heading->setFont(bold);
    heading->setWordWrap(true);
    m_answer->setWordWrap(true);
    m_take->setProperty("flat", true);
    auto *form = new QFormLayout;
    form->addRow(tr("Tenths of the assembly"), m_assembly);
    form->addRow(tr("Tenths of the fabrication"), m_fabrication);
    for (NumberBox *box : {m_assembly, m_fabrication}) {
        box->setAccessibleName(static_cast<QLabel *>(form->labelForField(box))->text());
        box->findChild<QLineEdit *>()->setAccessibleName(box->accessibleName());
        box->setButtonSymbols(QAbstractSpinBox::NoButtons);
        box->setFixedWidth(56);
        connect(box, &NumberBox::valueChanged, this, &PaidHelpBox::ask);
        // What cannot stand there changes no value, and the answer would be to the one before.
        connect(box->findChild<QLineEdit *>(), &QLineEdit::textEdited, this, &PaidHelpBox::ask);
        connect(box, &NumberBox::editingFinished, this, &PaidHelpBox::ask);
        connect(box, &NumberBox::refused, &m_session,
                qOverload<const QString &>(&Session::complain));
    }
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(heading);
    layout->addLayout(form);
    layout->addWidget(m_answer);
    layout->addWidget(m_take, 0, Qt::AlignLeft);
    connect(m_take, &QPushButton::clicked, this, &PaidHelpBox::wanted);
}

void PaidHelpBox::show(Id<CreditTask> id)
{
    const bool isOther = id != m_task;
    m_task = id;
    const auto records = m_session.records();
    const CreditTask *task = records->findLive(id);
    setVisible(task && !task->not_applicable &&
               task->assembly_tenths + task->fabrication_tenths > 0);
    if (!task)
        return;
    m_assembly->setRange(0, int(task->assembly_tenths));
    m_fabrication->setRange(0, int(task->fabrication_tenths));
    if (isOther)
        clear();
    ask();
}

void PaidHelpBox::clear()
{
    m_assembly->setValue(0);
    m_fabrication->setValue(0);
}

credit::PaidHelp PaidHelpBox::help() const
{
    return {m_assembly->value(), m_fabrication->value()};
}

credit::Tenths PaidHelpBox::tenths() const
{
    const auto records = m_session.records();
    const CreditTask *task = records->findLive(m_task);
    return task ? credit::withHelp(*task, help()) : credit::Tenths{};
}

QString PaidHelpBox::answer() const
{
    return m_answer->text();
}

/// How the account would stand.
QString PaidHelpBox::outlook(const CreditTask &task) const
{
    const auto now = credit::account(*m_session.records(), m_session.project().profile());
    QStringList sentences;
    for (const Message &sentence : credit::verdict(credit::ifPaid(now, task, help())))
        sentences << inWords(sentence);
    return tr("Then: %1").arg(sentences.join(QLatin1Char(' ')));
}

/// What may still be paid for; in a form of two columns no sum of tenths says that.
QString PaidHelpBox::room() const
{
    const auto account = credit::account(*m_session.records(), m_session.project().profile());
    if (account.two_columns)
        return {};
    const auto spare = credit::tenthsToSpare(account);
    return spare ? tr("Of all tasks together, %n tenths can still be paid for before the builder's "
                      "share is no longer more than half.",
                      nullptr, int(*spare))
                 : tr("The builder's share is not more than half as it is.");
}

void PaidHelpBox::ask()
{
    const auto records = m_session.records();
    const CreditTask *task = records->findLive(m_task);
    if (!task)
        return;
    const bool mayStand = m_assembly->hasAcceptableInput() && m_fabrication->hasAcceptableInput();
    const bool isAsked = mayStand && m_assembly->value() + m_fabrication->value() > 0;
    m_take->setVisible(isAsked);
    m_take->setEnabled(!m_session.isReadOnly());
    if (mayStand)
        m_answer->setText(isAsked ? outlook(*task) : room());
    else
        m_answer->clear();
    m_answer->setVisible(!m_answer->text().isEmpty());
}

} // namespace lastrivet::ui
