// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/AirframePanel.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/today/ZoneRows.h"
#include "ui/widgets/AirframePicture.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/RecordNames.h"

#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

namespace {

/// A choice of this computer's, not a record: it changes no fact about the aeroplane.
constexpr std::string_view drawingKey = "airframe_drawing";
/// Longer menus do not fit small screens.
constexpr std::size_t partsListed = 20;
/// Room for what most zones say.
constexpr int whyLines = 3;
/// A taller picture would push its key below the fold of a small screen.
constexpr int tallestPicture = 340;

} // namespace

AirframePanel::AirframePanel(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_picture(new AirframePicture(session.theme(), this))
    , m_why(new QLabel(this))
    , m_elsewhere(new QPushButton(this))
    , m_drawing(new QPushButton(this))
    , m_elsewhereMenu(new QMenu(this))
    , m_drawingMenu(new QMenu(this))
{
    build();
}

void AirframePanel::build()
{
    m_why->setWordWrap(true);
    m_why->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_picture->setMaximumHeight(tallestPicture);
    // Its height stays the same, so that nothing jumps while the mouse moves.
    m_why->setMinimumHeight(whyLines * m_why->fontMetrics().lineSpacing());
    m_elsewhere->setProperty("flat", true);
    m_elsewhere->setMenu(m_elsewhereMenu);
    m_drawing->setProperty("flat", true);
    m_drawing->setMenu(m_drawingMenu);
    auto *buttons = new QWidget(this);
    auto *flow = new Flow(buttons);
    flow->addWidget(m_elsewhere);
    flow->addWidget(m_drawing);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(m_picture);
    layout->addWidget(m_why);
    layout->addWidget(buttons);
    connect(m_picture, &AirframePicture::lookedAt, this, &AirframePanel::say);
    connect(m_picture, &AirframePicture::chosen, &m_session, &Session::goTo);
}

void AirframePanel::showAnswer()
{
    const auto records = m_session.records();
    const auto answer = m_session.answer();
    const auto own = airframe::kindOfAircraft(*records);
    const auto kind = chosenKind().value_or(own);
    m_drawn = airframe::airframe(*records, *answer, kind);
    m_picture->show(kind, zoneRows(m_drawn, *records, *answer));
    fillDrawings(own);
    fillElsewhere();
    say(m_picture->hasFocus() ? m_picture->currentIndex() : QModelIndex());
}

std::optional<airframe::AircraftKind> AirframePanel::chosenKind() const
{
    const auto stored = m_session.localState(drawingKey).value;
    return stored ? parseWord<airframe::AircraftKind>(*stored) : std::nullopt;
}

void AirframePanel::chooseKind(std::optional<airframe::AircraftKind> kind)
{
    m_session.keepLocalState(drawingKey, kind ? std::optional(word(*kind)) : std::nullopt);
    showAnswer();
}

void AirframePanel::fillDrawings(airframe::AircraftKind own)
{
    m_drawing->setText(tr("Drawn as %1").arg(drawingName(m_drawn.kind)));
    m_drawing->setEnabled(!m_session.isReadOnly());
    m_drawingMenu->clear();
    const auto chosen = chosenKind();
    const auto add = [&](const QString &words, std::optional<airframe::AircraftKind> kind) {
        auto *action = m_drawingMenu->addAction(words);
        action->setCheckable(true);
        action->setChecked(kind == chosen);
        connect(action, &QAction::triggered, this, [this, kind] { chooseKind(kind); });
    };
    add(tr("As the records say: %1").arg(drawingName(own)), std::nullopt);
    for (std::size_t i = 0; i < Words<airframe::AircraftKind>::list.size(); ++i)
        add(drawingName(airframe::AircraftKind(i)), airframe::AircraftKind(i));
}

void AirframePanel::fillElsewhere()
{
    const auto count = m_drawn.elsewhere.size();
    m_elsewhere->setVisible(count > 0);
    QString words = tr("Not on the picture: %n parts", nullptr, int(count));
    if (m_drawn.open_elsewhere > 0)
        words = tr("%1; %2").arg(
            words, tr("%n closings there must stay open", nullptr, int(m_drawn.open_elsewhere)));
    m_elsewhere->setText(words);
    m_elsewhere->setToolTip(
        tr("Nothing says where on the aeroplane they are. Their field “zone” can."));
    m_elsewhereMenu->clear();
    for (std::size_t i = 0; i < std::min(count, partsListed); ++i) {
        const RecordRef part{RecordType::Component, m_drawn.elsewhere[i].value()};
        auto *action = m_elsewhereMenu->addAction(onButton(shortName(*m_session.records(), part)));
        connect(action, &QAction::triggered, this, [this, part] { m_session.goTo(part); });
    }
    if (count > partsListed)
        m_elsewhereMenu->addAction(tr("and %n more", nullptr, int(count - partsListed)))
            ->setEnabled(false);
}

void AirframePanel::say(const QModelIndex &zone)
{
    m_why->setText(zone.isValid() ? zone.data(Qt::ToolTipRole).toString()
                                  : tr("Point at a zone, or walk through them with the arrow keys, "
                                       "to read why it is as it is."));
}

} // namespace lastrivet::ui
