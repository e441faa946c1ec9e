// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hours/WishBar.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/NumberBox.h"
#include "ui/widgets/RecordLine.h"
#include "ui/widgets/RecordNames.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>

#include <algorithm>
#include <initializer_list>

namespace lastrivet::ui {

namespace {

constexpr int hoursOfAWeek = 168;
constexpr int lineWidth = 200;

} // namespace

WishBar::WishBar(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_hours(new NumberBox(this))
    , m_line(new RecordLine(session, RecordType::Component, this))
    , m_flow(new Flow(this))
{
    auto *hoursLabel = new QLabel(tr("Hours a week:"), this);
    m_hours->setRange(0, hoursOfAWeek);
    m_hours->setSpecialValueText(tr("as in the log"));
    m_hours->setAccessibleName(tr("Hours a week"));
    m_hours->setToolTip(tr("What the forecast reckons with; at 0 the pace of the last 26 weeks"));
    m_hours->setKeyboardTracking(false);
    auto *outLabel = new QLabel(tr("Leave out:"), this);
    m_line->setPlaceholderText(tr("a part, painting for one"));
    m_line->setAccessibleName(tr("Leave a part out of the forecast"));
    m_line->ensurePolished();
    // Its own words fit in every language, with room for the frame and the cursor.
    m_line->setFixedWidth(std::max(
        lineWidth, m_line->fontMetrics().horizontalAdvance(m_line->placeholderText()) + 32));
    // Their words stand at the middle of what they are about.
    for (QLabel *label : {hoursLabel, outLabel})
        label->setMinimumHeight(m_line->sizeHint().height());
    for (QWidget *widget : std::initializer_list<QWidget *>{hoursLabel, m_hours, outLabel, m_line})
        m_flow->addWidget(widget);
    connect(m_hours, &NumberBox::refused, &session, qOverload<const QString &>(&Session::complain));
    connect(m_hours, &NumberBox::valueChanged, this, [this](int hours) {
        auto wish = m_wish;
        wish.hours_per_week = hours > 0 ? std::optional(hours) : std::nullopt;
        keep(wish);
    });
    connect(m_line, &RecordLine::chosenByPerson, this, [this](qint64 id) {
        m_line->setChosen(0);
        if (id > 0)
            leaveOut(Id<Component>{id});
    });
    refresh();
}

void WishBar::refresh()
{
    const auto kept = ForecastWish::kept(m_session);
    m_isRead = kept.has_value();
    // What is shown stays while it cannot be read.
    m_wish = kept.value_or(m_wish);
    fill();
}

void WishBar::keep(const ForecastWish &wish)
{
    if (!m_isRead) {
        m_session.complain(tr("What was chosen for the forecast before could not be read. Nothing "
                              "is kept in its place; what can be read is shown now."));
        refresh();
        return;
    }
    m_wish = wish;
    m_wish.keep(m_session);
    fill();
    Q_EMIT changed();
}

void WishBar::leaveOut(Id<Component> part)
{
    auto wish = m_wish;
    const auto place = std::ranges::lower_bound(wish.without, part);
    if (place == wish.without.end() || *place != part)
        wish.without.insert(place, part);
    keep(wish);
}

void WishBar::takeBack(Id<Component> part)
{
    auto wish = m_wish;
    std::erase(wish.without, part);
    keep(wish);
    m_line->setFocus();
}

void WishBar::fill()
{
    const QSignalBlocker quiet(m_hours);
    m_hours->setValue(m_wish.hours_per_week.value_or(0));
    for (QWidget *chip : m_chips) {
        m_flow->removeWidget(chip);
        chip->hide();
        chip->deleteLater();
    }
    m_chips.clear();
    for (const auto part : m_wish.without) {
        const QString name = partName(*m_session.records(), part);
        auto *chip = flatButton(tr("%1 ✕", "take back in").arg(onButton(name)), this);
        chip->setAccessibleName(tr("Take %1 back into the forecast").arg(name));
        chip->setToolTip(chip->accessibleName());
        connect(chip, &QPushButton::clicked, this, [this, part] { takeBack(part); });
        m_flow->addWidget(chip);
        chip->show();
        m_chips.push_back(chip);
    }
}

} // namespace lastrivet::ui
