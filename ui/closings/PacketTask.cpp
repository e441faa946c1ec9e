// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/PacketTask.h"

#include "core/base/Error.h"
#include "core/packet/ChangesSince.h"
#include "core/packet/CorrectionsReport.h"
#include "ui/convert/QtText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/print/ChangesPrinter.h"
#include "ui/print/CorrectionsPrinter.h"
#include "ui/print/Language.h"
#include "ui/prints/PrintTask.h"
#include "ui/shell/Session.h"
#include "ui/widgets/NewFileName.h"

#include <QCoreApplication>
#include <QDir>
#include <QLocale>

#include <algorithm>
#include <memory>

namespace lastrivet::ui {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Packet", text);
}

QString trn(const char *text, int count)
{
    return QCoreApplication::translate("Packet", text, nullptr, count);
}

QString titleOf(const Session &session, const IdSet<Closing> &closings)
{
    const auto records = session.records();
    const Closing *only = closings.size() == 1 ? records->find(closings.front()) : nullptr;
    return only ? toQt(only->title) : trn("%n closings", int(closings.size()));
}

/// What is worth knowing of one form besides its pages.
QString remarkOn(print::PacketForm form, const print::PacketMade &made)
{
    QStringList said;
    switch (form) {
    case print::PacketForm::Pdf:
        break;
    case print::PacketForm::Folder:
        said << trn("%n photographs are beside it in full size.", made.full_size);
        if (!made.missing.empty())
            said << trn("%n files were not in the project.", int(made.missing.size()));
        if (!made.altered.empty())
            said << trn("%n files are no longer what was taken in.", int(made.altered.size()));
        break;
    case print::PacketForm::Small:
        said << tr("It has %1 MB.").arg(QLocale().toString(double(made.bytes) / 1e6, 'f', 1));
        if (made.left_out > 0)
            said << trn("%n photographs are left out.", made.left_out);
        break;
    }
    return said.join(QLatin1Char(' '));
}

} // namespace

QString packetName(const Session &session, const IdSet<Closing> &closings)
{
    return printFileName(tr("Packet %1").arg(titleOf(session, closings)), session.today().text(),
                         {});
}

QString correctionsName(const Session &session, Id<Inspection> visit)
{
    const auto records = session.records();
    IdSet<Closing> closings;
    if (const Inspection *held = records->find(visit)) {
        for (const auto id : held->hold_point_ids) {
            const HoldPoint *point = records->find(id);
            if (point && std::ranges::find(closings, point->closing_id) == closings.end())
                closings.push_back(point->closing_id);
        }
    }
    return closings.empty() ? tr("Corrections report")
                            : tr("Corrections report %1").arg(titleOf(session, closings));
}

QString changesName(const Session &session, Id<HoldPoint> point)
{
    const auto records = session.records();
    const HoldPoint *signedAt = records->find(point);
    return signedAt ? tr("What changed since the signature, %1")
                          .arg(titleOf(session, {signedAt->closing_id}))
                    : tr("What changed since the signature");
}

void makePacket(Session &session, const PacketWish &wish)
{
    const auto made = std::make_shared<print::PacketMade>();
    const auto print = [records = session.records(), answer = session.answer(),
                        profile = session.project().profile(), folder = session.project().folder(),
                        wish,
                        made](const print::Imprint &imprint, const print::Pictures &pictures,
                              const print::OnPercent &onPercent) -> std::optional<print::Printed> {
        const print::PacketOrder order{
            .packet = packet::packetFor(*records, profile, *answer, wish.closings),
            .imprint = imprint,
            .choices = {wish.paper, print::wordingIn(print::languageFor(wish.language))},
            .form = wish.form,
            .place = toPath(wish.place)};
        const auto done = print::makePacket(order, *records, folder, pictures, onPercent);
        if (!done)
            return std::nullopt;
        *made = *done;
        return done->printed;
    };
    carryOut(session, {.title = tr("Packet for %1").arg(titleOf(session, wish.closings)),
                       .file = wish.place,
                       .print = print,
                       .remark = [made, form = wish.form] { return remarkOn(form, *made); },
                       .is_folder = wish.form == print::PacketForm::Folder});
}

void makeCorrectionsReport(Session &session, Id<Inspection> visit, const QString &file)
{
    const auto print = [records = session.records(), answer = session.answer(),
                        profile = session.project().profile(), choices = usualChoices(), visit,
                        file](const print::Imprint &imprint, const print::Pictures &pictures,
                              const print::OnPercent &onPercent) {
        const auto report = packet::correctionsReport(*records, profile, visit, answer->as_of);
        if (!report)
            throw Fault(toStd(tr("The visit is not on record as held.")));
        return print::printCorrections(*report, imprint, pictures, choices, toPath(file),
                                       onPercent);
    };
    carryOut(session, {tr("Corrections report"), file, print});
}

void makeChangesPage(Session &session, Id<HoldPoint> point, const QString &file)
{
    const auto print = [records = session.records(), answer = session.answer(),
                        profile = session.project().profile(), choices = usualChoices(), point,
                        file](const print::Imprint &imprint, const print::Pictures &pictures,
                              const print::OnPercent &onPercent) {
        const auto changes = packet::changesSince(*records, profile, *answer, point);
        if (!changes)
            throw Fault(toStd(tr("Nobody has signed there yet.")));
        return print::printChanges(*changes, imprint, pictures, choices, toPath(file), onPercent);
    };
    carryOut(session, {tr("What changed since the signature"), file, print});
}

QString askForPdf(QWidget *parent, const Session &session, const QString &name)
{
    const QString folder = documentsFolder();
    return askForNewFile(parent, tr("Where it goes"),
                         QDir(folder).filePath(printFileName(name, session.today().text())),
                         tr("PDF (*.pdf)"));
}

} // namespace lastrivet::ui
