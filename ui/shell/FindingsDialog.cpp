// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/FindingsDialog.h"

#include "core/verify/Repair.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Progress.h"
#include "ui/shell/Session.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <memory>

namespace lastrivet::ui {

FindingsDialog::FindingsDialog(Session &session, const Verification &found, QWidget *parent)
    : QDialog(parent)
    , m_session(session)
    , m_summary(new QLabel(this))
    , m_list(new QListWidget(this))
    , m_mend(new QPushButton(tr("Make anew what can be"), this))
    , m_stop(new QPushButton(tr("Cancel"), this))
{
    build();
    fill(found, {});
}

void FindingsDialog::build()
{
    setWindowTitle(tr("Records and files looked over"));
    setAttribute(Qt::WA_DeleteOnClose);
    m_summary->setWordWrap(true);
    m_list->setWordWrap(true);
    m_list->setSpacing(3);
    m_list->setAccessibleName(tr("What was found"));
    auto *explanation =
        new QLabel(tr("The search index and the small copies of photos can be made anew, "
                      "and half-written files removed. Records, photos and papers are "
                      "never touched: for those, compare a backup."),
                   this);
    explanation->setWordWrap(true);
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    buttons->addButton(m_mend, QDialogButtonBox::ActionRole);
    buttons->addButton(m_stop, QDialogButtonBox::ActionRole);
    setRunning(false);
    auto *layout = new QVBoxLayout(this);
    layout->addWidget(m_summary);
    layout->addWidget(m_list, 1);
    layout->addWidget(explanation);
    layout->addWidget(buttons);
    resize(640, 420);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_mend, &QPushButton::clicked, this, &FindingsDialog::mend);
    connect(m_stop, &QPushButton::clicked, this, &FindingsDialog::stop);
}

void FindingsDialog::setRunning(bool isRunning)
{
    m_mend->setEnabled(!isRunning && !m_session.isReadOnly());
    m_stop->setEnabled(true);
    m_stop->setVisible(isRunning);
}

void FindingsDialog::fill(const Verification &found, const std::vector<Message> &mended)
{
    m_summary->setText(found.isFaultless() ? tr("Everything is as it should be now.")
                                           : tr("%n things are not as they should be.", nullptr,
                                                int(found.foundInAll())));
    m_list->clear();
    for (const Message &sentence : mended)
        m_list->addItem(tr("Done: %1").arg(inWords(sentence)));
    for (const Finding &finding : found.findings)
        m_list->addItem(inWords(finding.message));
    for (const Message &note : found.notes)
        m_list->addItem(inWords(note));
}

void FindingsDialog::mend()
{
    struct Mended {
        Repair repair;
        bool is_stopped = false;
    };
    setRunning(true);
    const auto mended = std::make_shared<Mended>();
    m_progress = m_session.runLong(
        tr("Making anew what can be"),
        [mended, folder = m_session.project().folder()](Progress &progress) {
            mended->repair = repair(folder, progress.stopToken(), Writer::ThisProgram);
            mended->is_stopped = progress.isCancelled();
            // Also when it was stopped, for what was repaired until then.
            progress.noteKept();
        },
        this,
        [this, mended] {
            setRunning(false);
            // Only once: nothing more can be repaired.
            m_mend->setEnabled(mended->is_stopped && !m_session.isReadOnly());
            fill(mended->repair.after, mended->repair.done);
            if (mended->is_stopped)
                m_summary->setText(tr("Stopped before the end: what is listed as done was made, "
                                      "and not everything was looked over."));
        },
        [this] { setRunning(false); });
}

void FindingsDialog::stop()
{
    m_stop->setEnabled(false);
    if (const auto running = m_progress.lock())
        running->cancel();
}

QStringList FindingsDialog::lines() const
{
    QStringList lines;
    for (int i = 0; i < m_list->count(); ++i)
        lines.append(m_list->item(i)->text());
    return lines;
}

} // namespace lastrivet::ui
