// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotoViewer.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/MediaModel.h"
#include "ui/widgets/PictureLoader.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

PhotoViewer::PhotoViewer(Session &session, PictureLoader &loader, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_loader(loader)
    , m_words(new QLabel(this))
{
    setFocusPolicy(Qt::StrongFocus);
    auto *back = new QPushButton(tr("Back to all"), this);
    auto *before = new QPushButton(tr("Earlier in the list"), this);
    auto *next = new QPushButton(tr("Later in the list"), this);
    m_words->setWordWrap(true);
    auto *line = new QHBoxLayout;
    line->addWidget(back);
    line->addWidget(m_words, 1);
    line->addWidget(before);
    line->addWidget(next);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addStretch(1);
    layout->addLayout(line);
    for (QPushButton *button : {back, before, next})
        button->setFocusPolicy(Qt::NoFocus);
    connect(back, &QPushButton::clicked, this, &PhotoViewer::left);
    connect(before, &QPushButton::clicked, this, [this] { Q_EMIT stepped(-1); });
    connect(next, &QPushButton::clicked, this, [this] { Q_EMIT stepped(1); });
}

void PhotoViewer::show(const Media &media)
{
    m_media = media.id;
    m_picture = m_loader.small(media);
    m_failure.clear();
    const auto day = dayOf(media);
    m_words->setText(QStringLiteral("%1   %2").arg(mediaTitle(media),
                                                   day ? dateText(*day) : QString()));
    setAccessibleName(m_words->text());
    update();
    m_loader.large(media, this, [this, id = media.id](const QImage &image, const QString &why) {
        if (id != m_media)
            return;
        m_failure = why;
        if (!image.isNull())
            m_picture = QPixmap::fromImage(image);
        update();
    });
}

QRect PhotoViewer::pictureRect() const
{
    return rect().adjusted(0, 0, 0, -m_words->parentWidget()->fontMetrics().height() - 36);
}

void PhotoViewer::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    const QRect place = pictureRect();
    if (m_picture.isNull()) {
        painter.setPen(m_session.theme().colours().text);
        painter.drawText(place, Qt::AlignCenter | Qt::TextWordWrap,
                         m_failure.isEmpty() ? tr("Reading the picture …") : m_failure);
        return;
    }
    QRect where({0, 0}, m_picture.size().scaled(place.size(), Qt::KeepAspectRatio));
    where.moveCenter(place.center());
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawPixmap(where, m_picture);
}

void PhotoViewer::keyPressEvent(QKeyEvent *event)
{
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Up:
        Q_EMIT stepped(-1);
        return;
    case Qt::Key_Right:
    case Qt::Key_Down:
    case Qt::Key_Space:
        Q_EMIT stepped(1);
        return;
    case Qt::Key_Escape:
    case Qt::Key_Return:
        Q_EMIT left();
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void PhotoViewer::mouseDoubleClickEvent(QMouseEvent *)
{
    Q_EMIT left();
}

} // namespace lastrivet::ui
