// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/BenchPicture.h"

#include "ui/photos/PictureRefiner.h"
#include "ui/photos/PictureView.h"
#include "ui/shell/Session.h"
#include "ui/widgets/MediaModel.h"

#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

BenchPicture::BenchPicture(Session &session, PictureLoader &loader, QWidget *parent)
    : QWidget(parent)
    , m_picture(new PictureView(session.theme(), this))
    , m_refiner(new PictureRefiner(session, loader, *m_picture, this))
    , m_title(new QLabel(this))
{
    m_picture->setReadOnly(true);
    m_picture->installEventFilter(this);
    m_title->setWordWrap(true);
    auto *back = new QPushButton(tr("Back to the part (Esc)"), this);
    auto *head = new QHBoxLayout;
    head->addWidget(m_title, 1);
    head->addWidget(back);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(head);
    layout->addWidget(m_picture, 1);
    connect(back, &QPushButton::clicked, this, &BenchPicture::left);
    connect(m_picture, &PictureView::left, this, &BenchPicture::left);
    connect(m_picture, &PictureView::stepped, this, &BenchPicture::stepped);
}

void BenchPicture::showPicture(const Media &media)
{
    const QString title = mediaTitle(media);
    m_title->setText(title);
    m_picture->setAccessibleName(title);
    m_picture->marks().show(media.annotations);
    m_refiner->show(media);
    m_picture->setFocus();
}

void BenchPicture::showEvent(QShowEvent *event)
{
    m_shown.start();
    QWidget::showEvent(event);
}

/// The second press of those that opened it twice would show a small part of it.
bool BenchPicture::eventFilter(QObject *watched, QEvent *event)
{
    const bool isSecondPress = event->type() == QEvent::MouseButtonDblClick && m_shown.isValid() &&
                               !m_shown.hasExpired(QApplication::doubleClickInterval());
    return isSecondPress || QWidget::eventFilter(watched, event);
}

} // namespace lastrivet::ui
