// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/StateColumn.h"

#include "ui/shell/Theme.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RowListView.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int shortLength = 25;

} // namespace

StateColumn::StateColumn(const Theme &theme, std::optional<readiness::State> state, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_state(state)
    , m_mark(new QLabel(this))
    , m_count(heading({}, this))
    , m_words(new QLabel(this))
    , m_list(new RowListView(
          theme, stateWords(state.value_or(readiness::State::Hold), state.has_value()), this))
    , m_more(new QPushButton(this))
{
    m_words->setWordWrap(true);
    m_words->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_words->setText(stateWords(state.value_or(readiness::State::Hold), state.has_value()));
    m_list->setTitleLines(3);
    auto *head = new QHBoxLayout;
    head->setSpacing(6);
    head->addWidget(m_mark);
    head->addWidget(m_count, 1);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(Theme::space);
    layout->addLayout(head);
    layout->addWidget(m_words);
    layout->addWidget(m_list);
    layout->addWidget(m_more, 0, Qt::AlignLeft);
    layout->addStretch(1);
    connect(m_list, &RowListView::chosen, this, &StateColumn::chosen);
    m_more->setProperty("flat", true);
    connect(m_more, &QPushButton::clicked, this, [this] {
        m_isWhole = !m_isWhole;
        showRows();
    });
    setTheme();
}

void StateColumn::setTheme()
{
    const Colours &colours = m_theme.colours();
    const auto state = m_state.value_or(readiness::State::Hold);
    m_mark->setPixmap(m_theme
                          .icon(stateIcon(state, m_state.has_value()),
                                m_state ? colours.state(state) : colours.notBegun)
                          .pixmap(QSize(20, 20), devicePixelRatioF()));
}

void StateColumn::setRows(std::vector<ListRow> rows)
{
    m_rows = std::move(rows);
    m_count->setText(QLocale().toString(qulonglong(m_rows.size())));
    showRows();
    setVisible(!m_rows.empty());
}

void StateColumn::showRows()
{
    const auto shown = m_isWhole ? count() : std::min(count(), shortLength);
    m_list->setRows({m_rows.begin(), m_rows.begin() + shown});
    m_more->setVisible(count() > shortLength);
    m_more->setText(m_isWhole ? tr("Show fewer") : tr("%1 more").arg(count() - shown));
}

int StateColumn::headHeight() const
{
    return m_words->heightForWidth(m_words->width());
}

void StateColumn::setHeadHeight(int height)
{
    m_words->setMinimumHeight(height);
}

} // namespace lastrivet::ui
