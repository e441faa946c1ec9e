// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/PacketTask.h"

#include "core/packet/Packet.h"
#include "ui/convert/QtText.h"
#include "ui/print/PacketPrinter.h"
#include "ui/prints/PrintTask.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>

namespace lastrivet::ui {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Packet", text);
}

QString titleOf(const Session &session, const IdSet<Closing> &closings)
{
    if (closings.size() != 1)
        return tr("%1 closings").arg(closings.size());
    return toQt(session.records()->find(closings.front())->title);
}

} // namespace

QString packetFileName(const Session &session, const IdSet<Closing> &closings)
{
    return printFileName(tr("Packet %1").arg(titleOf(session, closings)), session.today().text());
}

void makePacket(Session &session, const IdSet<Closing> &closings, const QString &file)
{
    const auto print = [records = session.records(), answer = session.answer(),
                        profile = session.project().profile(), closings, file,
                        choices = usualChoices()](const print::Imprint &imprint,
                                                  const print::Pictures &pictures,
                                                  const print::OnPercent &onPercent) {
        return print::printPacket(packet::packetFor(*records, profile, *answer, closings), imprint,
                                  pictures, choices, toPath(file), onPercent);
    };
    carryOut(session, {tr("Packet for %1").arg(titleOf(session, closings)), file, print});
}

} // namespace lastrivet::ui
