// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/Section.h"

#include "ui/shell/Theme.h"
#include "ui/widgets/RowListView.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

Section::Section(const Theme &theme, const QString &title, const QString &whenEmpty,
                 QWidget *parent)
    : QWidget(parent)
    , m_titleWords(title)
    , m_title(new QLabel(this))
    , m_empty(new QLabel(whenEmpty, this))
    , m_list(new RowListView(theme, title, this))
    , m_more(new QPushButton(this))
    , m_rest(new QLabel(this))
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
    m_rest->setForegroundRole(QPalette::PlaceholderText);
    layout->addWidget(m_rest);
    connect(m_list, &RowListView::chosen, this, &Section::chosen);
    connect(m_list, &RowListView::acted, this, &Section::acted);
    connect(m_more, &QPushButton::clicked, this, [this] {
        m_isWhole = !m_isWhole;
        showRows();
    });
    showRows();
}

void Section::setRows(std::vector<ListRow> rows, std::optional<std::size_t> total)
{
    m_rows = std::move(rows);
    m_total = std::max(total.value_or(0), m_rows.size());
    showRows();
}

void Section::setWhenEmpty(const QString &sentence)
{
    m_empty->setText(sentence);
}

void Section::showRows()
{
    const auto count = int(m_rows.size());
    const bool isLong = count > m_shortLength;
    const auto shown = isLong && !m_isWhole ? m_shortLength : count;
    const auto total = int(m_total);
    m_title->setText(count > 0 ? tr("%1  %L2").arg(m_titleWords).arg(total) : m_titleWords);
    m_empty->setVisible(count == 0);
    m_list->setVisible(count > 0);
    m_list->setRows({m_rows.begin(), m_rows.begin() + shown});
    m_more->setVisible(isLong);
    m_more->setText(m_isWhole ? tr("Show fewer") : tr("%L1 more").arg(total - shown));
    m_rest->setVisible(m_isWhole && total > count);
    m_rest->setText(tr("%n more are not listed here.", nullptr, total - count));
}

} // namespace lastrivet::ui
