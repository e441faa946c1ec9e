// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/PacketForm.h"

#include "ui/closings/PacketTask.h"
#include "ui/convert/QtText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/print/Language.h"
#include "ui/prints/PrintTask.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/NewFileName.h"
#include "ui/widgets/PathLine.h"

#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// More names would push what is chosen below them out of sight.
constexpr qsizetype namedAtMost = 12;

} // namespace

PacketForm::PacketForm(Session &session, QWidget *parent)
    : ActForm(tr("Make the packet"), parent)
    , m_session(session)
    , m_names(new QLabel(this))
    , m_form(new QComboBox(this))
    , m_about(new QLabel(this))
    , m_paper(new QComboBox(this))
    , m_language(new QComboBox(this))
    , m_place(new PathLine(this))
{
    setTitle(tr("The inspection packet: everything an inspector needs to decide, in his order."));
    for (QLabel *words : {m_names, m_about}) {
        words->setWordWrap(true);
        words->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    }
    m_about->setForegroundRole(QPalette::PlaceholderText);
    offer();
    addField(tr("Closings"), m_names);
    addField(tr("Form"), m_form);
    addField({}, m_about);
    addField(tr("Paper"), m_paper);
    addField(tr("Language of the packet"), m_language);
    addField(tr("Goes to"), buildPlace());
    m_place->setAccessibleName(tr("Goes to"));
    connect(m_form, &QComboBox::currentIndexChanged, this, &PacketForm::proposePlace);
}

void PacketForm::offer()
{
    m_form->addItem(tr("PDF to print"), int(print::PacketForm::Pdf));
    m_form->addItem(tr("Folder with the PDF and all photographs in full size"),
                    int(print::PacketForm::Folder));
    m_form->addItem(tr("PDF under 15 MB to send"), int(print::PacketForm::Small));
    m_paper->addItem(tr("A4"), int(print::Paper::A4));
    m_paper->addItem(tr("Letter"), int(print::Paper::Letter));
    for (const print::Language &language : print::languages()) {
        m_language->addItem(language.name, int(language.id));
    }
    makeNarrow(*m_form, 24);
}

QWidget *PacketForm::buildPlace()
{
    auto *place = new QWidget(this);
    auto *choose = new QPushButton(tr("Choose…"), place);
    auto *line = new QHBoxLayout(place);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(m_place, 1);
    line->addWidget(choose);
    choose->setAccessibleName(tr("Choose where the packet goes"));
    connect(choose, &QPushButton::clicked, this, &PacketForm::choosePlace);
    return place;
}

void PacketForm::start(const IdSet<Closing> &closings)
{
    m_closings = closings;
    QStringList names;
    for (const auto id : closings) {
        if (const Closing *closing = m_session.records()->find(id))
            names << toQt(closing->title);
    }
    if (const qsizetype more = names.size() - namedAtMost; more > 1)
        names = names.first(namedAtMost) << tr("and %1 more").arg(QLocale().toString(more));
    m_names->setText(names.join(QLatin1Char('\n')));
    const print::Choices usual = usualChoices();
    m_paper->setCurrentIndex(m_paper->findData(int(usual.paper)));
    m_language->setCurrentIndex(
        std::max(0, m_language->findData(int(usual.wording.locale().language()))));
    m_asked.clear();
    proposePlace();
    hint({});
    m_form->setFocus();
}

bool PacketForm::isFolder() const
{
    return m_form->currentData().toInt() == int(print::PacketForm::Folder);
}

void PacketForm::proposePlace()
{
    QString name = packetName(m_session, m_closings);
    switch (print::PacketForm(m_form->currentData().toInt())) {
    case print::PacketForm::Pdf:
        m_about->setText(tr("Photographs as large as paper shows them."));
        name += QStringLiteral(".pdf");
        break;
    case print::PacketForm::Folder:
        m_about->setText(
            tr("For a stick or a shared folder. SHA256SUMS beside the photographs lets "
               "anybody check that none was altered."));
        break;
    case print::PacketForm::Small:
        m_about->setText(tr("Pictures become smaller, and some are left out where that is not "
                            "enough; the first page says so."));
        name = tr("%1 to send").arg(name) + QStringLiteral(".pdf");
        break;
    }
    const QString known = QFileInfo(m_place->text()).path();
    const bool isKept = !m_place->text().isEmpty() && QFileInfo(known).isDir();
    const QString folder = isKept ? known : documentsFolder();
    m_place->setText(QDir::toNativeSeparators(QDir(folder).filePath(name)));
}

void PacketForm::choosePlace()
{
    const QString chosen =
        isFolder()
            ? QFileDialog::getSaveFileName(this, tr("Name of the new folder"), m_place->text(), {},
                                           nullptr, QFileDialog::ShowDirsOnly)
            : askForNewFile(this, tr("Where the packet goes"),
                            withEnding(m_place->text(), QStringLiteral(".pdf")), tr("PDF (*.pdf)"));
    if (chosen.isEmpty())
        return;
    m_place->setText(QDir::toNativeSeparators(chosen));
    // The file dialog has asked already whether it may go.
    m_asked = QDir::fromNativeSeparators(m_place->text());
}

QString PacketForm::whyNot(const QString &place) const
{
    const QFileInfo info(place);
    if (place.trimmed().isEmpty())
        return tr("It needs a place to go to.");
    if (!QFileInfo(info.path()).isDir())
        return tr("There is no folder %1.").arg(QDir::toNativeSeparators(info.path()));
    if (!isFolder() && info.isDir())
        return tr("%1 is a folder; the PDF needs a name.").arg(info.fileName());
    if (isFolder() && info.exists() && !(info.isDir() && QDir(place).isEmpty()))
        return tr("Something is called %1 there already; the new folder needs another name.")
            .arg(info.fileName());
    return {};
}

bool PacketForm::perform()
{
    const QString typed = wholePath(m_place->text(), documentsFolder());
    const QString place = isFolder() ? typed : withEnding(typed, QStringLiteral(".pdf"));
    m_place->setText(QDir::toNativeSeparators(place));
    if (const QString why = whyNot(place); !why.isEmpty()) {
        hint(why);
        m_place->setFocus();
        return false;
    }
    if (!isFolder() && QFileInfo::exists(place) && m_asked != place) {
        m_asked = place;
        hint(tr("A file of this name is there. Press again to replace it."));
        return false;
    }
    makePacket(m_session, {m_closings, print::PacketForm(m_form->currentData().toInt()),
                           print::Paper(m_paper->currentData().toInt()),
                           QLocale::Language(m_language->currentData().toInt()), place});
    return true;
}

} // namespace lastrivet::ui
