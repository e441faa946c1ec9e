// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/UnkeptWords.h"

namespace lastrivet::ui {

const QString *UnkeptWords::find(RecordRef record, const std::string &place) const
{
    const auto known = m_all.find(record);
    if (known == m_all.end())
        return nullptr;
    const auto words = known->second.find(place);
    return words == known->second.end() ? nullptr : &words->second;
}

void UnkeptWords::keep(RecordRef record, const std::string &place, const QString &words)
{
    m_all[record][place] = words;
}

void UnkeptWords::drop(RecordRef record, const std::string &place)
{
    const auto known = m_all.find(record);
    if (known == m_all.end())
        return;
    known->second.erase(place);
    if (known->second.empty())
        m_all.erase(known);
}

} // namespace lastrivet::ui
