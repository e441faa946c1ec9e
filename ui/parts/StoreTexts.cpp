// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionTexts.h"

#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

// Packing lines and materials of a part.
namespace lastrivet::ui::texts {

namespace {

template <class Record> const Record &find(const Session &session, std::int64_t id)
{
    return *session.records()->find(Id<Record>{id});
}

} // namespace

QString partLineName(const Session &session, std::int64_t id)
{
    return toQt(find<PartLine>(session, id).name);
}

QString partLineWanted(const Session &session, std::int64_t id)
{
    return QLocale().toString(qlonglong(find<PartLine>(session, id).quantity));
}

QString partLineReceived(const Session &session, std::int64_t id)
{
    const PartLine &line = find<PartLine>(session, id);
    if (!line.received_on)
        return QCoreApplication::translate("Section", "not yet");
    const QString count = QLocale().toString(qlonglong(line.received_quantity));
    if (line.damaged_quantity == 0)
        return count;
    return QCoreApplication::translate("Section", "%1, damaged %2")
        .arg(count, QLocale().toString(qlonglong(line.damaged_quantity)));
}

bool writeReceived(Edit &edit, std::int64_t id, const QString &text)
{
    bool isNumber = false;
    const qlonglong count = QLocale().toLongLong(text, &isNumber);
    if (!isNumber || count < 0)
        return false;
    edit.update(Id<PartLine>{id}, [&](PartLine &line) {
        line.received_quantity = count;
        if (!line.received_on)
            line.received_on = edit.today();
    });
    return true;
}

QString materialName(const Session &session, std::int64_t id)
{
    QStringList names;
    for (const auto lot : find<MaterialUse>(session, id).lot_ids)
        names.append(toQt(session.records()->find(lot)->name));
    return names.join(QStringLiteral(" + "));
}

QString materialUsed(const Session &session, std::int64_t id)
{
    return dateText(find<MaterialUse>(session, id).used_on);
}

QString materialSample(const Session &session, std::int64_t id)
{
    return plainWord(word(find<MaterialUse>(session, id).sample));
}

} // namespace lastrivet::ui::texts
