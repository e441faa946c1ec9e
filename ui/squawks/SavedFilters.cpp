// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SavedFilters.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QStringList>

#include <algorithm>

namespace lastrivet::ui {

namespace {

// One filter a line, its fields between tabs; the first line is the one last in use, without name.
constexpr std::string_view key = "squawk_filters";
constexpr qsizetype fieldCount = 8;
enum Field { Name, Standing, OfSeverity, Part, Verifier, OfInspection, InReach, Words };

QString onOneLine(QString text)
{
    return text.replace(QLatin1Char('\t'), QLatin1Char(' '))
        .replace(QLatin1Char('\n'), QLatin1Char(' '))
        .trimmed();
}

template <class Word> QString wordText(const std::optional<Word> &value)
{
    return value ? toQt(word(*value)) : QString();
}

QString lineOf(const QString &name, const readiness::SquawkFilter &filter)
{
    return QStringList{onOneLine(name),
                       toQt(word(filter.standing)),
                       wordText(filter.severity),
                       QString::number(filter.part.value()),
                       wordText(filter.verifier),
                       QString::number(filter.inspection.value()),
                       wordText(filter.reachable),
                       onOneLine(toQt(filter.text))}
        .join(QLatin1Char('\t'));
}

/// What the records no longer know is left out.
readiness::SquawkFilter filterIn(const QStringList &fields, const Records &records)
{
    readiness::SquawkFilter filter;
    filter.standing = parseWord<readiness::SquawkFilter::Standing>(toStd(fields[Standing]))
                          .value_or(filter.standing);
    filter.severity = parseWord<Severity>(toStd(fields[OfSeverity]));
    filter.part = Id<Component>{fields[Part].toLongLong()};
    filter.verifier = parseWord<SignerRole>(toStd(fields[Verifier]));
    filter.inspection = Id<Inspection>{fields[OfInspection].toLongLong()};
    filter.reachable = parseWord<readiness::Reachable>(toStd(fields[InReach]));
    filter.text = toStd(fields[Words]);
    if (!records.findLive(filter.part))
        filter.part = {};
    if (!records.findLive(filter.inspection))
        filter.inspection = {};
    return filter;
}

bool byName(const SavedFilters::Named &a, const SavedFilters::Named &b)
{
    return QString::localeAwareCompare(a.name, b.name) < 0;
}

} // namespace

SavedFilters::SavedFilters(Session &session)
    : m_session(session)
{
    load();
}

void SavedFilters::load()
{
    const auto records = m_session.records();
    const LocalState stored = m_session.localState(key);
    m_isRead = stored.isRead;
    const QString lines = toQt(stored.value.value_or(""));
    for (const QString &line : lines.split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
        const QStringList fields = line.split(QLatin1Char('\t'));
        if (fields.size() != fieldCount)
            continue;
        if (fields[Name].isEmpty())
            m_last = filterIn(fields, *records);
        else if (!find(fields[Name]))
            m_all.push_back({fields[Name], filterIn(fields, *records)});
    }
}

void SavedFilters::store()
{
    if (m_session.isReadOnly())
        return;
    if (!m_isRead) {
        // The filter in use is the person's; the last one of another day is not worth its place.
        const Filter inUse = m_last;
        load();
        m_last = inUse;
        std::ranges::sort(m_all, byName);
    }
    if (!m_isRead)
        return;
    QStringList lines{lineOf({}, m_last)};
    for (const Named &named : m_all)
        lines.append(lineOf(named.name, named.filter));
    m_session.keepLocalState(key, lines.join(QLatin1Char('\n')).toStdString());
}

const SavedFilters::Named *SavedFilters::find(const QString &name) const
{
    const auto found = std::ranges::find_if(m_all, [&](const Named &named) {
        return named.name.compare(onOneLine(name), Qt::CaseInsensitive) == 0;
    });
    return found == m_all.end() ? nullptr : &*found;
}

void SavedFilters::save(const QString &name, const Filter &filter)
{
    if (const Named *known = find(name))
        m_all[std::size_t(known - m_all.data())].filter = filter;
    else
        m_all.push_back({onOneLine(name), filter});
    std::ranges::sort(m_all, byName);
    store();
}

void SavedFilters::rename(const QString &from, const QString &to)
{
    const Named *known = find(from);
    if (!known)
        return;
    const Named old = *known;
    std::erase_if(m_all, [&](const Named &named) { return named.name == old.name; });
    save(to, old.filter);
}

void SavedFilters::remove(const QString &name)
{
    std::erase_if(m_all, [&](const Named &named) { return named.name == name; });
    store();
}

void SavedFilters::keepLast(const Filter &filter)
{
    if (filter == m_last)
        return;
    m_last = filter;
    store();
}

} // namespace lastrivet::ui
