// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/NoticeBars.h"

#include "core/project/SecondDatabases.h"
#include "core/verify/OpeningCheck.h"
#include "ui/convert/QtText.h"
#include "ui/shell/FileTasks.h"
#include "ui/shell/Session.h"

#include <QAccessible>
#include <QFileInfo>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

namespace {

constexpr int lookMilliseconds = 3000;
/// Waits until the first page is shown.
constexpr int settleMilliseconds = 1500;

/// The second database that the notice is about; empty when it is about none.
std::filesystem::path namedIn(const Message &notice,
                              const std::vector<std::filesystem::path> &seconds)
{
    for (const auto &second : seconds) {
        if (notice.arguments == std::vector<std::string>{second.filename().string()})
            return second;
    }
    return {};
}

} // namespace

/// One sentence over the page, with what can be done about it. A loud one cannot be dismissed.
class NoticeBars::Bar final : public QFrame {
public:
    Bar(const QString &text, bool isLoud, QWidget *parent)
        : QFrame(parent)
        , m_text(new QLabel(text, this))
        , m_layout(new QHBoxLayout(this))
        , m_isLoud(isLoud)
    {
        setAutoFillBackground(true);
        setBackgroundRole(isLoud ? QPalette::Highlight : QPalette::AlternateBase);
        m_text->setForegroundRole(isLoud ? QPalette::HighlightedText : QPalette::WindowText);
        m_text->setWordWrap(true);
        m_text->setTextFormat(Qt::PlainText);
        m_text->setTextInteractionFlags(Qt::TextSelectableByMouse);
        m_layout->setContentsMargins(16, 4, 8, 4);
        m_layout->addWidget(m_text, 1);
        setMinimumHeight(36);
        tell();
    }

    QString text() const { return m_text->text(); }
    void setText(const QString &text)
    {
        m_text->setText(text);
        tell();
    }
    bool isLoud() const { return m_isLoud; }
    QPushButton *addButton(const QString &words)
    {
        auto *button = new QPushButton(words, this);
        m_layout->addWidget(button);
        return button;
    }

private:
    void tell()
    {
        setAccessibleName(text());
        QAccessibleEvent event(this, QAccessible::Alert);
        QAccessible::updateAccessibility(&event);
    }

    QLabel *m_text;
    QHBoxLayout *m_layout;
    bool m_isLoud;
};

NoticeBars::NoticeBars(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_bars(new QVBoxLayout(this))
{
    m_bars->setContentsMargins(0, 0, 0, 0);
    m_bars->setSpacing(1);
    const Project &project = session.project();
    if (project.isReadOnly())
        addReadOnly();
    const auto seconds = secondDatabases(project);
    for (const Message &notice : project.notices())
        addNotice(notice, pathText(namedIn(notice, seconds)));
    lookAtClock();
    connect(&m_look, &QTimer::timeout, this, &NoticeBars::lookAtPlace);
    connect(&m_look, &QTimer::timeout, this, &NoticeBars::lookAtRecords);
    connect(&m_look, &QTimer::timeout, this, &NoticeBars::lookAtWriter);
    connect(&m_look, &QTimer::timeout, this, &NoticeBars::lookAtClock);
    m_look.start(lookMilliseconds);
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, &NoticeBars::lookAtPlace);
    QTimer::singleShot(settleMilliseconds, this, &NoticeBars::lookForDamage);
}

NoticeBars::~NoticeBars()
{
    m_stop.request_stop();
}

NoticeBars::Bar *NoticeBars::add(const QString &text, bool isLoud)
{
    auto *bar = new Bar(text, isLoud, this);
    m_bars->addWidget(bar);
    return bar;
}

void NoticeBars::addReadOnly()
{
    m_openedAt = dateText(m_session.now());
    m_newestThen =
        m_session.read([this] { return m_session.project().journalHash(); }).value_or("");
    m_readOnly = add(tr("To read only, as the records were when this was opened (%1). %2")
                         .arg(m_openedAt, inWords(m_session.project().readOnlyMessage())),
                     true);
    QPushButton *again = m_readOnly->addButton(tr("Open it anew"));
    again->setToolTip(tr("Shows what was changed since, and can write when nothing stands against "
                         "that any more."));
    connect(again, &QPushButton::clicked, this, &NoticeBars::reopeningWanted);
}

void NoticeBars::lookAtRecords()
{
    // Long work has the project for itself.
    if (!m_readOnly || m_isWriterGone || m_newestThen.empty() || !m_session.running().empty() ||
        !m_session.project().isInPlace())
        return;
    const auto newest = m_session.read([this] { return m_session.project().journalHash(); });
    if (!newest || *newest == m_newestThen)
        return;
    // Said once only.
    m_newestThen.clear();
    m_readOnly->setText(tr("The records have been changed since this was opened (%1), and are "
                           "shown as they were then. To read only. %2")
                            .arg(m_openedAt, inWords(m_session.project().readOnlyMessage())));
}

