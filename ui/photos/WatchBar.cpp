// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/WatchBar.h"

#include "ui/photos/WatchedFolder.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"

#include <QDir>
#include <QFileDialog>
#include <QLabel>
#include <QPushButton>

namespace lastrivet::ui {

using State = WatchedFolder::State;

WatchBar::WatchBar(Session &session, QWidget *parent)
    : QFrame(parent)
    , m_session(session)
    , m_words(new QLabel(this))
    , m_begin(new QPushButton(tr("Watch a folder"), this))
{
    build();
    connectButtons();
    m_begin->hide();
    hide();
}

void WatchBar::build()
{
    m_words->setForegroundRole(QPalette::PlaceholderText);
    m_words->setMinimumWidth(40);
    auto *flow = new Flow(this);
    flow->addWidget(m_words);
    m_show = addButton(tr("Show them"));
    m_unwanted = addButton(tr("They do not belong here"));
    m_withAll = addButton(tr("Take in what is there, too"));
    m_fromNow = addButton(tr("Only what comes from now on"));
    m_pause = addButton(QString());
    m_choose = addButton(tr("Another folder"));
    m_stop = addButton(tr("Stop watching"));
    m_begin->setToolTip(tr("Photos that a phone puts there are taken in on their own."));
}

void WatchBar::connectButtons()
{
    connect(m_begin, &QPushButton::clicked, this, &WatchBar::chooseFolder);
    connect(m_choose, &QPushButton::clicked, this, &WatchBar::chooseFolder);
    connect(m_withAll, &QPushButton::clicked, this, [this] {
        m_folder->watch(std::exchange(m_proposed, {}), WatchedFolder::Begin::WithWhatIsThere);
    });
    connect(m_fromNow, &QPushButton::clicked, this, [this] {
        m_folder->watch(std::exchange(m_proposed, {}), WatchedFolder::Begin::FromNowOn);
    });
    connect(m_show, &QPushButton::clicked, this, [this] { Q_EMIT shown(m_folder->lastTaken()); });
    connect(m_unwanted, &QPushButton::clicked, this,
            [this] { Q_EMIT unwanted(m_folder->lastTaken()); });
    connect(m_pause, &QPushButton::clicked, this, [this] {
        if (m_folder->state() == State::Paused)
            m_folder->goOn();
        else
            m_folder->pause();
    });
    connect(m_stop, &QPushButton::clicked, this, [this] {
        m_proposed.clear();
        m_folder->stop();
        update();
    });
}

QPushButton *WatchBar::addButton(const QString &words)
{
    auto *button = flatButton(words, this);
    layout()->addWidget(button);
    return button;
}

void WatchBar::setFolder(WatchedFolder &folder)
{
    m_folder = &folder;
    connect(&folder, &WatchedFolder::changed, this, &WatchBar::update);
    update();
}

void WatchBar::chooseFolder()
{
    const QString folder = QFileDialog::getExistingDirectory(
        this, tr("The folder that your phone puts its pictures into"), QDir::homePath());
    if (!folder.isEmpty())
        propose(folder);
}

void WatchBar::propose(const QString &folder)
{
    m_proposed = folder;
    update();
    m_fromNow->setFocus();
}

QString WatchBar::words() const
{
    const QString folder = QDir::toNativeSeparators(m_folder->folder());
    if (!m_proposed.isEmpty())
        return tr("%1 will be watched.").arg(QDir::toNativeSeparators(m_proposed));
    switch (m_folder->state()) {
    case State::Off:
        return {};
    case State::Paused:
        return tr("Not watching %1 for now.").arg(folder);
    case State::NotThere:
        return tr("%1 is not there; it is looked for again and again.").arg(folder);
    case State::Watching:
        break;
    }
    const int count = int(m_folder->lastTaken().size());
    return count == 0 ? tr("Watching %1.").arg(folder)
                      : tr("Watching %1; %n came in last.", nullptr, count).arg(folder);
}

void WatchBar::update()
{
    const bool isProposed = !m_proposed.isEmpty();
    const State state = m_folder->state();
    const bool hasFolder = state != State::Off && !isProposed;
    const bool hasNews = hasFolder && !m_folder->lastTaken().empty();
    m_words->setText(words());
    // The name of a folder may be longer than the window is wide.
    m_words->setToolTip(m_words->text());
    m_begin->setVisible(!hasFolder && !isProposed && !m_session.isReadOnly());
    setVisible((hasFolder || isProposed) && !m_session.isReadOnly());
    m_withAll->setVisible(isProposed);
    m_fromNow->setVisible(isProposed);
    m_show->setVisible(hasNews);
    m_unwanted->setVisible(hasNews);
    m_pause->setVisible(hasFolder);
    m_pause->setText(state == State::Paused ? tr("Go on watching") : tr("Pause"));
    m_choose->setVisible(hasFolder);
    m_stop->setVisible(hasFolder || isProposed);
    m_stop->setText(isProposed ? tr("Do not watch it") : tr("Stop watching"));
}

} // namespace lastrivet::ui
