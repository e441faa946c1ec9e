// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/FindingsDialog.h"

#include "core/verify/Repair.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

FindingsDialog::FindingsDialog(Session &session, const Verification &found, QWidget *parent)
    : QDialog(parent)
    , m_session(session)
    , m_summary(new QLabel(this))
    , m_list(new QListWidget(this))
    , m_mend(new QPushButton(tr("Make anew what can be"), this))
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
    m_mend->setEnabled(!session.isReadOnly());
    auto *layout = new QVBoxLayout(this);
    layout->addWidget(m_summary);
    layout->addWidget(m_list, 1);
    layout->addWidget(explanation);
    layout->addWidget(buttons);
    resize(640, 420);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_mend, &QPushButton::clicked, this, &FindingsDialog::mend);
    fill(found, {});
}

void FindingsDialog::fill(const Verification &found, const std::vector<std::string> &mended)
{
    m_summary->setText(found.isFaultless() ? tr("Everything is as it should be now.")
                                           : tr("%n things are not as they should be.", nullptr,
                                                int(found.findings.size())));
    m_list->clear();
    for (const std::string &sentence : mended)
        m_list->addItem(tr("Done: %1").arg(inWords({sentence, {}})));
    for (const Finding &finding : found.findings)
        m_list->addItem(inWords({finding.text, {}}));
    for (const std::string &note : found.notes)
        m_list->addItem(inWords({note, {}}));
}

void FindingsDialog::mend()
{
    m_mend->setEnabled(false);
    const auto repaired = std::make_shared<Repair>();
    m_session.runLong(
        tr("Making anew what can be"),
        [repaired, folder = m_session.project().folder()](Progress &progress) {
            *repaired = repair(folder, {}, Writer::ThisProgram);
            progress.noteKept();
        },
        this, [this, repaired] { fill(repaired->after, repaired->done); },
        [this] { m_mend->setEnabled(true); });
}

QStringList FindingsDialog::lines() const
{
    QStringList lines;
    for (int i = 0; i < m_list->count(); ++i)
        lines.append(m_list->item(i)->text());
    return lines;
}

} // namespace lastrivet::ui
