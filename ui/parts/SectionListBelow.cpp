// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionActsBar.h"
#include "ui/parts/SectionAside.h"
#include "ui/parts/SectionList.h"
#include "ui/parts/StepMoves.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RowMenu.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QMenu>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTreeView>

// Below the list: the fields of the chosen record and what stands beside them; and the section's
// keys.
namespace lastrivet::ui {

/// The fields of the chosen record, and beside them what follows from them.
QWidget *SectionList::buildLower()
{
    m_asideArea->setWidgetResizable(true);
    m_asideArea->setFocusPolicy(Qt::NoFocus);
    m_asideArea->setFrameShape(QFrame::NoFrame);
    m_asideArea->setWidget(m_asides);
    auto *layout = new QHBoxLayout(m_lower);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_formArea, 6);
    layout->addWidget(m_asideArea, 5);
    return m_lower;
}

RecordForm *SectionList::form()
{
    if (!m_section->form)
        return nullptr;
    RecordForm *&form = m_formOf[m_section];
    if (!form) {
        form = new RecordForm(m_session, m_section->type, m_section->form(), m_forms);
        if (m_section->check)
            form->setCheck(m_section->check);
        if (m_section->follow)
            form->setFollow(m_section->follow);
        m_forms->addWidget(form);
    }
    return form;
}

SectionAside *SectionList::aside()
{
    if (!m_section->aside)
        return nullptr;
    SectionAside *&aside = m_asideOf[m_section];
    if (!aside) {
        aside = m_section->aside(m_session, m_asides);
        m_asides->addWidget(aside);
    }
    return aside;
}

/// "F fitted · T torqued · S sealed"
QString SectionList::keyWords() const
{
    QStringList words;
    const QStringList keys = ownKeys();
    for (qsizetype i = 0; i + 1 < keys.size(); i += 2)
        words << QStringLiteral("%1 %2").arg(keys[i], keys[i + 1]);
    return words.join(QStringLiteral(" · "));
}

QStringList SectionList::ownKeys() const
{
    QStringList keys;
    if (!m_section->keys || m_session.isReadOnly())
        return keys;
    for (const SectionKey &key : m_section->keys())
        keys << QKeySequence(key.key).toString(QKeySequence::NativeText)
             << QCoreApplication::translate("Section", key.title);
    return keys;
}

void SectionList::buildMenu()
{
    auto *menu = new RowMenu(*m_view);
    menu->addBar(*m_acts);
    menu->addMore([this](QMenu &open) { offerKeys(open); });
}

/// What keys do with all that is chosen.
void SectionList::offerKeys(QMenu &menu)
{
    if (m_session.isReadOnly())
        return;
    if (m_section->keys) {
        for (const SectionKey &key : m_section->keys())
            RowMenu::addLine(menu, QCoreApplication::translate("Section", key.title),
                             QKeySequence(key.key), true, [this, key] { runKey(key.key); });
    }
    if (m_section->type == RecordType::Step) {
        const auto records = m_session.records();
        RowMenu::addLine(menu, tr("Move up"), QKeySequence(Qt::ALT | Qt::Key_Up),
                         canMoveByKey(*records, chosen(), -1), [this] { moveUp(); });
        RowMenu::addLine(menu, tr("Move down"), QKeySequence(Qt::ALT | Qt::Key_Down),
                         canMoveByKey(*records, chosen(), 1), [this] { moveDown(); });
    }
    RowMenu::addLine(menu, tr("Withdraw what is chosen"), QKeySequence::Delete, true,
                     [this] { withdrawChosen(); });
}

bool SectionList::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == m_view->viewport() && event->type() == QEvent::Resize)
        fitWideColumn();
    if (watched != m_view || event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const auto *key = static_cast<QKeyEvent *>(event);
    return key->modifiers() == Qt::NoModifier && runKey(key->key());
}

/// One of the section's own keys, on all that is chosen; false when it has no such key.
bool SectionList::runKey(int key)
{
    if (!m_section->keys || m_session.isReadOnly())
        return false;
    for (const SectionKey &known : m_section->keys()) {
        if (known.key != key)
            continue;
        std::vector<std::int64_t> ids;
        for (const RecordRef &record : chosen())
            ids.push_back(record.id);
        if (!ids.empty())
            known.run(m_session, m_ask, ids);
        return true;
    }
    return false;
}

} // namespace lastrivet::ui
