// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/backup/BackupForm.h"

#include "core/base/Error.h"
#include "ui/backup/BackupKeeper.h"
#include "ui/backup/Floating.h"
#include "ui/backup/FolderLine.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/NumberBox.h"
#include "ui/widgets/Overlay.h"

#include <QCheckBox>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>

namespace lastrivet::ui {

namespace {

constexpr int mostDays = 365;

} // namespace

BackupForm::BackupForm(QWidget *parent)
    : ActForm(tr("Back up now"), parent)
    , m_shelf(new FolderLine(tr("Folder on another disk"), this))
    , m_remark(new QLabel(this))
    , m_byItself(
          new QCheckBox(tr("by itself, when that disk is there and something was changed"), this))
    , m_days(new NumberBox(this))
    , m_everyFile(
          new QCheckBox(tr("read back also what earlier backups copied (takes long)"), this))
{
    m_days->setRange(1, mostDays);
    m_days->setSuffix(tr(" days without one"));
    m_remark->setWordWrap(true);
    m_remark->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    addField(tr("Folder on another disk"), m_shelf);
    addField({}, m_remark);
    addField(tr("Back up"), m_byItself);
    addField(tr("Remind me after"), m_days);
    addField(tr("This time"), m_everyFile);
    // The keyboard goes to the line inside a spin box.
    m_days->findChild<QLineEdit *>()->setAccessibleName(m_days->accessibleName());
    connect(m_shelf, &FolderLine::changed, this, &BackupForm::tellOfFolder);
    connect(this, &ActForm::left, this, &BackupForm::leave);
    keepPlaced(*this, [this] { placeOver(*this); });
    hide();
}

void BackupForm::open(BackupKeeper &keeper)
{
    const auto choice = keeper.choice();
    // Leaving the form keeps what stands in it.
    if (!choice)
        return;
    m_keeper = &keeper;
    setTitle(keeper.lastWords());
    hint({});
    m_shelf->setFolder(pathText(choice->shelf));
    m_byItself->setChecked(choice->is_automatic);
    m_days->setValue(choice->reminder_days);
    m_everyFile->setChecked(false);
    tellOfFolder();
    floatOver(*this, *m_shelf);
}

void BackupForm::tellOfFolder()
{
    const auto shelf = toPath(m_shelf->folder());
    std::error_code none;
    QString words;
    if (shelf.empty())
        words = tr("Everything is copied there, with all photographs; later only what is new.");
    else if (!std::filesystem::is_directory(shelf, none))
        words = tr("This folder is not there just now.");
    else if (m_keeper && backup::isSameDisk(m_keeper->session().project().folder(), shelf))
        words = tr("This folder is on the disk of the project. A backup there helps against "
                   "mistakes, and is lost with the disk.");
    else
        words = tr("This folder is on another disk. Keep that disk in another building.");
    m_remark->setText(words);
    if (isVisible())
        fitHeight(*this);
}

backup::BackupChoice BackupForm::chosen() const
{
    return {toPath(m_shelf->folder()), m_byItself->isChecked(), m_days->value()};
}

void BackupForm::keep()
{
    try {
        m_keeper->choose(chosen());
    } catch (const Fault &fault) {
        hint(inWords(fault.message()));
    }
}

/// What was chosen counts without a backup as well.
void BackupForm::leave()
{
    keep();
    hide();
}

bool BackupForm::perform()
{
    if (m_shelf->folder().isEmpty()) {
        hint(tr("It needs a folder, best on a disk that is only plugged in for this."));
        m_shelf->setFocus();
        return false;
    }
    if (const QString folder = m_shelf->folder(); !QFileInfo(folder).isDir()) {
        hint(tr("There is no folder %1; plug its disk in, or make it.")
                 .arg(QDir::toNativeSeparators(folder)));
        m_shelf->setFocus();
        return false;
    }
    if (m_keeper->isRunning()) {
        hint(tr("A backup is running already."));
        return false;
    }
    keep();
    m_keeper->backUp(m_shelf->folder(), m_everyFile->isChecked() ? backup::Reading::EveryFile
                                                                 : backup::Reading::Originals);
    return true;
}

} // namespace lastrivet::ui
