// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/InspectionView.h"

#include "core/project/acts/Inspecting.h"
#include "core/project/acts/Signing.h"
#include "ui/closings/AnswerForm.h"
#include "ui/closings/ClosingWords.h"
#include "ui/closings/PacketTask.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/RowListView.h"
#include "ui/widgets/Section.h"
#include "ui/widgets/WrappedText.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace lastrivet::ui {

InspectionView::InspectionView(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_back(flatButton(tr("← Visits"), this))
    , m_title(new QLabel(this))
    , m_facts(new QLabel(this))
    , m_warning(new QLabel(this))
    , m_hold(new QPushButton(tr("Record what was said"), this))
    , m_report(new QPushButton(tr("Corrections report"), this))
    , m_complete(new QPushButton(tr("Mark as complete"), this))
    , m_cancel(new QPushButton(tr("Mark as cancelled"), this))
    , m_answer(new AnswerForm(session, this))
    , m_begun(session, {m_answer})
    , m_findings(new Section(session.theme(), tr("Findings"), tr("None on record."), this))
    , m_points(new Section(session.theme(), tr("Hold points"), tr("It was about none."), this))
{
    build();
    connectParts();
}

void InspectionView::build()
{
    m_title->setFont(m_session.theme().font(2));
    m_title->setWordWrap(true);
    m_facts->setWordWrap(true);
    m_warning->setWordWrap(true);
    m_warning->hide();
    auto *actions = new QWidget(this);
    auto *flow = new Flow(actions);
    for (QPushButton *button : {m_hold, m_report, m_complete, m_cancel})
        flow->addWidget(button);
    m_answer->setMaximumWidth(720);
    m_answer->hide();
    m_points->setShortLength(12);
    m_findings->setShortLength(40);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(24, 12, 24, 16);
    layout->setSpacing(8);
    layout->addWidget(m_back, 0, Qt::AlignLeft);
    layout->addWidget(m_title);
    layout->addWidget(m_facts);
    layout->addWidget(actions);
    layout->addWidget(m_warning);
    layout->addWidget(m_answer);
    layout->addSpacing(8);
    layout->addWidget(m_findings);
    layout->addWidget(m_points);
    layout->addStretch(1);
}

void InspectionView::connectParts()
{
    connect(m_back, &QPushButton::clicked, this, &InspectionView::backWanted);
    connect(m_hold, &QPushButton::clicked, this, [this] { Q_EMIT holdingWanted(m_visit); });
    connect(m_report, &QPushButton::clicked, this, &InspectionView::writeReport);
    connect(m_complete, &QPushButton::clicked, this, &InspectionView::complete);
    connect(m_cancel, &QPushButton::clicked, this, &InspectionView::cancel);
    connect(m_answer, &ActForm::left, this, &InspectionView::leaveForm);
    connect(m_answer, &ActForm::wanted, this,
            [this] { Q_EMIT begunWanted(Id<Inspection>{m_begun.record()}); });
    connect(m_findings, &Section::chosen, &m_session, &Session::goTo);
    connect(m_findings, &Section::acted, this, &InspectionView::act);
    connect(m_points, &Section::chosen, this, [this](RecordRef record) {
        if (const auto *point = m_session.records()->find(Id<HoldPoint>{record.id}))
            Q_EMIT closingWanted(point->closing_id);
    });
}

void InspectionView::show(Id<Inspection> visit)
{
    if (visit != m_visit)
        m_begun.show(visit.value());
    m_visit = visit;
    refresh();
}

void InspectionView::refresh()
{
    if (m_begun.record() != 0 && !m_session.records()->findLive(Id<Inspection>{m_begun.record()}))
        m_begun.drop();
    const Inspection *visit = m_session.records()->findLive(m_visit);
    if (!visit)
        return;
    const Moment now = m_session.now();
    const bool isHeld = happened(visit->held_on, now);
    const bool isOver = happened(visit->completed_on, now) || happened(visit->cancelled_on, now);
    const int open = int(acts::openFindings(*m_session.records(), m_visit, now).size());
    m_title->setText(breakable(visitName(*visit)));
    m_facts->setText(facts(*visit));
    m_hold->setVisible(!isHeld && !isOver);
    m_report->setVisible(isHeld);
    m_complete->setVisible(isHeld && !isOver);
    m_cancel->setVisible(!isHeld && !isOver);
    setPrimary(*m_hold, !isHeld);
    setPrimary(*m_complete, open == 0);
    for (QPushButton *button : {m_hold, m_complete, m_cancel})
        button->setEnabled(!m_session.isReadOnly());
    m_isWarned = false;
    m_warning->hide();
    refreshPoints(*visit);
    refreshFindings(*visit);
}

QString InspectionView::facts(const Inspection &visit) const
{
    const auto records = m_session.records();
    QStringList lines;
    const auto add = [&](const QString &words, const std::optional<Moment> &on) {
        if (on)
            lines << words.arg(dateText(*on));
    };
    add(tr("Asked for on %1."), visit.asked_on);
    add(tr("Planned for %1."), visit.planned_for);
    add(tr("Held on %1."), visit.held_on);
    add(tr("Complete since %1."), visit.completed_on);
    add(tr("Cancelled on %1."), visit.cancelled_on);
    if (const QString who = personName(*records, visit.inspector_id); !who.isEmpty())
        lines << tr("By %1.").arg(who);
    QStringList present;
    for (const auto person : visit.present) {
        if (person != visit.inspector_id)
            present << personName(*records, person);
    }
    if (!present.isEmpty())
        lines << tr("Also there: %1.").arg(present.join(QStringLiteral(", ")));
    if (happened(visit.held_on, m_session.now()) && visit.media_ids.empty())
        lines << tr("The signed sheet is not on record.");
    return lines.join(QLatin1Char(' '));
}

/// What was said at a hold point of this visit.
QString InspectionView::said(const Inspection &visit, Id<HoldPoint> point) const
{
    for (const SignOff &signature : m_session.records()->sign_offs) {
        if (!signature.withdrawn_on && signature.inspection_id == visit.id &&
            signature.hold_point_id == point)
            return resultWords(signature.result);
    }
    return visit.held_on ? tr("nothing said") : QString();
}

void InspectionView::refreshPoints(const Inspection &visit)
{
    const auto records = m_session.records();
    std::vector<ListRow> rows;
    for (const auto id : visit.hold_point_ids) {
        const HoldPoint *point = records->findLive(id);
        if (!point)
            continue;
        ListRow row{{RecordType::HoldPoint, id.value()}, holdPointName(*records, *point)};
        row.detail = said(visit, id);
        if (const auto *answer = m_session.answer()->closing(point->closing_id))
            showState(row, *answer);
        rows.push_back(std::move(row));
    }
    m_points->setRows(std::move(rows));
}

void InspectionView::refreshFindings(const Inspection &visit)
{
    const auto records = m_session.records();
    std::vector<ListRow> rows;
    for (const Squawk &squawk : records->squawks) {
        if (squawk.withdrawn_on || squawk.inspection_id != visit.id)
            continue;
        const QString number =
            toQt(squawk.finding_number.empty() ? squawk.number : squawk.finding_number);
        ListRow row{{RecordType::Squawk, squawk.id.value()},
                    tr("%1  %2").arg(number, toQt(squawk.title))};
        row.severity = squawk.severity;
        row.figure = partName(*records, squawk.component_id);
        const QString role = roleWords(squawk.verify_by.value_or(SignerRole::Builder));
        if (squawk.verified_on)
            row.detail =
                tr("verified on %1 by %2")
                    .arg(dateText(*squawk.verified_on), personName(*records, squawk.verified_by));
        else if (squawk.accepted_on)
            row.detail = tr("accepted as it is: %1").arg(toQt(squawk.accepted_basis));
        else if (squawk.fixed_on)
            row.detail = tr("corrected on %1, waits for the %2: %3")
                             .arg(dateText(*squawk.fixed_on), role, toQt(squawk.correction));
        else
            row.detail = tr("open; the %1 verifies the correction").arg(role);
        row.detail = severityWord(squawk.severity) + QStringLiteral(" · ") + row.detail;
        if (!squawk.verified_on && !squawk.accepted_on && !m_session.isReadOnly())
            row.action = squawk.fixed_on ? tr("Mark as verified") : tr("Mark as corrected");
        rows.push_back(std::move(row));
    }
    m_findings->setRows(std::move(rows));
}

void InspectionView::act(RecordRef finding)
{
    const Squawk *squawk = m_session.records()->findLive(Id<Squawk>{finding.id});
    if (!squawk || m_session.isReadOnly())
        return;
    const bool isFixed = squawk->fixed_on.has_value();
    if (!m_begun.mayStart(m_visit.value(), {isFixed ? 1 : 0, finding.id}))
        return;
    m_answer->show();
    if (isFixed)
        m_answer->startVerifying(*squawk);
    else
        m_answer->startCorrecting(*squawk);
}

void InspectionView::complete()
{
    const int open = int(acts::openFindings(*m_session.records(), m_visit, m_session.now()).size());
    if (open > 0 && !std::exchange(m_isWarned, true)) {
        m_warning->setText(tr("%n findings are neither verified nor accepted. Press again if the "
                              "inspector calls the visit complete all the same.",
                              nullptr, open));
        m_warning->show();
        return;
    }
    m_session.change(tr("Visit complete"),
                     [&](Edit &edit) { acts::completeInspection(edit, m_visit, edit.today()); });
}

void InspectionView::cancel()
{
    m_session.change(tr("Visit cancelled"),
                     [&](Edit &edit) { acts::cancelInspection(edit, m_visit, edit.today()); });
}

void InspectionView::writeReport()
{
    const QString file = askForPdf(this, m_session, correctionsName(m_session, m_visit));
    if (!file.isEmpty())
        makeCorrectionsReport(m_session, m_visit, file);
}

QWidget *InspectionView::firstFocus() const
{
    if (!m_findings->list().isHidden())
        return &m_findings->list();
    return m_hold->isHidden() ? static_cast<QWidget *>(m_back) : m_hold;
}

void InspectionView::leaveForm()
{
    if (m_answer->isVisible())
        m_findings->list().setFocus();
    m_answer->hide();
}

void InspectionView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT backWanted();
    else
        QWidget::keyPressEvent(event);
}

} // namespace lastrivet::ui
