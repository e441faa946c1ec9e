// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/backup/RestoreForm.h"

#include "core/base/Error.h"
#include "ui/backup/Floating.h"
#include "ui/backup/FolderLine.h"
#include "ui/convert/QtText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/shell/Progress.h"
#include "ui/widgets/Overlay.h"

#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QLineEdit>
#include <QLocale>
#include <QProgressBar>

#include <initializer_list>

namespace lastrivet::ui {

namespace {

constexpr int pollMilliseconds = 100;

QString dateOf(std::chrono::sys_seconds made)
{
    const auto when = QDateTime::fromSecsSinceEpoch(made.time_since_epoch().count());
    const auto moment = toMoment(when);
    return moment ? dateText(*moment) : QString();
}

} // namespace

/// What the worker is given, and what it found.
struct RestoreForm::Job {
    std::filesystem::path what;
    QString target;
    backup::Time now;
    std::shared_ptr<Progress> progress;
    std::optional<backup::Report> report{};
    QString fault{};

    void run()
    {
        try {
            report = backup::restore(
                what, toPath(target), now, [this](const backup::CopyProgress &copied) {
                    // Thousandths: the bytes of a life's photographs are more than a bar counts.
                    const auto all = std::max<std::uint64_t>(1, copied.bytes_in_all);
                    return progress->report(qint64(copied.bytes_done * 1000 / all), 1000);
                });
        } catch (const std::exception &error) {
            fault = inWords(messageOf(error));
        }
    }
};

RestoreForm::RestoreForm(Executor &executor, const Clock &clock, QWidget *parent)
    : ActForm(tr("Restore"), parent)
    , m_executor(executor)
    , m_clock(clock)
    , m_backup(new FolderLine(tr("Folder of the backup"), this))
    , m_state(new QComboBox(this))
    , m_place(new FolderLine(tr("Put it into"), this))
    , m_name(new QLineEdit(this))
    , m_bar(new QProgressBar(this))
{
    setTitle(tr("A backup becomes a project again, in a new folder. Nothing that is there is "
                "touched."));
    addField(tr("Folder of the backup"), m_backup);
    addField(tr("State of"), m_state);
    addField(tr("Put it into"), m_place);
    addField(tr("Name of the new folder"), m_name);
    addWide(m_bar);
    m_state->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_bar->setRange(0, 1000);
    m_bar->setTextVisible(false);
    m_bar->setAccessibleName(tr("How much is restored"));
    connect(m_backup, &FolderLine::changed, this, &RestoreForm::offerStates);
    connect(this, &ActForm::left, this, &RestoreForm::leave);
    connect(&m_poll, &QTimer::timeout, this, [this] {
        if (m_progress)
            m_bar->setValue(int(m_progress->done()));
    });
    keepPlaced(*this, [this] { placeOver(*this); });
    setRunning(false);
    hide();
}

RestoreForm::~RestoreForm()
{
    if (m_progress)
        m_progress->cancel();
}

void RestoreForm::open()
{
    hint({});
    if (m_place->folder().isEmpty())
        m_place->setFolder(documentsFolder());
    offerStates();
    floatOver(*this, *m_backup);
}

void RestoreForm::offerStates()
{
    m_state->clear();
    for (const auto &state : backup::keptStates(toPath(m_backup->folder())))
        m_state->addItem(m_state->count() == 0 ? tr("the last backup, %1").arg(dateOf(state.made))
                                               : dateOf(state.made),
                         pathText(state.what));
    m_state->setPlaceholderText(m_backup->folder().isEmpty() ? tr("choose its folder first")
                                                             : tr("no backup is in this folder"));
    // A box with words for when it is empty leaves it to us to choose the first.
    m_state->setCurrentIndex(m_state->count() > 0 ? 0 : -1);
    m_state->setEnabled(m_state->count() > 0);
    suggestName();
}

void RestoreForm::suggestName()
{
    if (m_state->count() == 0)
        return;
    const QFileInfo backup(m_backup->folder());
    const QDir place(m_place->folder());
    const QString ending = backup.fileName().mid(backup.completeBaseName().size());
    QString name = backup.fileName();
    for (int i = 2; place.exists(name); ++i)
        name = backup.completeBaseName() + QLatin1Char('-') + QString::number(i) + ending;
    m_name->setText(name);
}

bool RestoreForm::perform()
{
    if (m_progress)
        return false;
    const QString name = m_name->text().trimmed();
    if (m_state->count() == 0) {
        hint(tr("It needs the folder of a backup: the one with a records.db in it."));
        m_backup->setFocus();
    } else if (name.isEmpty() || m_place->folder().isEmpty()) {
        hint(tr("It needs a place and a name for the new folder."));
        m_name->setFocus();
    } else {
        start(QDir(m_place->folder()).filePath(name));
    }
    // It goes when the folder is whole.
    return false;
}

void RestoreForm::start(const QString &target)
{
    m_progress = std::make_shared<Progress>(QString());
    setRunning(true);
    const auto job = std::make_shared<Job>(
        Job{toPath(m_state->currentData().toString()), target, m_clock.now(), m_progress});
    m_executor.run(
        this, [job] { job->run(); }, [this, job] { finish(*job); });
}

void RestoreForm::finish(const Job &job)
{
    m_progress.reset();
    setRunning(false);
    if (!job.fault.isEmpty() || !job.report) {
        hint(job.fault.isEmpty() ? tr("Cancelled; nothing was left behind.") : job.fault);
        return;
    }
    const auto lost =
        job.report->missing.size() + job.report->unreadable.size() + job.report->altered.size();
    hide();
    Q_EMIT restored(job.target, lost == 0 ? QString()
                                          : tr("%n files of the backup are missing or no longer "
                                               "what was taken in; “Verify records and files” "
                                               "names them.",
                                               nullptr, int(lost)));
}

void RestoreForm::setRunning(bool isRunning)
{
    m_bar->setVisible(isRunning);
    m_bar->setValue(0);
    for (QWidget *field : std::initializer_list<QWidget *>{m_backup, m_state, m_place, m_name})
        field->setEnabled(!isRunning);
    if (isRunning)
        m_poll.start(pollMilliseconds);
    else
        m_poll.stop();
}

void RestoreForm::leave()
{
    if (m_progress)
        m_progress->cancel();
    else
        hide();
}

} // namespace lastrivet::ui
