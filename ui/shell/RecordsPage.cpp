// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/RecordsPage.h"

#include "ui/convert/FieldText.h"
#include "ui/shell/RecordTableModel.h"
#include "ui/widgets/Density.h"
#include "ui/widgets/EmptyPlace.h"
#include "ui/widgets/Flow.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int widestColumn = 220;

} // namespace

RecordsPage::RecordsPage(Session &session, std::vector<RecordType> types, QWidget *parent)
    : Page(session, parent)
    , m_types(std::move(types))
    , m_type(m_types.front())
    , m_buttons(new QButtonGroup(this))
    , m_count(new QLabel(this))
    , m_stack(new QStackedWidget(this))
    , m_table(new QTableView(this))
    , m_empty(new EmptyPlace({}, this))
    , m_model(new RecordTableModel(session.records(), m_type, this))
{
    build();
    choose(m_type);
}

void RecordsPage::build()
{
    auto *bar = new QWidget(this);
    auto *flow = new Flow(bar);
    for (const RecordType type : m_types) {
        auto *button = new QPushButton(recordsTitle(type), bar);
        button->setCheckable(true);
        m_buttons->addButton(button, int(type));
        flow->addWidget(button);
    }
    auto *choices = new QHBoxLayout;
    choices->addWidget(bar, 1);
    choices->addWidget(m_count, 0, Qt::AlignTop);
    m_table->setModel(m_model);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setShowGrid(false);
    m_table->setTabKeyNavigation(false);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setDefaultSectionSize(rowHeight());
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_stack->addWidget(m_table);
    m_stack->addWidget(m_empty);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 8);
    layout->addLayout(choices);
    layout->addWidget(m_stack, 1);
    connect(m_buttons, &QButtonGroup::idClicked, this,
            [this](int type) { choose(RecordType(type)); });
}

void RecordsPage::choose(RecordType type)
{
    m_type = type;
    m_buttons->button(int(type))->setChecked(true);
    m_model->setType(type);
    m_table->setAccessibleName(recordsTitle(type));
    hideEmptyColumns();
    fitColumns();
    updateWords();
}

void RecordsPage::hideEmptyColumns()
{
    for (int column = 0; column < m_model->columnCount(); ++column)
        m_table->setColumnHidden(column, m_model->isColumnEmpty(column));
}

void RecordsPage::fitColumns()
{
    m_table->resizeColumnsToContents();
    for (int column = 0; column < m_model->columnCount(); ++column)
        m_table->setColumnWidth(column, std::min(m_table->columnWidth(column), widestColumn));
}

void RecordsPage::updateWords()
{
    const int count = m_model->rowCount();
    m_stack->setCurrentWidget(count > 0 ? static_cast<QWidget *>(m_table) : m_empty);
    m_count->setText(tr("%n on record", nullptr, count));
    m_empty->setSentence(
        tr("%1: none on record. They can be brought in from a file with File, Import.")
            .arg(recordsTitle(m_type)));
}

void RecordsPage::showRecord(RecordRef record)
{
    if (std::ranges::find(m_types, record.type) == m_types.end())
        return;
    choose(record.type);
    const int row = m_model->rowOf(record.id);
    if (row < 0)
        return;
    m_table->selectRow(row);
    m_table->scrollTo(m_model->index(row, 0), QAbstractItemView::PositionAtCenter);
}

QWidget *RecordsPage::firstFocus()
{
    return m_table;
}

void RecordsPage::recordsChanged(const ChangeNotice &notice)
{
    m_model->apply(notice);
    hideEmptyColumns();
    updateWords();
}

} // namespace lastrivet::ui
