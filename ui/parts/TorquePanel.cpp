// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/TorquePanel.h"

#include "core/fasteners/TorqueUnits.h"
#include "core/workshop/Quantities.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/parts/HardwareActs.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"
#include "ui/workshop/RuleWords.h"
#include "ui/workshop/Sum.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <cmath>
#include <string>
#include <utility>

namespace lastrivet::ui {

namespace {

/// No wrench can be set finer.
QString setting(double torque)
{
    return numberText(torque, 4);
}

bool isOwn(const fasteners::TorqueProposal &proposal)
{
    return proposal.is_least_own && proposal.is_most_own;
}

QString unitOf(const Fastener &fastener)
{
    return toQt(word(fastener.torque_unit));
}

} // namespace

TorquePanel::TorquePanel(Session &session, QWidget *parent)
    : SectionAside(parent)
    , m_session(session)
    , m_nut(new QComboBox(this))
    , m_limits(wrappedLabel({}, this))
    , m_source(wrappedLabel({}, this))
    , m_drag(wrappedLabel({}, this))
    , m_take(new QPushButton(tr("Take these limits"), this))
    , m_lever(new QLineEdit(this))
    , m_extension(new QLineEdit(this))
    , m_setting(wrappedLabel({}, this))
{
    build();
}

void TorquePanel::build()
{
    m_nut->addItem(tr("nut in tension"), int(workshop::Nut::Tension));
    m_nut->addItem(tr("nut in shear"), int(workshop::Nut::Shear));
    m_nut->setAccessibleName(tr("How the nut is loaded"));
    m_source->setForegroundRole(QPalette::PlaceholderText);
    m_lever->setPlaceholderText(tr("grip to drive"));
    m_extension->setPlaceholderText(tr("0 without one"));
    auto *fields = new QFormLayout;
    fields->addRow(tr("Lever of the wrench"), m_lever);
    fields->addRow(tr("Extension"), m_extension);
    m_lever->setAccessibleName(tr("Lever of the wrench"));
    m_extension->setAccessibleName(tr("Extension"));
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(8, 0, 0, 0);
    layout->setSpacing(6);
    layout->addWidget(heading(tr("Torque by the table"), this));
    layout->addWidget(m_nut, 0, Qt::AlignLeft);
    layout->addWidget(m_limits);
    layout->addWidget(m_drag);
    layout->addWidget(m_take, 0, Qt::AlignLeft);
    layout->addWidget(m_source);
    layout->addWidget(heading(tr("On the wrench"), this));
    layout->addLayout(fields);
    layout->addWidget(m_setting);
    layout->addStretch(1);
    connect(m_nut, &QComboBox::activated, this, &TorquePanel::refresh);
    connect(m_take, &QPushButton::clicked, this, &TorquePanel::take);
    connect(m_lever, &QLineEdit::textEdited, this, &TorquePanel::refresh);
    connect(m_extension, &QLineEdit::textEdited, this, &TorquePanel::refresh);
}

workshop::Nut TorquePanel::nut() const
{
    return workshop::Nut(m_nut->currentData().toInt());
}

const workshop::OwnLimit *TorquePanel::own(const fasteners::TorqueProposal &proposal) const
{
    return workshop::ownLimit(m_own, workshop::torqueSubject(proposal.thread, word(proposal.nut)));
}

Result<fasteners::TorqueProposal, Message> TorquePanel::proposal(const Fastener &fastener,
                                                                 workshop::Nut nut) const
{
    return fasteners::proposalFor(fastener, nut, m_own);
}

/// Limits that are those of a nut in shear say how it is loaded.
void TorquePanel::chooseNut(const Fastener &fastener)
{
    const auto shear = proposal(fastener, workshop::Nut::Shear);
    const bool isShear = shear && fastener.torque_max &&
                         std::abs(*fastener.torque_max - shear->most) < 0.01 * shear->most;
    m_nut->setCurrentIndex(isShear ? 1 : 0);
}

void TorquePanel::present(std::int64_t id)
{
    const bool isOther = m_id != Id<Fastener>{id};
    m_id = Id<Fastener>{id};
    readOwnLimits();
    const Fastener *fastener = m_session.records()->findLive(m_id);
    if (fastener && isOther)
        chooseNut(*fastener);
    refresh();
}

void TorquePanel::readOwnLimits()
{
    m_own = sections::ownLimits(m_session);
}

/// They are written down on another page, which makes no change of the records.
void TorquePanel::showEvent(QShowEvent *event)
{
    if (m_session.records()->findLive(m_id)) {
        readOwnLimits();
        refresh();
    }
    SectionAside::showEvent(event);
}

void TorquePanel::refresh()
{
    const Fastener *fastener = m_session.records()->findLive(m_id);
    setVisible(fastener != nullptr);
    if (!fastener)
        return;
    sayProposal(*fastener);
    sayWrench(*fastener);
}

void TorquePanel::sayProposal(const Fastener &fastener)
{
    const auto found = proposal(fastener, nut());
    m_proposal = found ? std::optional(*found) : std::nullopt;
    m_source->setVisible(bool(found));
    m_drag->setVisible(bool(found));
    const bool isTaken =
        found && fastener.torque_min == found->least && fastener.torque_max == found->most;
    m_take->setVisible(found && !isTaken && !m_session.isReadOnly());
    if (!found) {
        m_limits->setText(inWords(found.reason()));
        return;
    }
    const QString unit = unitOf(fastener);
    m_limits->setText(limitWords(*found));
    QStringList words;
    words << (found->drag > 0
                  ? tr("With the drag of %1 added: %2 to %3 %4.")
                        .arg(numberText(found->drag), numberText(found->setLeast()),
                             numberText(found->setMost()), unit)
                  : tr("No drag on record: read it off the wrench while the nut runs down, and it "
                       "is added."));
    if (const QString warning = dragWarning(fastener); !warning.isEmpty())
        words << warning;
    m_drag->setText(words.join(QLatin1Char('\n')));
    m_source->setText(sourceWords(*found));
}

QString TorquePanel::limitWords(const fasteners::TorqueProposal &proposal) const
{
    const QString thread = toQt(proposal.thread);
    const QString unit = toQt(word(proposal.unit));
    if (isOwn(proposal))
        return tr("%1: %2 to %3 %4, the project's own limit.")
            .arg(thread, numberText(proposal.least), numberText(proposal.most), unit);
    const QString limits =
        tr("%1: %2 to %3 %4")
            .arg(thread, numberText(proposal.least), numberText(proposal.most), unit);
    const QString words =
        proposal.allowed
            ? tr("%1, and never above %2 %3.").arg(limits, numberText(*proposal.allowed), unit)
            : limits + QLatin1Char('.');
    const auto *limit = own(proposal);
    return limit ? words + QLatin1Char('\n') +
                       tr("The project's own limit: %1, from %2.")
                           .arg(ownText(*limit), toQt(limit->source))
                 : words;
}

QString TorquePanel::sourceWords(const fasteners::TorqueProposal &proposal) const
{
    const QString document = toQt(proposal.source.document);
    return isOwn(proposal)
               ? tr("From %1. The drawing of the maker comes first.").arg(document)
               : tr("%1; %2. For clean, dry threads; the drawing of the maker comes first.")
                     .arg(document, verifiedWords(proposal.source.verified));
}

/// A worn self-locking nut runs down too easily.
QString TorquePanel::dragWarning(const Fastener &fastener) const
{
    if (fastener.locking != Locking::SelfLockingNut || !fastener.torque_drag)
        return {};
    const double drag =
        fasteners::converted(*fastener.torque_drag, fastener.torque_unit, TorqueUnit::InchPounds);
    for (const auto &least : workshop::prevailingTorque(fastener.thread)) {
        if (drag < least.minimum && !least.source.isFromMemory())
            return tr("That is less than the %1 in-lb that %2 asks of a self-locking nut.")
                .arg(numberText(least.minimum), toQt(least.source.document));
    }
    return {};
}

std::optional<std::pair<double, double>> TorquePanel::levers() const
{
    const bool isAny = !m_extension->text().trimmed().isEmpty();
    const auto lever = readNumber(m_lever->text());
    const auto extension = readNumber(isAny ? m_extension->text() : QStringLiteral("0"));
    if (lever && extension)
        return std::pair(*lever, *extension);
    if (lever || (extension && isAny))
        return std::nullopt;
    const auto inInches = [](const QString &text) {
        return readTyped(workshop::inTableUnits, text, workshop::Quantity::Length,
                         UnitSystem::Imperial);
    };
    const auto first = inInches(m_lever->text());
    const auto second = isAny ? inInches(m_extension->text()) : Result<double, Message>(0.0);
    return first && second ? std::optional(std::pair(*first, *second)) : std::nullopt;
}

void TorquePanel::sayWrench(const Fastener &fastener)
{
    std::optional<double> least = fastener.torque_min;
    if (!least && m_proposal)
        least = m_proposal->least;
    std::optional<double> most = fastener.torque_max;
    if (!most && m_proposal)
        most = m_proposal->most;
    const auto lengths = levers();
    if (!lengths || !most) {
        m_setting->setText(most ? tr("Lever and extension in the same unit, from the middle of the "
                                     "grip to the drive, and from there to the nut.")
                                : tr("Without limits there is nothing to set."));
        return;
    }
    const double drag = fastener.torque_drag.value_or(0);
    const auto [lever, extension] = *lengths;
    const auto upper = fasteners::wrenchFor(*most, drag, lever, extension);
    if (!upper) {
        m_setting->setText(inWords(upper.reason()));
        return;
    }
    const auto lower = fasteners::wrenchFor(least.value_or(*most), drag, lever, extension);
    m_setting->setText(
        lower && *lower < *upper
            ? tr("Set the wrench to %1 to %2 %3.")
                  .arg(setting(*lower), setting(*upper), unitOf(fastener))
            : tr("Set the wrench to at most %1 %2.").arg(setting(*upper), unitOf(fastener)));
}

void TorquePanel::take()
{
    if (!m_proposal)
        return;
    const auto proposal = *m_proposal;
    const QString place = toQt(m_session.records()->find(m_id)->place);
    m_session.change(tr("%1: limits from the table").arg(place), [&](Edit &edit) {
        edit.update(m_id, [&](Fastener &changed) {
            changed.torque_min = proposal.least;
            changed.torque_max = proposal.most;
        });
    });
}

} // namespace lastrivet::ui
