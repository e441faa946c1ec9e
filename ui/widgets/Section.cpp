// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/Section.h"

#include "ui/shell/Theme.h"
#include "ui/widgets/RowListView.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

Section::Section(const Theme &theme, const QString &title, const QString &whenEmpty,
                 QWidget *parent)
    : QWidget(parent)
    , m_titleWords(title)
    , m_title(new QLabel(this))
    , m_empty(new QLabel(whenEmpty, this))
    , m_list(new RowListView(theme, title, this))
    , m_more(new QPushButton(this))
{
    QFont bold = font();
    bold.setBold(true);
    m_title->setFont(bold);
    m_empty->setWordWrap(true);
    m_empty->setForegroundRole(QPalette::PlaceholderText);
    m_more->setProperty("flat", true);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(Theme::space);
    layout->addWidget(m_title);
    layout->addWidget(m_empty);
    layout->addWidget(m_list);
    layout->addWidget(m_more, 0, Qt::AlignLeft);
    connect(m_list, &RowListView::chosen, this, &Section::chosen);
    connect(m_list, &RowListView::acted, this, &Section::acted);
    connect(m_more, &QPushButton::clicked, this, [this] {
        m_isWhole = !m_isWhole;
        showRows();
    });
    showRows();
}

void Section::setRows(std::vector<ListRow> rows)
{
    m_rows = std::move(rows);
    showRows();
}

void Section::showRows()
{
    const auto count = int(m_rows.size());
    const bool isLong = count > m_shortLength;
    const auto shown = isLong && !m_isWhole ? m_shortLength : count;
    m_title->setText(count > 0 ? tr("%1  %2").arg(m_titleWords).arg(count) : m_titleWords);
    m_empty->setVisible(count == 0);
    m_list->setVisible(count > 0);
    m_list->setRows({m_rows.begin(), m_rows.begin() + shown});
    m_more->setVisible(isLong);
    m_more->setText(m_isWhole ? tr("Show fewer") : tr("%1 more").arg(count - shown));
}

} // namespace lastrivet::ui
