// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotoDetail.h"

#include "core/evidence/SessionMatcher.h"
#include "core/project/acts/PhotoActs.h"
#include "core/records/Designation.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/MediaModel.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/RecordLine.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/WithdrawAct.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace lastrivet::ui {

namespace {

constexpr std::array assignable{RecordType::Component, RecordType::Squawk, RecordType::Closing,
                                RecordType::Step,      RecordType::Deviation,
                                RecordType::WorkSession};

} // namespace

PhotoDetail::PhotoDetail(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_heading(new QLabel(this))
    , m_matchWords(new QLabel(this))
    , m_matchButton(new QPushButton(tr("It belongs there"), this))
    , m_ask(new ActLine(session, this))
    , m_form(new RecordForm(session, RecordType::Media,
                            {{"caption", true}, {"taken_on"}, {"note", true}}, this))
    , m_links(new QVBoxLayout)
    , m_kind(new QComboBox(this))
    , m_lines(new QStackedWidget(this))
{
    build();
}

void PhotoDetail::build()
{
    m_heading->setFont(m_session.theme().font(1));
    m_heading->setWordWrap(true);
    m_matchWords->setWordWrap(true);
    m_matchButton->setToolTip(tr("M"));
    auto *removal = new QPushButton(tr("Withdraw"), this);
    removal->setProperty("flat", true);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 0, 8, 8);
    layout->setSpacing(8);
    layout->addWidget(m_heading);
    layout->addWidget(m_ask);
    layout->addWidget(m_matchWords);
    layout->addWidget(m_matchButton, 0, Qt::AlignLeft);
    layout->addWidget(new QLabel(tr("It shows"), this));
    layout->addWidget(buildShows());
    layout->addWidget(new QLabel(tr("It belongs to"), this));
    layout->addLayout(m_links);
    layout->addWidget(buildAssign());
    layout->addWidget(m_form);
    layout->addWidget(removal, 0, Qt::AlignLeft);
    layout->addStretch(1);
    connect(m_matchButton, &QPushButton::clicked, this, &PhotoDetail::confirmMatch);
    connect(removal, &QPushButton::clicked, this, &PhotoDetail::withdrawAll);
    connect(m_ask, &ActLine::ended, this, &PhotoDetail::finished);
}

QWidget *PhotoDetail::buildShows()
{
    auto *bar = new QWidget(this);
    auto *flow = new Flow(bar);
    for (std::size_t i = 0; i < Words<Shows>::list.size(); ++i) {
        auto *button = new QPushButton(plainWord(Words<Shows>::list[i]), bar);
        button->setCheckable(true);
        flow->addWidget(button);
        m_shows.push_back(button);
        connect(button, &QPushButton::clicked, this,
                [this, i](bool isShown) { setShows(Shows(i), isShown); });
    }
    return bar;
}

QWidget *PhotoDetail::buildAssign()
{
    m_kind->setAccessibleName(tr("Kind of record"));
    for (const RecordType type : assignable) {
        m_kind->addItem(toQt(noun(type)));
        auto *line = new RecordLine(m_session, type, m_lines);
        line->setPlaceholderText(tr("type a few letters"));
        line->setAccessibleName(tr("Assign to %1").arg(toQt(noun(type))));
        m_lines->addWidget(line);
        connect(line, &RecordLine::chosenByPerson, this, [this, type, line](qint64 id) {
            line->setChosen(0);
            if (id)
                link(type, id);
        });
    }
    m_lines->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(m_kind, &QComboBox::currentIndexChanged, m_lines, &QStackedWidget::setCurrentIndex);
    auto *bar = new QWidget(this);
    auto *layout = new QHBoxLayout(bar);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_kind);
    layout->addWidget(m_lines, 1);
    return bar;
}

QString PhotoDetail::name() const
{
    if (m_media.size() != 1)
        return tr("%n photos", nullptr, int(m_media.size()));
    return mediaTitle(*m_session.records()->find(m_media.front()));
}

void PhotoDetail::show(const std::vector<Id<Media>> &media)
{
    if (media != m_media && m_ask->isVisible())
        m_ask->leave();
    m_media = media;
    m_form->show(media.size() == 1 ? media.front().value() : 0);
    m_form->setVisible(media.size() == 1);
    refresh();
}

void PhotoDetail::apply(const ChangeNotice &notice)
{
    std::erase_if(m_media, [&](Id<Media> id) { return !notice.after->findLive(id); });
    m_form->apply(notice);
    refresh();
}

void PhotoDetail::refresh()
{
    const auto records = m_session.records();
    setVisible(!m_media.empty());
    if (m_media.empty())
        return;
    m_heading->setText(name());
    for (std::size_t i = 0; i < m_shows.size(); ++i) {
        const bool isShown = std::ranges::all_of(m_media, [&](Id<Media> id) {
            return records->find(id)->shows.contains(Shows(i));
        });
        m_shows[i]->setChecked(isShown);
    }
    fillLinks();
    fillMatch();
}

