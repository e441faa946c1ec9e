// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/UnkeptHold.h"

#include "core/records/Description.h"
#include "core/records/Records.h"
#include "ui/shell/Session.h"

namespace lastrivet::ui {

UnkeptHold::UnkeptHold(Session &session, const UnkeptWords &words, QWidget *parent)
    : Unfinished(parent)
    , m_session(session)
    , m_words(words)
{
    hide();
}

bool UnkeptHold::isThere(RecordRef record) const
{
    const auto records = m_session.records();
    const void *known = records->find(record.type, record.id);
    return known && !isWithdrawn(describe(record.type), known);
}

RecordRef UnkeptHold::firstThere() const
{
    for (const auto &[record, words] : m_words.all()) {
        if (isThere(record))
            return record;
    }
    return {RecordType::Project, 0};
}

QStringList UnkeptHold::contents() const
{
    QStringList all;
    for (const auto &[record, places] : m_words.all()) {
        if (!isThere(record))
            continue;
        all.append(QString::number(record.id));
        for (const auto &[place, words] : places)
            all.append(words);
    }
    return all;
}

QString UnkeptHold::heldBackWords() const
{
    return unkeptSentence();
}

QString UnkeptHold::unkeptSentence()
{
    return tr("What was typed here is not on record, as it could not be kept. Type it once more "
              "when that is possible, or do the same once more to leave without it.");
}

void UnkeptHold::takeKeyboard()
{
    if (const RecordRef record = firstThere(); record.id != 0)
        m_session.goTo(record);
}

} // namespace lastrivet::ui
