// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/Flow.h"

#include <QWidget>

#include <algorithm>
#include <memory>
#include <utility>

namespace lastrivet::ui {

namespace {

constexpr int gap = 8;

} // namespace

Flow::Flow(QWidget *parent)
    : QLayout(parent)
{
    setContentsMargins(0, 0, 0, 0);
}

Flow::~Flow() = default;

void Flow::addItem(QLayoutItem *item)
{
    m_items.emplace_back(item);
}

void Flow::insertWidget(int index, QWidget *widget)
{
    addChildWidget(widget);
    m_items.insert(m_items.begin() + index, std::make_unique<QWidgetItem>(widget));
    invalidate();
}

QLayoutItem *Flow::itemAt(int index) const
{
    return index >= 0 && index < count() ? m_items[std::size_t(index)].get() : nullptr;
}

QLayoutItem *Flow::takeAt(int index)
{
    if (index < 0 || index >= count())
        return nullptr;
    QLayoutItem *item = m_items[std::size_t(index)].release();
    m_items.erase(m_items.begin() + index);
    return item;
}

int Flow::heightForWidth(int width) const
{
    return arrange(QRect(0, 0, width, 0), false);
}

QSize Flow::minimumSize() const
{
    QSize size;
    for (const auto &item : m_items)
        size = size.expandedTo(item->minimumSize());
    return size;
}

void Flow::setGeometry(const QRect &rect)
{
    QLayout::setGeometry(rect);
    arrange(rect, true);
}

int Flow::arrange(const QRect &rect, bool isReal) const
{
    std::vector<std::pair<QLayoutItem *, QRect>> line;
    int x = rect.left();
    int y = rect.top();
    int height = 0;
    const auto placeLine = [&] {
        for (const auto &[item, place] : line)
            item->setGeometry(place.translated(0, (height - place.height()) / 2));
        line.clear();
    };
    for (const auto &item : m_items) {
        if (item->isEmpty())
            continue;
        QSize size = item->sizeHint();
        if (size.width() > rect.width())
            size.setWidth(std::max(rect.width(), item->minimumSize().width()));
        if (x > rect.left() && x + size.width() > rect.right() + 1) {
            placeLine();
            x = rect.left();
            y += height + gap;
            height = 0;
        }
        if (isReal)
            line.emplace_back(item.get(), QRect({x, y}, size));
        x += size.width() + gap;
        height = std::max(height, size.height());
    }
    placeLine();
    return y + height - rect.top();
}

} // namespace lastrivet::ui
