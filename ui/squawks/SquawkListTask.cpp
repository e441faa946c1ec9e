// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkListTask.h"

#include "core/base/Error.h"
#include "core/exchange/csv/SquawkListCsv.h"
#include "ui/convert/QtText.h"
#include "ui/print/SquawkListPrinter.h"
#include "ui/prints/PrintTask.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>
#include <QFileInfo>

#include <memory>

namespace lastrivet::ui {

namespace {

QString tr(const char *text, int count = -1)
{
    return QCoreApplication::translate("SquawkList", text, nullptr, count);
}

} // namespace

void printSquawks(Session &session, const SquawkListing &listing, const QString &file)
{
    const QString title = tr("List of squawks");
    const auto list = std::make_shared<packet::SquawkList>(
        packet::squawkList(*session.records(), session.project().profile(), *session.answer(),
                           listing.list, listing.filter));
    carryOut(session, {.title = title,
                       .file = file,
                       .print = [list, place = toPath(file)](const print::Imprint &imprint,
                                                             const print::Pictures &,
                                                             const print::OnPercent &onPercent) {
                           return print::printSquawkList(*list, imprint, usualChoices(), place,
                                                         onPercent);
                       }});
}

void exportSquawks(Session &session, const SquawkListing &listing, const QString &file)
{
    try {
        exchange::writeSquawkListFile(*session.records(), listing.list, session.today(),
                                      toPath(file));
        session.say(tr("%n squawks were written to %1.", int(listing.list.size()))
                        .arg(QFileInfo(file).fileName()));
    } catch (const Fault &fault) {
        session.complain(fault);
    }
}

} // namespace lastrivet::ui
