// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/backup/BackupNotice.h"

#include "ui/backup/BackupKeeper.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace lastrivet::ui {

BackupNotice::BackupNotice(BackupKeeper &keeper, QWidget *parent)
    : QFrame(parent)
    , m_keeper(keeper)
    , m_sentence(new QLabel(this))
    , m_act(new QPushButton(tr("Back up…"), this))
{
    m_sentence->setWordWrap(true);
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sentence, 1);
    layout->addWidget(m_act);
    connect(m_act, &QPushButton::clicked, this, &BackupNotice::wanted);
    connect(&keeper, &BackupKeeper::changed, this, &BackupNotice::lookAgain);
    lookAgain();
}

void BackupNotice::lookAgain()
{
    const QString words = m_keeper.reminder();
    m_sentence->setText(words);
    setVisible(!words.isEmpty());
}

} // namespace lastrivet::ui
