// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/Layouts.h"

#include <QComboBox>
#include <QLabel>
#include <QLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QStyle>
#include <QTimer>
#include <QWidget>

#include <cstddef>

namespace lastrivet::ui {

namespace {

/// The Tab key stops at what a box passes the keyboard on to, and not at the box.
bool isStop(const QWidget &widget)
{
    return (widget.focusPolicy() & Qt::TabFocus) && !widget.focusProxy();
}

} // namespace

void clearLayout(QLayout &layout)
{
    while (QLayoutItem *item = layout.takeAt(0)) {
        if (QLayout *inner = item->layout())
            clearLayout(*inner);
        if (QWidget *widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
}

QLabel *heading(const QString &words, QWidget *parent)
{
    auto *label = new QLabel(words, parent);
    QFont bold = label->font();
    bold.setBold(true);
    label->setFont(bold);
    return label;
}

QLabel *wrappedLabel(const QString &words, QWidget *parent)
{
    auto *label = new QLabel(words, parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

QScrollArea *scrollArea(QWidget &content, QWidget *parent)
{
    auto *area = new QScrollArea(parent);
    area->setWidget(&content);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    return area;
}

void bringIntoSight(QWidget &part)
{
    QTimer::singleShot(0, &part, [&part] {
        for (QWidget *above = part.parentWidget(); above; above = above->parentWidget()) {
            if (auto *area = qobject_cast<QScrollArea *>(above)) {
                area->ensureWidgetVisible(&part);
                return;
            }
        }
    });
}

void setTabOrderOf(const std::vector<QWidget *> &places)
{
    std::vector<QWidget *> stops;
    for (QWidget *place : places) {
        if (isStop(*place))
            stops.push_back(place);
        for (QWidget *each = place->nextInFocusChain(); each != place;
             each = each->nextInFocusChain()) {
            if (isStop(*each) && place->isAncestorOf(each))
                stops.push_back(each);
        }
    }
    for (std::size_t i = 1; i < stops.size(); ++i)
        QWidget::setTabOrder(stops[i - 1], stops[i]);
}

void makeNarrow(QComboBox &box, int letters)
{
    box.setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box.setMinimumContentsLength(letters);
}

QPushButton *flatButton(const QString &words, QWidget *parent)
{
    auto *button = new QPushButton(words, parent);
    button->setProperty("flat", true);
    return button;
}

void setPrimary(QPushButton &button, bool isPrimary)
{
    if (button.property("primary").toBool() == isPrimary)
        return;
    button.setProperty("primary", isPrimary);
    button.style()->unpolish(&button);
    button.style()->polish(&button);
}

} // namespace lastrivet::ui
