// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/CheckPanel.h"

#include "core/project/acts/ClosingUp.h"
#include "ui/closings/CheckListModel.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

CheckPanel::CheckPanel(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_model(new CheckListModel(this))
    , m_title(heading({}, this))
    , m_list(new QListView(this))
    , m_tickAll(new QPushButton(this))
    , m_notApplicable(new QPushButton(tr("Not applicable"), this))
{
    build();
    connect(m_model, &CheckListModel::tickWanted, this, &CheckPanel::tick);
    connect(m_tickAll, &QPushButton::clicked, this, &CheckPanel::tickAllButChosen);
    connect(m_notApplicable, &QPushButton::clicked, this, &CheckPanel::toggleNotApplicable);
    connect(m_list->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            &CheckPanel::updateWords);
}

void CheckPanel::build()
{
    m_list->setModel(m_model);
    m_list->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_list->setWordWrap(true);
    m_list->setProperty("checkLines", true);
    m_list->setAccessibleName(tr("Inspector's list"));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setResizeMode(QListView::Adjust);
    m_tickAll->setProperty("flat", true);
    m_notApplicable->setProperty("flat", true);
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(m_tickAll);
    buttons->addWidget(m_notApplicable);
    buttons->addStretch(1);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_title);
    layout->addWidget(m_list, 1);
    layout->addLayout(buttons);
}

void CheckPanel::show(Id<Closing> closing)
{
    m_model->show(m_session.records(), closing);
    setVisible(m_model->rowCount() > 0);
    updateWords();
}

std::vector<int> CheckPanel::chosenRows() const
{
    std::vector<int> rows;
    for (const QModelIndex &index : m_list->selectionModel()->selectedIndexes())
        rows.push_back(index.row());
    return rows;
}

void CheckPanel::updateWords()
{
    m_title->setText(
        tr("Inspector's list  %1 of %2").arg(m_model->tickedCount()).arg(m_model->rowCount()));
    const auto chosen = chosenRows().size();
    m_tickAll->setText(chosen == 0 ? tr("Tick all that are left")
                                   : tr("Tick all but the %1 chosen").arg(chosen));
    m_tickAll->setEnabled(!m_session.isReadOnly() && !m_model->unticked(chosenRows()).empty());
    m_notApplicable->setEnabled(!m_session.isReadOnly() && chosen > 0);
}

void CheckPanel::tick(Id<Check> id, bool isTicked)
{
    const auto records = m_session.records();
    const QString item = listLine(records->find(id)->item);
    m_session.change((isTicked ? tr("Ticked: %1") : tr("Tick taken away: %1")).arg(item),
                     [&](Edit &edit) {
                         if (isTicked)
                             acts::tick(edit, {id}, records->project.builder_id, edit.today());
                         else
                             acts::untick(edit, id);
                     });
}

void CheckPanel::tickAllButChosen()
{
    const auto lines = m_model->unticked(chosenRows());
    const auto builder = m_session.records()->project.builder_id;
    m_session.change(tr("%n lines ticked", nullptr, int(lines.size())),
                     [&](Edit &edit) { acts::tick(edit, lines, builder, edit.today()); });
}

void CheckPanel::toggleNotApplicable()
{
    std::vector<Id<Check>> lines;
    bool isAnyApplicable = false;
    for (const int row : chosenRows()) {
        lines.push_back(m_model->check(row).id);
        isAnyApplicable |= !m_model->check(row).not_applicable;
    }
    const int count = int(lines.size());
    m_session.change(isAnyApplicable ? tr("%n lines are not applicable", nullptr, count)
                                     : tr("%n lines are applicable again", nullptr, count),
                     [&](Edit &edit) {
                         for (const auto line : lines)
                             acts::setNotApplicable(edit, line, isAnyApplicable);
                     });
}

} // namespace lastrivet::ui
