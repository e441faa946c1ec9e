// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/TroubleList.h"

#include "ui/widgets/Layouts.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int mostLines = 5;

} // namespace

TroubleList::TroubleList(QWidget *parent)
    : QFrame(parent)
    , m_heading(new QLabel(this))
    , m_list(new QListWidget(this))
{
    auto *dismiss = flatButton(tr("Dismiss"), this);
    m_list->setAccessibleName(tr("Not taken in"));
    m_list->setWordWrap(true);
    m_list->setTextElideMode(Qt::ElideNone);
    auto *top = new QHBoxLayout;
    top->addWidget(m_heading, 1);
    top->addWidget(dismiss);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(top);
    layout->addWidget(m_list);
    connect(dismiss, &QPushButton::clicked, this, &QWidget::hide);
    hide();
}

void TroubleList::tell(const QStringList &sentences)
{
    m_list->clear();
    m_list->addItems(sentences);
    m_heading->setText(tr("Not taken in:"));
    const int lines = std::min(int(sentences.size()), mostLines);
    m_list->setFixedHeight(lines * (m_list->sizeHintForRow(0) + 2) + 6);
    setVisible(sentences.size() > 1);
}

} // namespace lastrivet::ui
