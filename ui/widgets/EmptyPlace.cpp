// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/EmptyPlace.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

EmptyPlace::EmptyPlace(const QString &sentence, QWidget *parent)
    : QWidget(parent)
    , m_sentence(new QLabel(sentence, this))
    , m_button(new QPushButton(this))
{
    m_sentence->setWordWrap(true);
    m_sentence->setAlignment(Qt::AlignHCenter);
    m_sentence->setMaximumWidth(520);
    m_sentence->setMinimumWidth(240);
    m_button->hide();
    connect(m_button, &QPushButton::clicked, this, &EmptyPlace::acted);
    // Between stretches, because an aligned label would keep the height of one line.
    auto *middle = new QHBoxLayout;
    middle->addStretch(1);
    middle->addWidget(m_sentence, 4);
    middle->addStretch(1);
    auto *layout = new QVBoxLayout(this);
    layout->addStretch(1);
    layout->addLayout(middle);
    layout->addSpacing(12);
    layout->addWidget(m_button, 0, Qt::AlignHCenter);
    layout->addStretch(2);
}

void EmptyPlace::setSentence(const QString &sentence)
{
    m_sentence->setText(sentence);
}

void EmptyPlace::setAction(const QString &words)
{
    m_button->setText(words);
    m_button->show();
    setFocusProxy(m_button);
}

} // namespace lastrivet::ui
