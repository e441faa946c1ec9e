// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/MatchBar.h"

#include "core/evidence/SessionMatcher.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <memory>

namespace lastrivet::ui {

namespace {

/// Only photos that were taken while the work was going on: nobody has to look at each.
std::vector<PhotoAndWork> surePairs(const Records &records)
{
    std::vector<PhotoAndWork> pairs;
    const evidence::SessionMatcher matcher(records);
    for (const Media &media : records.media) {
        if (const auto work = workThatFits(matcher, media, true))
            pairs.emplace_back(media.id, work);
    }
    return pairs;
}

} // namespace

MatchBar::MatchBar(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_words(new QLabel(this))
{
    auto *confirmAll = new QPushButton(tr("Confirm them all"), this);
    confirmAll->setToolTip(tr("Shift+M"));
    auto *look = flatButton(tr("Show them"), this);
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_words);
    layout->addWidget(confirmAll);
    layout->addWidget(look);
    layout->addStretch(1);
    connect(confirmAll, &QPushButton::clicked, this, &MatchBar::confirm);
    connect(look, &QPushButton::clicked, this, [this] {
        std::vector<qint64> media;
        for (const PhotoAndWork &pair : m_pairs)
            media.push_back(pair.first.value());
        Q_EMIT shown(media);
    });
    hide();
}

void MatchBar::refresh()
{
    const auto found = std::make_shared<std::vector<PhotoAndWork>>();
    m_asked = m_session.records();
    m_session.executor().run(
        this, [records = m_asked, found] { *found = surePairs(*records); },
        [this, records = m_asked, found] {
            if (records == m_asked)
                take(*found);
        });
}

void MatchBar::take(const std::vector<PhotoAndWork> &pairs)
{
    m_pairs = pairs;
    setVisible(!pairs.empty() && !m_session.isReadOnly());
    m_words->setText(
        tr("%n photos were taken during work that is in the log.", nullptr, int(pairs.size())));
}

void MatchBar::confirm()
{
    if (!m_pairs.empty() && !m_session.isReadOnly())
        confirmWork(m_session, m_pairs);
}

} // namespace lastrivet::ui
