// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/ActForm.h"

#include "ui/widgets/FormRows.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/NumberBox.h"
#include "ui/widgets/PersonBox.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>
#include <vector>

namespace lastrivet::ui {

namespace {

/// Ctrl+Enter does what a form is for.
bool isDone(const QKeyEvent &event)
{
    const bool isEnter = event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
    return isEnter && event.modifiers() & Qt::ControlModifier;
}

} // namespace

ActForm::ActForm(const QString &doWords, QWidget *parent)
    : Unfinished(parent)
    , m_title(new QLabel(this))
    , m_fields(new FormRows)
    , m_hint(new QLabel(this))
    , m_leave(new QPushButton(tr("Cancel"), this))
    , m_do(new QPushButton(doWords, this))
{
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    QFont bold = font();
    bold.setBold(true);
    m_title->setFont(bold);
    m_title->setWordWrap(true);
    m_hint->setWordWrap(true);
    m_hint->hide();
    m_do->setProperty("primary", true);
    m_leave->setProperty("flat", true);
    m_fields->setRowWrapPolicy(QFormLayout::WrapLongRows);
    m_fields->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(m_hint, 1);
    buttons->addStretch(0);
    buttons->addWidget(m_leave);
    buttons->addWidget(m_do);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 12);
    layout->addWidget(m_title);
    layout->addLayout(m_fields);
    layout->addLayout(buttons);
    connect(m_do, &QPushButton::clicked, this, &ActForm::tryToPerform);
    connect(m_leave, &QPushButton::clicked, this, &ActForm::left);
    // First, because a slot of the signal may start the form again.
    connect(this, &ActForm::left, this, &ActForm::noteLeft);
}

void ActForm::setTitle(const QString &title)
{
    m_title->setText(title);
    setAccessibleName(title);
}

void ActForm::setDoWords(const QString &words)
{
    m_do->setText(words);
}

void ActForm::setLeavable(bool isLeavable)
{
    m_leave->setVisible(isLeavable);
}

void ActForm::hint(const QString &sentence)
{
    m_hint->setText(sentence);
    m_hint->setVisible(!sentence.isEmpty());
}

void ActForm::addField(const QString &label, QWidget *field)
{
    m_fields->addRow(label, field);
    field->setAccessibleName(label);
    if (const auto *box = qobject_cast<QComboBox *>(field); box && box->isEditable())
        field->installEventFilter(this);
    if (auto *who = qobject_cast<PersonBox *>(field))
        followNames(*who);
}

void ActForm::followNames(PersonBox &who)
{
    m_who = &who;
    m_newcomer = wrappedLabel({}, this);
    m_fields->addRow(m_newcomer);
    connect(&who, &PersonBox::named, this, &ActForm::tellNewcomer);
    tellNewcomer();
}

void ActForm::tellNewcomer()
{
    const QString words = m_isWhoAsked ? m_who->newcomerWords() : QString();
    m_newcomer->setText(words);
    m_fields->setRowVisible(m_newcomer, !words.isEmpty());
    m_who->setAccessibleDescription(words);
}

void ActForm::setFieldVisible(QWidget *field, bool isVisible)
{
    m_fields->setRowVisible(field, isVisible);
    if (m_who && field == m_who) {
        m_isWhoAsked = isVisible;
        tellNewcomer();
    }
}

void ActForm::addWide(QWidget *widget)
{
    m_fields->addRow(widget);
}

void ActForm::goToTop()
{
    bringIntoSight(*m_title);
}

void ActForm::tryToPerform()
{
    hint({});
    for (NumberBox *box : findChildren<NumberBox *>()) {
        const QString why = box->isVisibleTo(this) ? box->takeRefused() : QString();
        if (!why.isEmpty())
            hint(why);
    }
    if (m_hint->isHidden() && perform())
        Q_EMIT left();
    else if (!m_hint->isHidden())
        bringIntoSight(*m_hint);
}

void ActForm::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT left();
    else if (isDone(*event))
        tryToPerform();
    else
        Unfinished::keyPressEvent(event);
}

/// An editable combo box would take Enter as a confirmation of the name that is chosen in it.
bool ActForm::eventFilter(QObject *watched, QEvent *event)
{
    const bool isDoing =
        event->type() == QEvent::KeyPress && isDone(*static_cast<const QKeyEvent *>(event));
    if (!isDoing || !qobject_cast<QComboBox *>(watched))
        return Unfinished::eventFilter(watched, event);
    tryToPerform();
    return true;
}

void ActForm::showEvent(QShowEvent *event)
{
    putButtonsLast();
    Unfinished::showEvent(event);
}

/// Fields may have been made since it was shown.
bool ActForm::focusNextPrevChild(bool next)
{
    putButtonsLast();
    return Unfinished::focusNextPrevChild(next);
}

/// Behind all rows for a widget that is in none of them.
int ActForm::rowOf(QWidget *field) const
{
    for (QWidget *each = field; each && each != this; each = each->parentWidget()) {
        int row = -1;
        QFormLayout::ItemRole role{};
        m_fields->getWidgetPosition(each, &row, &role);
        if (row >= 0)
            return row;
    }
    return m_fields->rowCount();
}

void ActForm::putButtonsLast()
{
    std::vector<std::pair<int, QWidget *>> rows;
    for (QWidget *each = nextInFocusChain(); each != this; each = each->nextInFocusChain()) {
        const bool isField = each != m_leave && each != m_do && isAncestorOf(each) &&
                             each->focusPolicy() & Qt::TabFocus && !each->focusProxy();
        if (isField)
            rows.emplace_back(rowOf(each), each);
    }
    if (rows.empty())
        return;
    // A list among the fields is filled after those below it were made.
    std::ranges::stable_sort(rows, {}, &std::pair<int, QWidget *>::first);
    rows.emplace_back(0, m_leave);
    rows.emplace_back(0, m_do);
    for (std::size_t i = 1; i < rows.size(); ++i)
        setTabOrder(rows[i - 1].second, rows[i].second);
}

} // namespace lastrivet::ui
