// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/StarterTree.h"

#include "ui/convert/QtText.h"
#include "ui/widgets/TallRows.h"

#include <QCoreApplication>
#include <QHeaderView>
#include <QTreeWidgetItemIterator>

namespace lastrivet::ui {

namespace {

constexpr int codeRole = Qt::UserRole;

void addParts(QTreeWidgetItem &into, const std::vector<Starter::Part> &parts)
{
    for (const Starter::Part &part : parts) {
        auto *item = new QTreeWidgetItem(&into, {starterText(part.name), toQt(part.code)});
        item->setData(0, codeRole, toQt(part.code));
        item->setFlags(item->flags() | Qt::ItemIsUserCheckable | Qt::ItemIsAutoTristate);
        item->setCheckState(0, Qt::Checked);
        addParts(*item, part.parts);
    }
}

} // namespace

QString starterText(const std::string &text)
{
    const QString words = QCoreApplication::translate("Starter", text.c_str());
    return words == toQt(text) ? QCoreApplication::translate("Message", text.c_str()) : words;
}

StarterTree::StarterTree(QWidget *parent)
    : QTreeWidget(parent)
{
    setAccessibleName(tr("Parts to begin with"));
    setHeaderHidden(true);
    setColumnCount(2);
    setItemDelegate(new TallRows(this));
    header()->setSectionResizeMode(0, QHeaderView::Stretch);
    header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    header()->setStretchLastSection(false);
    connect(this, &QTreeWidget::itemChanged, this, &StarterTree::pruned);
}

void StarterTree::offer(const Starter &starter)
{
    const QSignalBlocker quiet(this);
    clear();
    addParts(*invisibleRootItem(), starter.parts);
    setCurrentItem(topLevelItem(0));
}

std::set<std::string> StarterTree::leftOut() const
{
    std::set<std::string> codes;
    auto *tree = const_cast<StarterTree *>(this);
    for (QTreeWidgetItemIterator item(tree, QTreeWidgetItemIterator::NotChecked); *item; ++item)
        codes.insert(toStd((*item)->data(0, codeRole).toString()));
    return codes;
}

} // namespace lastrivet::ui
