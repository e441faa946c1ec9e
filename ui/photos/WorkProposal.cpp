// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/WorkProposal.h"

#include "core/project/acts/PhotoActs.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/MediaModel.h"
#include "ui/widgets/RecordNames.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <map>

namespace lastrivet::ui {

namespace {

constexpr std::size_t entriesNamed = 4;

/// "14 Mar 2026, 13:00, 2 h 15: LW-B3 Bay 3, riveted the ribs".
QString describe(const Records &records, const WorkSession &work)
{
    QStringList when{dateText(*work.began)};
    if (work.minutes)
        when.append(hoursText(*work.minutes));
    QStringList what{partName(records, work.component_id), toQt(work.note).section(u'\n', 0, 0)};
    what.removeAll(QString());
    const QString days = when.join(QStringLiteral(", "));
    return what.isEmpty() ? days : withColon(days, what.join(QStringLiteral(", ")));
}

} // namespace

Id<WorkSession> workThatFits(const evidence::SessionMatcher &matcher, const Media &media,
                             bool surely)
{
    const bool isMatched = std::ranges::any_of(media.links, [](const Media::Link &link) {
        return link.subject == RecordType::WorkSession;
    });
    if (media.withdrawn_on || media.kind == MediaKind::Document || !media.taken_on || isMatched)
        return {};
    const auto matches = matcher.matches(*media.taken_on);
    if (matches.empty() ||
        (surely && matches.front().fit != evidence::SessionMatch::Fit::WithinSpan))
        return {};
    return matches.front().session;
}

void confirmWork(Session &session, const std::vector<PhotoAndWork> &pairs)
{
    const Media *one = pairs.size() == 1 ? session.records()->find(pairs.front().first) : nullptr;
    const QString label =
        one ? WorkProposal::tr("%1: belongs to a log entry").arg(mediaTitle(*one))
            : WorkProposal::tr("%n photos belong to their log entries", nullptr, int(pairs.size()));
    session.change(label, [&](Edit &edit) {
        for (const auto &[media, work] : pairs) {
            if (edit.records().findLive(media) && edit.records().findLive(work))
                acts::linkToSession(edit, media, work);
        }
    });
}

WorkProposal::WorkProposal(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_words(new QLabel(this))
    , m_confirm(new QPushButton(this))
{
    m_words->setWordWrap(true);
    m_confirm->setToolTip(tr("M"));
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_words);
    layout->addWidget(m_confirm, 0, Qt::AlignLeft);
    connect(m_confirm, &QPushButton::clicked, this, &WorkProposal::confirm);
}

void WorkProposal::show(const std::vector<Id<Media>> &media)
{
    const auto records = m_session.records();
    m_pairs.clear();
    for (const Id<Media> id : media) {
        if (const auto work = workThatFits(matcher(), *records->find(id), false))
            m_pairs.emplace_back(id, work);
    }
    setVisible(!m_pairs.empty());
    if (m_pairs.empty())
        return;
    m_words->setText(words());
    m_confirm->setText(m_pairs.size() == 1
                           ? tr("It belongs there (M)")
                           : tr("All %n belong there (M)", nullptr, int(m_pairs.size())));
    m_confirm->setVisible(!m_session.isReadOnly());
}

const evidence::SessionMatcher &WorkProposal::matcher()
{
    if (!m_matcher || m_matched != m_session.records()) {
        m_matched = m_session.records();
        m_matcher.emplace(*m_matched);
    }
    return *m_matcher;
}

QString WorkProposal::words()
{
    const auto records = m_session.records();
    std::map<Id<WorkSession>, int> counts;
    for (const auto &[media, work] : m_pairs)
        ++counts[work];
    const bool isSure = std::ranges::all_of(m_pairs, [&](const PhotoAndWork &pair) {
        return bool(workThatFits(matcher(), *records->find(pair.first), true));
    });
    QStringList lines{isSure ? tr("Taken while this was done:")
                             : tr("Taken on the day of this work:")};
    for (const auto &[work, count] : counts) {
        if (lines.size() > qsizetype(entriesNamed)) {
            lines.append(tr("and %n more", nullptr, int(counts.size() - entriesNamed)));
            break;
        }
        const QString entry = describe(*records, *records->find(work));
        lines.append(m_pairs.size() == 1 ? entry
                                         : tr("%1 × %2").arg(QString::number(count), entry));
    }
    return lines.join(QLatin1Char('\n'));
}

void WorkProposal::confirm()
{
    if (!m_pairs.empty() && !m_session.isReadOnly())
        confirmWork(m_session, m_pairs);
}

} // namespace lastrivet::ui
