// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/VerdictRows.h"

#include "ui/closings/ClosingWords.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/shell/ShortcutSheet.h"
#include "ui/widgets/Layouts.h"

#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QStringList>

#include <algorithm>
#include <cstddef>
#include <utility>

namespace lastrivet::ui {

namespace {

/// More than these would stand between what a visit is for and the fields below.
constexpr std::size_t mostOthers = 12;

/// True when the readiness answer still wants a word from outside at this hold point.
bool isWanted(const readiness::Answer &answer, const HoldPoint &point)
{
    const auto *closing = answer.closing(point.closing_id);
    return closing &&
           std::ranges::any_of(closing->blockers, [&](const readiness::Blocker &blocker) {
               return blocker.record == RecordRef{RecordType::HoldPoint, point.id.value()} &&
                      (blocker.rule == readiness::Rule::UnsignedHoldPoint ||
                       blocker.rule == readiness::Rule::OutdatedSignOff);
           });
}

/// True when it is signed and nothing came after, as far as the answer knows its closing.
bool isSettled(const readiness::Answer &answer, const HoldPoint &point)
{
    return answer.closing(point.closing_id) && !isWanted(answer, point);
}

bool isOpen(const readiness::ClosingAnswer *answer)
{
    return answer && answer->begun && !isClosed(answer->state);
}

} // namespace

VerdictRows::VerdictRows(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_layout(new QGridLayout(this))
{
    m_layout->setContentsMargins(0, 0, 0, 0);
    m_layout->setColumnStretch(0, 1);
    setProperty(ShortcutSheet::toldKeys,
                QStringList{tr("Up, Down"), tr("Another hold point of a visit")});
}

void VerdictRows::start(const IdSet<Closing> &closings, const IdSet<HoldPoint> &named)
{
    m_rows.clear();
    m_others.clear();
    m_more = nullptr;
    clearLayout(*m_layout);
    const auto records = m_session.records();
    const auto answer = m_session.answer();
    for (const HoldPoint &point : records->hold_points) {
        if (point.withdrawn_on || point.waived_on || point.signer_role == SignerRole::Builder)
            continue;
        const bool isNamed = std::ranges::binary_search(named, point.id);
        const bool isOwn = isNamed || std::ranges::binary_search(closings, point.closing_id);
        // What is signed may be looked at once more, but nobody signs it again by not looking.
        if (isOwn)
            addRow(point, isNamed || !isSettled(*answer, point));
        else if (isOpen(answer->closing(point.closing_id)) && isWanted(*answer, point))
            m_others.push_back(point.id);
    }
    if (m_rows.empty() || m_others.size() <= mostOthers)
        addOthers();
    else
        offerOthers();
    if (m_rows.empty())
        m_layout->addWidget(
            new QLabel(tr("No hold point waits for an inspector or adviser."), this), 0, 0);
}

void VerdictRows::addOthers()
{
    const auto records = m_session.records();
    for (const auto id : std::exchange(m_others, {})) {
        if (const HoldPoint *point = records->findLive(id))
            addRow(*point, false);
    }
}

void VerdictRows::offerOthers()
{
    m_more =
        flatButton(tr("%1 more wait").arg(QLocale().toString(qulonglong(m_others.size()))), this);
    m_layout->addWidget(m_more, int(m_rows.size()), 0, Qt::AlignLeft);
    connect(m_more, &QPushButton::clicked, this, &VerdictRows::othersWanted);
}

void VerdictRows::showOthers()
{
    QPushButton *more = std::exchange(m_more, nullptr);
    if (!more)
        return;
    m_layout->removeWidget(more);
    const std::size_t first = m_rows.size();
    addOthers();
    showResults();
    if (first < m_rows.size()) {
        // A layout shows what it gets only later, and what is not shown takes no keyboard.
        m_rows[first].box->show();
        m_rows[first].box->setFocus();
    }
    more->hide();
    more->deleteLater();
}

void VerdictRows::addRow(const HoldPoint &point, bool isChosen)
{
    const QString name = holdPointName(*m_session.records(), point);
    Row row{point.id, new QCheckBox(onButton(name), this), new QComboBox(this)};
    row.box->setChecked(isChosen);
    offerResults(*row.result);
    row.result->setAccessibleName(tr("Result for %1").arg(name));
    QSizePolicy place = row.result->sizePolicy();
    place.setRetainSizeWhenHidden(true);
    row.result->setSizePolicy(place);
    const int line = int(m_rows.size());
    m_layout->addWidget(row.box, line, 0);
    m_layout->addWidget(row.result, line, 1);
    connect(row.box, &QCheckBox::toggled, this, &VerdictRows::showResults);
    connect(row.box, &QCheckBox::toggled, this, &VerdictRows::chosenChanged);
    row.box->installEventFilter(this);
    row.result->installEventFilter(this);
    m_rows.push_back(row);
    makeStop(0);
}

void VerdictRows::makeStop(std::size_t place)
{
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const auto policy = i == place ? Qt::StrongFocus : Qt::ClickFocus;
        m_rows[i].box->setFocusPolicy(policy);
        m_rows[i].result->setFocusPolicy(policy);
    }
}

bool VerdictRows::follow(std::size_t place, int key)
{
    const Row &row = m_rows[place];
    if (row.result->hasFocus()) {
        // All other keys of a closed choice are its own.
        if (key != Qt::Key_Left)
            return false;
        row.box->setFocus();
        return true;
    }
    std::size_t next = place;
    switch (key) {
    case Qt::Key_Up:
        next = place > 0 ? place - 1 : 0;
        break;
    case Qt::Key_Down:
        next = std::min(place + 1, m_rows.size() - 1);
        break;
    case Qt::Key_Home:
        next = 0;
        break;
    case Qt::Key_End:
        next = m_rows.size() - 1;
        break;
    case Qt::Key_Right:
        if (row.result->isVisible())
            row.result->setFocus();
        return true;
    case Qt::Key_Left:
        return true;
    default:
        return false;
    }
    m_rows[next].box->setFocus();
    bringIntoSight(*m_rows[next].box);
    return true;
}

bool VerdictRows::eventFilter(QObject *watched, QEvent *event)
{
    const auto row = std::ranges::find_if(m_rows, [watched](const Row &known) {
        return watched == known.box || watched == known.result;
    });
    if (row == m_rows.end())
        return QWidget::eventFilter(watched, event);
    const auto place = std::size_t(row - m_rows.begin());
    if (event->type() == QEvent::FocusIn)
        makeStop(place);
    if (event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const auto *pressed = static_cast<const QKeyEvent *>(event);
    const bool isPlain =
        pressed->modifiers() == Qt::NoModifier || pressed->modifiers() == Qt::KeypadModifier;
    return isPlain && follow(place, pressed->key());
}

void VerdictRows::setAsking(bool isAsking)
{
    m_isAsking = isAsking;
    showResults();
}

void VerdictRows::showResults()
{
    for (const Row &row : m_rows)
        row.result->setVisible(!m_isAsking && row.box->isChecked());
}

/// An undo may have taken the hold point away since it was listed.
bool VerdictRows::isTaken(const Row &row) const
{
    return row.box->isChecked() && m_session.records()->findLive(row.point);
}

IdSet<HoldPoint> VerdictRows::chosen() const
{
    IdSet<HoldPoint> ids;
    for (const Row &row : m_rows) {
        if (isTaken(row))
            ids.push_back(row.point);
    }
    // Those that a visit is for stand first.
    std::ranges::sort(ids);
    return ids;
}

std::vector<acts::Verdict> VerdictRows::verdicts() const
{
    std::vector<acts::Verdict> said;
    for (const Row &row : m_rows) {
        if (isTaken(row))
            said.push_back({row.point, SignOffResult(row.result->currentData().toInt()), {}});
    }
    return said;
}

SignerRole VerdictRows::role() const
{
    const auto records = m_session.records();
    SignerRole highest = SignerRole::Adviser;
    for (const auto id : chosen()) {
        if (const HoldPoint *point = records->find(id))
            highest = std::max(highest, point->signer_role);
    }
    return highest;
}

InspectionKind VerdictRows::kind() const
{
    const auto records = m_session.records();
    const auto points = chosen();
    const HoldPoint *first = points.empty() ? nullptr : records->find(points.front());
    return first ? acts::visitFor(first->kind) : InspectionKind::WorkshopVisit;
}

} // namespace lastrivet::ui
