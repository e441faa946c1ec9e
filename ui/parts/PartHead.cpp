// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartHead.h"

#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/journal/HistoryButton.h"
#include "ui/parts/PartFigures.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/WrappedText.h"

#include <QBoxLayout>
#include <QCheckBox>
#include <QLabel>
#include <QPushButton>

namespace lastrivet::ui {

PartHead::PartHead(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_heading(new QLabel(this))
    , m_stateShape(new QLabel(this))
    , m_state(new QLabel(this))
    , m_loose(new QPushButton(this))
    , m_facts(new QLabel(this))
    , m_second(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_below(new QCheckBox(tr("With everything below"), this))
    , m_history(new HistoryButton(
          [this] {
              return RecordRef{RecordType::Component, m_shown.value()};
          },
          this))
{
    m_heading->setFont(m_session.theme().font(1));
    m_heading->setWordWrap(true);
    m_facts->setWordWrap(true);
    m_loose->setToolTip(tr("Fitted, and not torqued yet: show them"));
    m_loose->hide();
    m_below->setChecked(true);
    auto *top = new QHBoxLayout;
    top->addWidget(m_heading, 1);
    top->addWidget(m_loose);
    top->addWidget(m_stateShape);
    top->addWidget(m_state);
    auto *acts = new QHBoxLayout;
    acts->addWidget(m_below, 0, Qt::AlignTop);
    acts->addWidget(m_history, 0, Qt::AlignTop);
    acts->addStretch(1);
    m_second->addWidget(m_facts, 1);
    m_second->addLayout(acts);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addLayout(top);
    layout->addLayout(m_second);
    connect(m_loose, &QPushButton::clicked, this, &PartHead::fingerTightWanted);
    connect(m_below, &QCheckBox::toggled, this, &PartHead::withBelowChanged);
}

bool PartHead::isWithBelow() const
{
    return m_below->isChecked();
}

void PartHead::show(Id<Component> part, const PartFigures &figures)
{
    const auto records = m_session.records();
    const Component *shown = records->findLive(part);
    m_heading->setText(shown ? breakable(unbroken(partName(*records, part)))
                             : tr("The whole aircraft"));
    m_below->setVisible(shown);
    m_history->setVisible(shown);
    m_shown = shown ? part : Id<Component>{};
    showState(m_shown);
    showFingerTight(figures.finger_tight);
    QStringList words;
    if (shown)
        words.append(facts(*shown));
    else
        words.append(tr("What is on record of all parts, and of none"));
    if (figures.minutes.count() > 0)
        words.append(shown ? tr("%1 with everything below").arg(hoursText(figures.minutes))
                           : tr("%1 in all").arg(hoursText(figures.minutes)));
    m_facts->setText(words.join(QStringLiteral(" · ")));
    placeActs();
}

/// Beside the facts as long as these stay on one line, below them otherwise.
void PartHead::placeActs()
{
    constexpr int gaps = 32;
    const int acts = m_below->sizeHint().width() + m_history->sizeHint().width() + gaps;
    const int facts = m_facts->fontMetrics().horizontalAdvance(m_facts->text());
    const bool isBeside = !m_shown || facts + acts <= width();
    m_second->setDirection(isBeside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

void PartHead::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    placeActs();
}

void PartHead::showFingerTight(int lines)
{
    const Theme &theme = m_session.theme();
    m_fingerTight = lines;
    m_loose->setVisible(lines > 0);
    m_loose->setIcon(theme.icon(QStringLiteral("marks/alert"), theme.colours().closedEarly));
    m_loose->setText(tr("%n finger-tight", nullptr, lines));
}

void PartHead::showState(Id<Component> part)
{
    const auto badge = part ? m_session.answer()->badge(part) : std::nullopt;
    m_state->setVisible(badge.has_value());
    m_stateShape->setVisible(badge.has_value());
    if (!badge)
        return;
    const Theme &theme = m_session.theme();
    m_state->setText(stateWords(*badge));
    m_stateShape->setPixmap(
        theme.icon(stateIcon(*badge), theme.colours().state(*badge)).pixmap(24, 24));
}

QString PartHead::facts(const Component &part) const
{
    QStringList words{plainWord(word(part.kind))};
    if (part.construction)
        words.append(plainWord(word(*part.construction)));
    for (const std::string &text : {part.zone, part.place, part.shelf, part.plan_ref}) {
        if (!text.empty())
            words.append(toQt(text));
    }
    return words.join(QStringLiteral(" · "));
}

} // namespace lastrivet::ui
