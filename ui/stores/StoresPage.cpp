// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/StoresPage.h"

#include "ui/parts/SectionList.h"
#include "ui/stores/DeliveryBoard.h"
#include "ui/stores/ExpenseBoard.h"
#include "ui/stores/MaterialBoard.h"
#include "ui/stores/ToolBoard.h"
#include "ui/widgets/Flow.h"

#include <QButtonGroup>
#include <QPushButton>
#include <QStackedWidget>
#include <QTreeView>
#include <QVBoxLayout>

#include <initializer_list>

namespace lastrivet::ui {

StoresPage::StoresPage(Session &session, QWidget *parent)
    : Page(session, parent)
    , m_buttons(new QButtonGroup(this))
    , m_bar(buildBar())
    , m_deliveries(new DeliveryBoard(session, this))
    , m_materials(new MaterialBoard(session, this))
    , m_tools(new ToolBoard(session, this))
    , m_expenses(new ExpenseBoard(session, this))
    , m_stack(new QStackedWidget(this))
{
    build();
}

/// Made before the boards that it leads to, so that the Tab key comes to it first.
QWidget *StoresPage::buildBar()
{
    auto *bar = new QWidget(this);
    auto *flow = new Flow(bar);
    const QString titles[] = {tr("Packing lists"), tr("Materials"), tr("Tools"), tr("Expenses")};
    int place = 0;
    for (const QString &title : titles) {
        auto *button = new QPushButton(title, bar);
        button->setCheckable(true);
        m_buttons->addButton(button, place++);
        flow->addWidget(button);
    }
    m_buttons->button(0)->setChecked(true);
    return bar;
}

void StoresPage::build()
{
    // In the order of their buttons.
    for (QWidget *board :
         std::initializer_list<QWidget *>{m_deliveries, m_materials, m_tools, m_expenses})
        m_stack->addWidget(board);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 8);
    layout->setSpacing(8);
    layout->addWidget(m_bar);
    layout->addWidget(m_stack, 1);
    connect(m_buttons, &QButtonGroup::idClicked, m_stack, &QStackedWidget::setCurrentIndex);
    connect(m_stack, &QStackedWidget::currentChanged, this,
            [this](int shown) { m_buttons->button(shown)->setChecked(true); });
}

StoreBoard &StoresPage::boardOf(RecordType type) const
{
    switch (type) {
    case RecordType::MaterialLot:
    case RecordType::MaterialUse:
        return *m_materials;
    case RecordType::Tool:
        return *m_tools;
    case RecordType::Expense:
        return *m_expenses;
    default:
        return *m_deliveries;
    }
}

StoreBoard &StoresPage::shown() const
{
    return *static_cast<StoreBoard *>(m_stack->currentWidget());
}

void StoresPage::showBoard(RecordType type)
{
    m_stack->setCurrentWidget(&boardOf(type));
}

void StoresPage::showRecord(RecordRef record)
{
    if (record.id == 0)
        return;
    showBoard(record.type);
    shown().showRecord(record);
}

void StoresPage::startNew()
{
    shown().list().startNew();
}

QWidget *StoresPage::firstFocus()
{
    return shown().list().firstFocus();
}

void StoresPage::recordsChanged(const ChangeNotice &notice)
{
    for (StoreBoard *board :
         std::initializer_list<StoreBoard *>{m_deliveries, m_materials, m_tools, m_expenses})
        board->apply(notice);
}

void StoresPage::answerChanged()
{
    m_deliveries->applyAnswer();
    m_materials->applyAnswer();
}

/// The marks of the lists are drawn in the colours of the theme.
void StoresPage::themeChanged()
{
    for (StoreBoard *board :
         std::initializer_list<StoreBoard *>{m_deliveries, m_materials, m_tools, m_expenses})
        board->applyAnswer();
}

} // namespace lastrivet::ui
