// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/MessageLine.h"

#include "ui/convert/NumberText.h"
#include "ui/shell/Progress.h"
#include "ui/widgets/Layouts.h"

#include <QAccessible>
#include <QCoreApplication>
#include <QDateTime>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>

#include <utility>

namespace lastrivet::ui {

namespace {

constexpr int showMilliseconds = 12000;
constexpr int holdMilliseconds = 8000;
constexpr int pollMilliseconds = 100;

} // namespace

MessageLine::MessageLine(QWidget *parent)
    : QWidget(parent)
    , m_mark(new QLabel(this))
    , m_sentence(new QLabel(this))
    , m_undo(flatButton(tr("Undo"), this))
    , m_dismiss(flatButton(tr("Dismiss"), this))
    , m_work(new QWidget(this))
    , m_workTitle(new QLabel(m_work))
    , m_bar(new QProgressBar(m_work))
    , m_cancel(flatButton(tr("Cancel"), m_work))
    , m_hold(this)
{
    m_sentence->setWordWrap(true);
    m_sentence->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_fade.setSingleShot(true);
    m_hold.setSingleShot(true);
    m_hold.setInterval(holdMilliseconds);
    m_hold.setObjectName(QStringLiteral("hold"));
    buildWork();
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(12, 2, 8, 2);
    layout->addWidget(m_mark);
    layout->addWidget(m_sentence, 1);
    layout->addWidget(m_undo);
    layout->addWidget(m_dismiss);
    layout->addWidget(m_work);
    setMinimumHeight(36);
    connect(m_undo, &QPushButton::clicked, this, &MessageLine::undoWanted);
    connect(m_dismiss, &QPushButton::clicked, this, [this] {
        clear();
        goOn();
    });
    connect(&m_fade, &QTimer::timeout, this, &MessageLine::clear);
    connect(&m_hold, &QTimer::timeout, this, &MessageLine::goOn);
    qApp->installEventFilter(this);
    clear();
}

void MessageLine::buildWork()
{
    m_bar->setFixedWidth(160);
    m_bar->setTextVisible(false);
    auto *work = new QHBoxLayout(m_work);
    work->setContentsMargins(0, 0, 0, 0);
    for (QWidget *widget : {static_cast<QWidget *>(m_workTitle), static_cast<QWidget *>(m_bar),
                            static_cast<QWidget *>(m_cancel)})
        work->addWidget(widget);
    connect(&m_poll, &QTimer::timeout, this, &MessageLine::updateProgress);
    connect(m_cancel, &QPushButton::clicked, this, [this] {
        if (!m_works.empty())
            m_works.back().progress->cancel();
        m_cancel->setEnabled(false);
    });
    m_work->hide();
}

void MessageLine::say(const QString &sentence, bool isUndoable)
{
    if (m_hold.isActive() && !m_hasActed)
        m_waiting = Waiting{sentence, isUndoable};
    else
        showSaid(sentence, isUndoable);
}

void MessageLine::showSaid(const QString &sentence, bool isUndoable)
{
    m_hold.stop();
    m_isPassing = false;
    m_waiting.reset();
    set(sentence, isUndoable, false);
    m_fade.start(showMilliseconds);
}

void MessageLine::complain(const QString &sentence)
{
    m_fade.stop();
    m_hold.start();
    m_hasActed = false;
    m_isPassing = false;
    set(sentence, false, true);
}

void MessageLine::turnAway()
{
    // What leads to another page by itself is part of what was complained about.
    if (m_dismiss->isHidden() || !m_hasActed)
        return;
    if (m_hold.isActive())
        m_isPassing = true;
    else
        clear();
}

void MessageLine::goOn()
{
    m_hold.stop();
    if (std::exchange(m_isPassing, false))
        clear();
    if (const auto waiting = std::exchange(m_waiting, std::nullopt))
        showSaid(waiting->sentence, waiting->isUndoable);
}

bool MessageLine::eventFilter(QObject *watched, QEvent *event)
{
    switch (event->type()) {
    case QEvent::KeyPress:
    case QEvent::MouseButtonPress:
    case QEvent::Shortcut:
        noteInput(watched, event);
        break;
    case QEvent::KeyRelease:
        m_input = nullptr;
        break;
    default:
        break;
    }
    return QWidget::eventFilter(watched, event);
}

void MessageLine::noteInput(QObject *watched, const QEvent *event)
{
    auto *at = qobject_cast<QWidget *>(watched);
    // A key that a widget ignores is passed on to its parents, after the complaint was made.
    const bool isSame = at && m_inputAt && event == m_input && at->isAncestorOf(m_inputAt);
    m_input = event;
    m_inputAt = at;
    m_hasActed = m_hasActed || !isSame;
}

void MessageLine::set(const QString &sentence, bool isUndoable, bool isComplaint)
{
    m_sentence->setText(sentence);
    m_mark->setText(isComplaint ? QStringLiteral("!") : QString());
    m_mark->setVisible(isComplaint);
    QFont bold = font();
    bold.setBold(true);
    m_mark->setFont(bold);
    m_undo->setVisible(isUndoable);
    m_dismiss->setVisible(isComplaint);
    setAccessibleName(sentence);
    QAccessibleEvent event(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

void MessageLine::clear()
{
    m_sentence->clear();
    m_mark->hide();
    m_undo->hide();
    m_dismiss->hide();
}

QString MessageLine::text() const
{
    return m_sentence->text();
}

void MessageLine::follow(const std::shared_ptr<Progress> &progress)
{
    m_works.push_back({progress, QDateTime::currentMSecsSinceEpoch()});
    m_work->show();
    updateProgress();
    m_poll.start(pollMilliseconds);
}

void MessageLine::forget(const std::shared_ptr<Progress> &progress)
{
    std::erase_if(m_works, [&](const Work &work) { return work.progress == progress; });
    updateProgress();
    if (!m_works.empty())
        return;
    m_poll.stop();
    m_work->hide();
}

void MessageLine::updateProgress()
{
    if (m_works.empty())
        return;
    const auto &[progress, startedAt] = m_works.back();
    const qint64 done = progress->done();
    const qint64 total = progress->total();
    m_cancel->setEnabled(!progress->isCancelled());
    m_bar->setMaximum(total > 0 ? 1000 : 0);
    m_bar->setValue(total > 0 ? int(done * 1000 / total) : 0);
    QString words = progress->title();
    const qint64 spent = QDateTime::currentMSecsSinceEpoch() - startedAt;
    if (total > 0 && done > 0) {
        words = tr("%1: %2 of %3")
                    .arg(words, countText(std::int64_t(done)), countText(std::int64_t(total)));
        const qint64 left = spent * (total - done) / done / 1000;
        if (spent > 3000 && left > 1)
            words = tr("%1, about %n s to go", nullptr, int(left)).arg(words);
    }
    if (const int others = int(m_works.size()) - 1; others > 0)
        words = tr("%1; %n more at work", nullptr, others).arg(words);
    m_workTitle->setText(words);
}

} // namespace lastrivet::ui
