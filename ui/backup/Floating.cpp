// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/backup/Floating.h"

#include "ui/widgets/ActForm.h"

#include <QLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int widest = 640;

} // namespace

void fitHeight(ActForm &form)
{
    // Lines that wrap need more room than the layout's own wish, which knows no width.
    if (form.layout())
        form.layout()->activate();
    form.resize(form.width(),
                std::max(form.sizeHint().height(), form.heightForWidth(form.width())));
}

void placeOver(ActForm &form)
{
    const QWidget *window = form.parentWidget();
    if (!window)
        return;
    form.setFixedWidth(std::min(widest, window->width() - 32));
    fitHeight(form);
    form.move((window->width() - form.width()) / 2,
              std::max(8, std::min(48, window->height() - form.height() - 8)));
}

void floatOver(ActForm &form, QWidget &first)
{
    QWidget *before = form.window()->focusWidget();
    if (before && form.isHidden())
        QObject::connect(&form, &ActForm::left, before, qOverload<>(&QWidget::setFocus),
                         Qt::SingleShotConnection);
    form.show();
    form.raise();
    placeOver(form);
    first.setFocus();
}

} // namespace lastrivet::ui
