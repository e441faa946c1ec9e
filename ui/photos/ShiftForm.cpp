// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/ShiftForm.h"

#include "core/entry/ShiftText.h"
#include "core/project/acts/PhotoTimes.h"
#include "ui/convert/QtText.h"
#include "ui/photos/ShowsBar.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/MomentLine.h"
#include "ui/widgets/WrappedText.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// "1 h 30", "2 days".
QString lengthText(std::int64_t minutes)
{
    constexpr std::int64_t perDay = 24 * 60;
    const std::int64_t length = minutes < 0 ? -minutes : minutes;
    return length % perDay == 0 ? ShiftForm::tr("%n days", nullptr, int(length / perDay))
                                : hoursText(Minutes{length});
}

/// How many of those that are moved belong to a log entry.
int ofEntries(const Records &records, const acts::TimeShift &shift)
{
    return int(std::ranges::count_if(shift.moved, [&](const acts::TimeShift::Moved &one) {
        const Media *media = records.find(one.media);
        return media && std::ranges::any_of(media->links, [&](const Media::Link &link) {
                   return link.subject == RecordType::WorkSession &&
                          records.findLive(Id<WorkSession>{link.id});
               });
    }));
}

} // namespace

ShiftForm::ShiftForm(Session &session, QWidget *parent)
    : ActForm(tr("Shift the times"), parent)
    , m_session(session)
    , m_how(new QComboBox(this))
    , m_length(new QLineEdit(this))
    , m_first(new MomentLine(session, this))
    , m_what(wrappedLabel({}, this))
{
    m_how->addItems({tr("later by"), tr("earlier by"), tr("the first was taken at")});
    m_length->setPlaceholderText(tr("1h30, 90 min, 2 days"));
    // Beside a label it has no room in the narrow column in every language.
    m_how->setAccessibleName(tr("How"));
    addWide(m_how);
    addField(tr("Length of time"), m_length);
    addField(tr("First taken at"), m_first);
    addWide(m_what);
    connect(m_how, &QComboBox::currentIndexChanged, this, &ShiftForm::choose);
    connect(m_length, &QLineEdit::textChanged, this, &ShiftForm::tell);
    connect(m_first, &QLineEdit::textChanged, this, &ShiftForm::tell);
    // Forty thousand photos would be looked at again with every change of the records.
    connect(this, &ActForm::left, this, [this] { m_media.clear(); });
    hide();
}

void ShiftForm::start(const std::vector<Id<Media>> &media)
{
    m_media = media;
    const auto records = m_session.records();
    setTitle(tr("Shift the times of: %1").arg(breakable(nameOf(m_session, media))));
    const Media *timed = acts::takenFirst(*records, media, true);
    const Media *first = timed ? timed : acts::takenFirst(*records, media, false);
    // Undo is about what is on record from here on, not about the words of an earlier form.
    m_length->setText({});
    m_first->setMoment(first ? first->taken_on : std::nullopt);
    m_how->setCurrentIndex(Later);
    choose();
    hint({});
    show();
    noteFields();
    m_length->setFocus();
}

void ShiftForm::choose()
{
    const bool isFirst = m_how->currentIndex() == FirstTaken;
    setFieldVisible(m_length, !isFirst);
    setFieldVisible(m_first, isFirst);
    tell();
}

void ShiftForm::recordsChanged()
{
    const auto records = m_session.records();
    std::erase_if(m_media, [&](Id<Media> id) { return !records->findLive(id); });
    tell();
}

/// By how much the times are moved by what is typed; empty when that says nothing.
std::optional<std::int64_t> ShiftForm::minutes() const
{
    if (m_how->currentIndex() == FirstTaken) {
        const auto first = m_first->moment();
        return first ? acts::minutesUntil(*m_session.records(), m_media, *first) : std::nullopt;
    }
    const auto length = entry::readShift(toStd(m_length->text()));
    return length && m_how->currentIndex() == Earlier ? std::optional(-*length) : length;
}

QString ShiftForm::whyNot() const
{
    const auto records = m_session.records();
    if (!acts::takenFirst(*records, m_media, false))
        return tr("It is not known when they were taken; there is no time to shift.");
    if (m_how->currentIndex() == FirstTaken) {
        if (const QString why = m_first->whyNotHappened(m_session.now()); !why.isEmpty())
            return why;
    }
    const auto moved = minutes();
    if (!moved && m_how->currentIndex() == FirstTaken)
        return tr("Of none of them the time of day is known: say the day alone.");
    if (!moved)
        return tr("By how much? Write it as 1h30, 90 min or 2 days.");
    const acts::TimeShift shift = acts::timeShift(*records, m_media, *moved);
    if (!shift.beyond.empty())
        return tr("So far they would lie outside the years 1900 to 2199.");
    if (shift.moved.empty())
        return *moved == 0 ? tr("That is what their times are already.")
                           : tr("Only their days are known: shift them by whole days.");
    return {};
}

/// What the first and the last of them become, and how many are left.
void ShiftForm::tell()
{
    const auto moved = minutes();
    const acts::TimeShift shift =
        moved ? acts::timeShift(*m_session.records(), m_media, *moved) : acts::TimeShift{};
    QStringList lines;
    if (!shift.moved.empty()) {
        const auto &first = shift.moved.front();
        const auto &last = shift.moved.back();
        lines.append(tr("First: %1 becomes %2.").arg(dateText(first.was), dateText(first.becomes)));
        if (shift.moved.size() > 1)
            lines.append(
                tr("Last: %1 becomes %2.").arg(dateText(last.was), dateText(last.becomes)));
        const Moment now = m_session.now();
        const auto ahead = std::ranges::count_if(
            shift.moved, [now](const auto &one) { return after(one.becomes, now); });
        if (ahead > 0)
            lines.append(tr("%n would lie ahead of now.", nullptr, int(ahead)));
        // By its wrong time a photo may have been given to the wrong one.
        if (const int linked = ofEntries(*m_session.records(), shift); linked > 0)
            lines.append(tr("%n belong to log entries and stay with them.", nullptr, linked));
    }
    if (!shift.left.empty())
        lines.append(
            tr("%n stay as they are: their time is not known.", nullptr, int(shift.left.size())));
    m_what->setText(lines.join(QLatin1Char('\n')));
}

bool ShiftForm::perform()
{
    if (const QString why = whyNot(); !why.isEmpty()) {
        hint(why);
        return false;
    }
    const std::int64_t by = *minutes();
    std::vector<Id<Media>> moved;
    for (const auto &one : acts::timeShift(*m_session.records(), m_media, by).moved)
        moved.push_back(one.media);
    const QString label =
        by < 0 ? tr("%1: times shifted back by %2") : tr("%1: times shifted forward by %2");
    return m_session.change(label.arg(nameOf(m_session, moved), lengthText(by)),
                            [&](Edit &edit) { acts::shiftTimes(edit, moved, by); });
}

} // namespace lastrivet::ui