std::vector<Media::Link> PhotoDetail::commonLinks() const
{
    const auto records = m_session.records();
    std::vector<Media::Link> links = records->find(m_media.front())->links;
    for (const auto id : m_media) {
        const auto &own = records->find(id)->links;
        std::erase_if(links, [&](const Media::Link &link) {
            return std::ranges::find(own, link) == own.end();
        });
    }
    return links;
}

void PhotoDetail::fillLinks()
{
    while (QLayoutItem *item = m_links->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    const auto records = m_session.records();
    for (const Media::Link &link : commonLinks()) {
        const RecordRef record{link.subject, link.id};
        auto *row = new QWidget(this);
        const QString title = QStringLiteral("%1: %2").arg(toQt(noun(link.subject)),
                                                           shortName(*records, record));
        auto *open = new QPushButton(title, row);
        open->setProperty("flat", true);
        open->setToolTip(tr("Go there"));
        auto *removal = new QPushButton(tr("Remove"), row);
        removal->setProperty("flat", true);
        removal->setAccessibleName(tr("Remove %1").arg(title));
        auto *layout = new QHBoxLayout(row);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->addWidget(open);
        layout->addStretch(1);
        layout->addWidget(removal);
        open->setMaximumWidth(360);
        m_links->addWidget(row);
        connect(open, &QPushButton::clicked, this, [this, record] { m_session.goTo(record); });
        connect(removal, &QPushButton::clicked, this, [this, record] { unlink(record); });
    }
}

/// Proposes the log entry during which the picture was taken, unless it belongs to one already.
void PhotoDetail::fillMatch()
{
    const auto records = m_session.records();
    m_match = {};
    const Media &first = *records->find(m_media.front());
    const bool isMatched = std::ranges::any_of(first.links, [](const Media::Link &link) {
        return link.subject == RecordType::WorkSession;
    });
    if (first.taken_on && !isMatched) {
        const auto matches = evidence::SessionMatcher(*records).matches(*first.taken_on);
        if (!matches.empty())
            m_match = matches.front().session;
    }
    m_matchWords->setVisible(bool(m_match));
    m_matchButton->setVisible(bool(m_match) && !m_session.isReadOnly());
    if (!m_match)
        return;
    const WorkSession &work = *records->find(m_match);
    const QString part = partName(*records, work.component_id);
    m_matchWords->setText(
        tr("Taken %1; the log has %2 of that day: %3")
            .arg(dateText(*first.taken_on), work.minutes ? hoursText(*work.minutes) : tr("work"),
                 part.isEmpty() ? toQt(work.note)
                                : QStringLiteral("%1, %2").arg(part, toQt(work.note))));
}

void PhotoDetail::confirmMatch()
{
    if (!m_match || m_media.empty())
        return;
    const auto session = m_match;
    m_session.change(tr("%1: belongs to a log entry").arg(name()), [&](Edit &edit) {
        for (const auto id : m_media)
            acts::linkToSession(edit, id, session);
    });
}

void PhotoDetail::link(RecordType type, std::int64_t id)
{
    const RecordRef record{type, id};
    const QString to = shortName(*m_session.records(), record);
    m_session.change(tr("%1: belongs to %2").arg(name(), to), [&](Edit &edit) {
        for (const auto media : m_media)
            acts::linkMedia(edit, media, record);
    });
}

void PhotoDetail::unlink(RecordRef record)
{
    const QString from = shortName(*m_session.records(), record);
    m_session.change(tr("%1: does not belong to %2").arg(name(), from), [&](Edit &edit) {
        for (const auto media : m_media)
            acts::unlinkMedia(edit, media, record);
    });
}

void PhotoDetail::setShows(Shows what, bool isShown)
{
    const QString label = isShown ? tr("%1: shows %2") : tr("%1: does not show %2");
    m_session.change(label.arg(name(), plainWord(word(what))), [&](Edit &edit) {
        for (const auto media : m_media)
            acts::setShown(edit, media, what, isShown);
    });
}

void PhotoDetail::assign()
{
    if (m_media.empty())
        return;
    m_kind->setCurrentIndex(0);
    m_lines->currentWidget()->setFocus();
}

void PhotoDetail::withdrawAll()
{
    if (m_media.empty() || m_session.isReadOnly())
        return;
    std::vector<RecordRef> records;
    for (const auto id : m_media)
        records.push_back({RecordType::Media, id.value()});
    askToWithdraw(m_session, *m_ask, records);
}

} // namespace lastrivet::ui
