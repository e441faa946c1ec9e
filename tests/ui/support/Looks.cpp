// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/Looks.h"

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QAccessible>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QSet>
#include <QTest>
#include <QWidget>

namespace lastrivet::test {

namespace {

QString nameOf(const QWidget &widget)
{
    const QWidget *parent = widget.parentWidget();
    return QStringLiteral("%1 “%2” in %3")
        .arg(QLatin1String(widget.metaObject()->className()), widget.accessibleName(),
             parent ? QLatin1String(parent->metaObject()->className()) : QLatin1String("nothing"));
}

/// Rows and cells are as many as the records; their names are their texts.
bool isContent(QAccessible::Role role)
{
    return role == QAccessible::Cell || role == QAccessible::ListItem ||
           role == QAccessible::TreeItem || role == QAccessible::RowHeader ||
           role == QAccessible::ColumnHeader || role == QAccessible::MenuItem ||
           role == QAccessible::ScrollBar;
}

void walk(QAccessibleInterface &interface, QStringList &found)
{
    const auto state = interface.state();
    if (isContent(interface.role()) || state.invisible)
        return;
    const auto *widget = qobject_cast<QWidget *>(interface.object());
    // Qt makes parts of its own widgets focusable by a click; a person cannot tabulate there.
    // The line of a combo box is read with the name of its box.
    const bool isOwn = widget && !qobject_cast<QComboBox *>(widget->parentWidget());
    const bool isReached = isOwn && widget->isVisible() && widget->focusPolicy() & Qt::TabFocus;
    if (isReached && state.focusable && interface.text(QAccessible::Name).isEmpty())
        found << nameOf(*widget);
    for (int i = 0; i < interface.childCount(); ++i) {
        if (auto *child = interface.child(i))
            walk(*child, found);
    }
}

bool isWrapping(const QWidget &widget)
{
    const auto *label = qobject_cast<const QLabel *>(&widget);
    return label && label->wordWrap();
}

/// Whether what lies in it is moved about behind it, as by a scroll bar.
bool isScrolled(const QWidget &widget)
{
    const auto *area = qobject_cast<const QAbstractScrollArea *>(widget.parentWidget());
    return area && area->viewport() == &widget;
}

QString textOf(const QWidget &widget)
{
    if (const auto *label = qobject_cast<const QLabel *>(&widget))
        return label->text();
    const auto *button = qobject_cast<const QAbstractButton *>(&widget);
    return button ? button->text() : QString();
}

bool isOnTour(const QWidget &widget)
{
    return widget.isVisible() && widget.isEnabled() && widget.focusPolicy() & Qt::TabFocus &&
           !widget.focusProxy();
}

} // namespace

QStringList nameless(QWidget &place)
{
    QStringList found;
    if (auto *interface = QAccessible::queryAccessibleInterface(&place))
        walk(*interface, found);
    return found;
}

QStringList cutTexts(QWidget &place)
{
    QStringList found;
    for (const QWidget *widget : place.findChildren<QWidget *>()) {
        const QString text = textOf(*widget);
        if (text.isEmpty() || !widget->isVisible())
            continue;
        const bool isNarrow = !isWrapping(*widget) && widget->width() < widget->sizeHint().width();
        const int height = isWrapping(*widget) ? widget->heightForWidth(widget->width())
                                               : widget->sizeHint().height();
        if (isNarrow || widget->height() < height)
            found << QStringLiteral("%1: “%2” (%3 × %4 of %5 × %6)")
                         .arg(nameOf(*widget), text.left(60))
                         .arg(widget->width())
                         .arg(widget->height())
                         .arg(widget->sizeHint().width())
                         .arg(height);
    }
    return found;
}

QStringList outsideTheirPlace(QWidget &place)
{
    QStringList found;
    for (const QWidget *widget : place.findChildren<QWidget *>()) {
        const QWidget *around = widget->parentWidget();
        if (!widget->isVisible() || widget->isWindow() || widget->size().isEmpty() ||
            isScrolled(*around))
            continue;
        const QRect its = widget->geometry();
        if (!around->rect().contains(its))
            found << QStringLiteral("%1: %2 × %3 at %4, %5 in %6 × %7")
                         .arg(nameOf(*widget))
                         .arg(its.width())
                         .arg(its.height())
                         .arg(its.x())
                         .arg(its.y())
                         .arg(around->width())
                         .arg(around->height());
    }
    return found;
}

QStringList beyondTheTabulator(QWidget &place)
{
    QSet<QWidget *> left;
    for (QWidget *widget : place.findChildren<QWidget *>()) {
        if (isOnTour(*widget))
            left.insert(widget);
    }
    QStringList found;
    // The rail and the bars of the window are on the way, too.
    for (qsizetype steps = 3 * left.size() + 60; steps > 0 && !left.isEmpty(); --steps) {
        QWidget *before = QApplication::focusWidget();
        if (!before)
            break;
        left.remove(before);
        QTest::keyClick(before, Qt::Key_Tab);
        if (QApplication::focusWidget() == before) {
            found << QStringLiteral("trapped in ") + nameOf(*before);
            break;
        }
    }
    for (QWidget *widget : left) {
        // Of radio buttons and of a group of checkable buttons one is a stop.
        const auto *button = qobject_cast<QAbstractButton *>(widget);
        if (isOnTour(*widget) && !(button && button->group()))
            found << QStringLiteral("not reached: ") + nameOf(*widget);
    }
    return found;
}

QString LongWords::translate(const char *, const char *source, const char *, int n) const
{
    QString text = QString::fromUtf8(source);
    if (n >= 0)
        text.replace(QStringLiteral("%n"), QString::number(n));
    qsizetype letters = 0;
    for (const QChar letter : text)
        letters += letter.isLetter() ? 1 : 0;
    // Formats of numbers and single letters do not grow.
    if (letters < 3)
        return text;
    const qsizetype more = std::max<qsizetype>(2, letters / 3);
    return text + (letters > 12 ? QStringLiteral(" ") : QString()) +
           QString(more, QLatin1Char('n'));
}

} // namespace lastrivet::test
