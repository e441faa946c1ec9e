// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionActs.h"

#include "core/base/Error.h"
#include "core/evidence/IntakeStore.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>

// Letters, drawings and pictures that go with a record.
namespace lastrivet::ui::sections {

bool attachFiles(Session &session, const PartSection &section, std::int64_t id,
                 const QStringList &files)
{
    std::vector<evidence::IncomingFile> incoming;
    for (const QString &file : files) {
        evidence::IncomingFile one;
        one.path = toPath(file);
        incoming.push_back(std::move(one));
    }
    evidence::IntakeReport report;
    try {
        report = evidence::takeIn(session.project(), incoming, 1);
    } catch (const Fault &fault) {
        session.complain(fault);
        return false;
    }
    auto taken = report.taken;
    taken.insert(taken.end(), report.already_there.begin(), report.already_there.end());
    const QString name = shortName(*session.records(), {section.type, id});
    const bool isDone =
        !taken.empty() &&
        session.change(QCoreApplication::translate("SectionActs", "%1: %n files attached", nullptr,
                                                   int(taken.size()))
                           .arg(name),
                       [&](Edit &edit) {
                           for (const Id<Media> file : taken)
                               section.attach(edit, id, file);
                       });
    if (!report.failures.empty())
        session.complain(inWords(report.failures.front().why));
    return isDone;
}

} // namespace lastrivet::ui::sections
