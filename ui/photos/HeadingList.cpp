// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/HeadingList.h"

#include "ui/convert/NumberText.h"
#include "ui/widgets/TallRows.h"

#include <QSignalBlocker>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int narrowest = 150;
constexpr int widest = 260;

} // namespace

HeadingList::HeadingList(QWidget *parent)
    : QListWidget(parent)
{
    setItemDelegate(new TallRows(this));
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setUniformItemSizes(true);
    setTextElideMode(Qt::ElideMiddle);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
    connect(this, &QListWidget::currentRowChanged, this, &HeadingList::wanted);
    connect(this, &QListWidget::itemClicked, this,
            [this](QListWidgetItem *item) { Q_EMIT wanted(row(item)); });
}

void HeadingList::setSections(const std::vector<PhotoListModel::Section> &sections)
{
    const QSignalBlocker quiet(this);
    const int shown = currentRow();
    clear();
    for (const PhotoListModel::Section &section : sections) {
        auto *item = new QListWidgetItem(
            tr("%1 (%2)").arg(section.title, countText(std::int64_t(section.count))), this);
        item->setToolTip(section.within.isEmpty()
                             ? section.title
                             : QStringLiteral("%1, %2").arg(section.title, section.within));
    }
    setCurrentRow(std::clamp(shown, 0, std::max(0, count() - 1)));
    setVisible(count() > 1);
    // Names of months are long in some languages, names of parts in all.
    setMinimumWidth(sizeHint().width());
}

void HeadingList::follow(int section)
{
    const QSignalBlocker quiet(this);
    setCurrentRow(section);
}

QSize HeadingList::sizeHint() const
{
    const int text = sizeHintForColumn(0) + 2 * frameWidth() + 28;
    return {std::clamp(text, narrowest, widest), 200};
}

} // namespace lastrivet::ui
