// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/LimitsEditor.h"

#include "core/balance/Loading.h"
#include "core/balance/Written.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/weighing/LinesEditor.h"
#include "ui/weighing/RecordChange.h"
#include "ui/weighing/WeightText.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/RecordForm.h"

#include <QPushButton>
#include <QVBoxLayout>

#include <initializer_list>
#include <utility>

namespace lastrivet::ui {

LimitsEditor::LimitsEditor(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_new(new QPushButton(tr("Write the limits down"), this))
    , m_corners(new LinesEditor(tr("Corners of the limits, in their order"),
                                {{{}, true, false, true}, {{}, true, false, true}}, this))
    , m_form(new RecordForm(session, RecordType::Envelope,
                            {{"weight_unit"},
                             {"arm_unit"},
                             {"lemac", false, tr("Chord begins at")},
                             {"mac", false, tr("Chord is long")},
                             {"source"},
                             {"note", true}},
                            this))
    , m_ask(new ActLine(session, this))
{
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    layout->addWidget(m_new, 0, Qt::AlignLeft);
    layout->addWidget(m_corners);
    layout->addWidget(m_ask);
    layout->addWidget(m_form);
    m_ask->hide();
    connect(m_new, &QPushButton::clicked, this, &LimitsEditor::start);
    m_corners->setKeep([this](int row, const LinesModel::Cells &cells, bool isWhole) {
        return change(
            [&](Envelope &envelope) {
                return LinesModel::typeAll(cells, [&](int column, const QString &text) {
                    return type(envelope, row, column, text);
                });
            },
            isWhole);
    });
    connect(m_corners, &LinesEditor::removeWanted, this, [this](int row) {
        change([row](Envelope &envelope) {
            envelope.points.erase(envelope.points.begin() + row);
            return QString();
        });
    });
    connect(m_corners, &LinesEditor::begunChanged, this, &LimitsEditor::begunChanged);
    refresh();
}

bool LimitsEditor::hasBegunCorners() const
{
    return m_corners->hasBegunLines();
}

void LimitsEditor::setUnits(balance::Units units)
{
    m_units = units;
    refresh();
}

void LimitsEditor::apply(const ChangeNotice &notice)
{
    m_form->apply(notice);
    const Envelope *envelope = balance::envelopeOf(*notice.after);
    if (std::exchange(m_unitChoice->isChosen, false) && envelope)
        askToConvert(m_session, *m_ask, *m_unitChoice, notice, envelope->id);
}

void LimitsEditor::start()
{
    m_session.change(tr("Limits written down"), [&](Edit &edit) {
        Envelope envelope;
        envelope.weight_unit = m_units.weight;
        envelope.arm_unit = m_units.arm;
        edit.put(envelope);
    });
    refresh();
}

Session::Outcome LimitsEditor::change(const std::function<QString(Envelope &)> &body, bool isKept)
{
    const Envelope *known = balance::envelopeOf(*m_session.records());
    if (!known)
        return Session::Outcome::AgainstRules;
    const auto outcome = changeRecord(m_session, *known, body, isKept, tr("Limits changed"));
    refresh();
    return outcome;
}

QString LimitsEditor::type(Envelope &envelope, int row, int column, const QString &text) const
{
    auto &points = envelope.points;
    if (std::size_t(row) >= points.size())
        points.emplace_back();
    auto &point = std::size_t(row) < points.size() ? points[std::size_t(row)] : points.back();
    const auto number = column == 0 ? readTyped(balance::readWeight, text, envelope.weight_unit)
                                    : readTyped(balance::readArm, text, envelope.arm_unit);
    if (!number)
        return inWords(number.reason());
    (column == 0 ? point.weight : point.arm) = *number;
    return {};
}

void LimitsEditor::refresh()
{
    // Held: a form that is hidden keeps what was being typed, which makes other records of these.
    const auto records = m_session.records();
    const Envelope *envelope = balance::envelopeOf(*records);
    const bool isOpen = !m_session.isReadOnly();
    m_new->setVisible(!envelope);
    m_new->setEnabled(isOpen);
    for (QWidget *place : std::initializer_list<QWidget *>{m_new, m_corners, m_form})
        place->setToolTip(readOnlyReason(m_session));
    m_corners->setVisible(envelope);
    m_form->setVisible(envelope);
    const std::int64_t id = envelope ? envelope->id.value() : 0;
    // A question is about the record that it was asked about.
    if (m_form->shown() != id)
        m_ask->follow({{RecordType::Envelope, id}});
    m_form->show(id);
    m_corners->model().forgetUnless([id](std::int64_t each) { return each == id; });
    if (!envelope)
        return;
    m_corners->setEditable(isOpen);
    m_corners->setHeads({headWithUnit(tr("Weight"), word(envelope->weight_unit)),
                         headWithUnit(tr("Arm"), word(envelope->arm_unit))});
    std::vector<QStringList> lines;
    for (const auto &point : envelope->points)
        lines.push_back({plainNumber(point.weight), plainNumber(point.arm)});
    m_corners->setLines(envelope->id.value(), std::move(lines));
}

} // namespace lastrivet::ui