void NoticeBars::lookAtWriter()
{
    if (!m_readOnly || m_session.project().hasWriterEnded() == m_isWriterGone)
        return;
    m_isWriterGone = !m_isWriterGone;
    // Another may be quicker to open it for writing.
    if (!m_isWriterGone) {
        m_readOnly->setText(m_readOnlyBefore);
        return;
    }
    m_readOnlyBefore = m_readOnly->text();
    m_readOnly->setText(tr("The program that had the project open for writing has closed it. To "
                           "read only, as the records were when this was opened (%1): open it anew "
                           "to see what was changed since, and to write.")
                            .arg(m_openedAt));
}

void NoticeBars::lookAtClock()
{
    if (!m_session.running().empty() || !m_session.project().isInPlace())
        return;
    const auto found = m_session.read([this] { return m_session.project().clockNotice(); });
    if (!found || found->has_value() == m_isClockWrong)
        return;
    m_isClockWrong = found->has_value();
    if (m_isClockWrong) {
        m_clock = addNotice(**found, {});
    } else if (m_clock) {
        takeAway(*m_clock);
        m_clock = nullptr;
    }
}

NoticeBars::Bar *NoticeBars::addNotice(const Message &notice, const QString &second)
{
    Bar *bar = add(inWords(notice), false);
    if (!second.isEmpty() && !m_session.isReadOnly()) {
        QPushButton *merge = bar->addButton(tr("Merge it"));
        connect(merge, &QPushButton::clicked, this, [this, bar, second] {
            bar->deleteLater();
            Q_EMIT mergeWanted(second);
        });
    }
    addDismiss(*bar);
    return bar;
}

void NoticeBars::addDismiss(Bar &bar)
{
    QPushButton *dismiss = bar.addButton(tr("Dismiss"));
    dismiss->setProperty("flat", true);
    connect(dismiss, &QPushButton::clicked, &bar, &QObject::deleteLater);
}

void NoticeBars::takeAway(QWidget &bar)
{
    m_bars->removeWidget(&bar);
    bar.hide();
    bar.deleteLater();
}

void NoticeBars::askToImport(const QString &file)
{
    if (m_import)
        takeAway(*m_import);
    Bar *bar = add(tr("Bring the records of %1 into this project?").arg(QFileInfo(file).fileName()),
                   false);
    m_import = bar;
    QPushButton *import = bar->addButton(tr("Import records"));
    connect(import, &QPushButton::clicked, this, [this, bar, file] {
        bar->deleteLater();
        tasks::importInto(m_session, file);
    });
    addDismiss(*bar);
}

void NoticeBars::lookAtPlace()
{
    const Project &project = m_session.project();
    if (project.isInPlace() == !m_moved)
        return;
    if (m_moved) {
        takeAway(*m_moved);
        m_moved = nullptr;
        m_session.say(tr("The project's folder is back."));
        return;
    }
    m_moved =
        add(tr("The project's folder is no longer at %1. Nothing can be written down until it is "
               "back, or is opened where it is now.")
                .arg(pathText(project.folder())),
            true);
    QPushButton *find = m_moved->addButton(tr("Open it where it is…"));
    connect(find, &QPushButton::clicked, this, &NoticeBars::placeWanted);
}

void NoticeBars::lookForDamage()
{
    const auto damages = std::make_shared<std::vector<Message>>();
    m_session.executor().run(
        this,
        [damages, folder = m_session.project().folder(), stop = m_stop.get_token()] {
            *damages = damagesAtOpening(folder, stop);
        },
        [this, damages] {
            if (m_session.project().isInPlace())
                showDamages(*damages);
        });
}

void NoticeBars::showDamages(const std::vector<Message> &damages)
{
    for (const Message &damage : damages) {
        Bar *bar = add(tr("%1 Look everything over before you go on, and keep the backups.")
                           .arg(inWords(damage)),
                       true);
        QPushButton *verify = bar->addButton(tr("Verify records and files"));
        connect(verify, &QPushButton::clicked, this, &NoticeBars::verifyWanted);
    }
}

void NoticeBars::dismissAll()
{
    for (QObject *child : children()) {
        if (auto *bar = dynamic_cast<Bar *>(child); bar && !bar->isLoud())
            bar->deleteLater();
    }
}

QStringList NoticeBars::texts() const
{
    QStringList texts;
    for (int i = 0; i < m_bars->count(); ++i)
        texts.append(static_cast<Bar *>(m_bars->itemAt(i)->widget())->text());
    return texts;
}

} // namespace lastrivet::ui
