// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotoBar.h"

#include "core/evidence/PartsOf.h"
#include "ui/parts/SectionModel.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/RecordLine.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>

#include <algorithm>
#include <initializer_list>

namespace lastrivet::ui {

namespace {

constexpr int leastPart = 240;

} // namespace

PhotoBar::PhotoBar(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_flow(new Flow(this))
    , m_take(new QPushButton(tr("Take photos in"), this))
    , m_which(new QComboBox(this))
    , m_part(new RecordLine(session, RecordType::Component, this))
    , m_order(new QComboBox(this))
    , m_missing(new QPushButton(this))
    , m_count(new QLabel(this))
{
    build();
    update();
}

void PhotoBar::build()
{
    const Theme &theme = m_session.theme();
    m_take->setProperty("primary", true);
    m_take->setIcon(theme.icon(QStringLiteral("actions/camera"), theme.colours().accentText));
    m_take->setEnabled(!m_session.isReadOnly());
    m_which->addItems({tr("All"), tr("Belonging to no part"), tr("Of a part"), tr("Papers"),
                       tr("What is missing")});
    m_which->setAccessibleName(tr("Which photos"));
    m_part->setPlaceholderText(tr("part"));
    m_part->setAccessibleName(tr("Photos of this part and below"));
    m_order->addItems({tr("by date"), tr("by part")});
    m_order->setAccessibleName(tr("Order"));
    m_missing->setProperty("flat", true);
    // A part is named by where it lies, too.
    m_part->setMinimumWidth(leastPart);
    for (QWidget *widget :
         std::initializer_list<QWidget *>{m_take, m_which, m_part, m_order, m_missing, m_count})
        m_flow->addWidget(widget);
    connect(m_take, &QPushButton::clicked, this, &PhotoBar::takeInWanted);
    connect(m_which, &QComboBox::currentIndexChanged, this, &PhotoBar::update);
    connect(m_order, &QComboBox::currentIndexChanged, this, &PhotoBar::update);
    connect(m_part, &RecordLine::chosenByPerson, this, &PhotoBar::update);
    connect(m_missing, &QPushButton::clicked, this, [this] { choose(Which::Missing); });
}

void PhotoBar::add(QWidget *button)
{
    m_flow->insertWidget(1, button);
}

void PhotoBar::update()
{
    m_part->setVisible(which() == Which::OfPart);
    m_order->setVisible(which() != Which::Papers && which() != Which::Missing);
    m_count->setVisible(which() != Which::Missing);
    Q_EMIT changed();
}

PhotoBar::Which PhotoBar::which() const
{
    return Which(m_which->currentIndex());
}

void PhotoBar::choose(Which which)
{
    m_which->setCurrentIndex(int(which));
}

PhotoOrder PhotoBar::order() const
{
    return m_order->isVisibleTo(this) ? PhotoOrder(m_order->currentIndex()) : PhotoOrder::ByDate;
}

void PhotoBar::chooseOrder(PhotoOrder order)
{
    m_order->setCurrentIndex(int(order));
}

Id<Component> PhotoBar::part() const
{
    return which() == Which::OfPart ? Id<Component>{m_part->chosen()} : Id<Component>{};
}

PhotoFilter PhotoBar::filter() const
{
    const auto wanted = which();
    const auto parts = part() ? partsShown(*m_session.records(), part(), true)
                              : std::unordered_set<std::int64_t>{};
    return [wanted, parts](const Records &records, const Media &media) {
        const bool isPaper = media.kind == MediaKind::Document;
        if (isPaper || wanted == Which::Papers)
            return isPaper && wanted == Which::Papers;
        if (wanted == Which::Unassigned)
            return evidence::isUnassigned(records, media);
        if (wanted != Which::OfPart || parts.empty())
            return true;
        return std::ranges::any_of(evidence::partsOf(records, media), [&](Id<Component> part) {
            return parts.contains(part.value());
        });
    };
}

void PhotoBar::showCount(int files)
{
    m_count->setText(tr("%n shown", nullptr, files));
}

void PhotoBar::showMissing(int places)
{
    m_missing->setVisible(places > 0 && which() != Which::Missing);
    m_missing->setText(tr("%n places lack photos", nullptr, places));
}

} // namespace lastrivet::ui
