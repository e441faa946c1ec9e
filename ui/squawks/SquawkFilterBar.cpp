// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkFilterBar.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/squawks/SavedFilterMenu.h"
#include "ui/squawks/SquawkFilterWords.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/FilterLine.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RecordLine.h"
#include "ui/widgets/RecordNames.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

using readiness::Reachable;
using readiness::SquawkFilter;
using Standing = SquawkFilter::Standing;

namespace {

/// The chosen entry of a box whose entries carry what they stand for, the first of them nothing.
template <class Value> std::optional<Value> chosenIn(const QComboBox &box)
{
    const QVariant value = box.currentData();
    return value.isValid() ? std::optional(Value(value.toInt())) : std::nullopt;
}

template <class Value> void choose(QComboBox &box, const std::optional<Value> &value)
{
    box.setCurrentIndex(value ? std::max(0, box.findData(int(*value))) : 0);
}

} // namespace

SquawkFilterBar::SquawkFilterBar(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_text(new FilterLine(this))
    , m_standing(new QComboBox(this))
    , m_more(new QPushButton(tr("More", "filters"), this))
    , m_rest(new QWidget(this))
    , m_severity(new QComboBox(this))
    , m_part(new RecordLine(session, RecordType::Component, this))
    , m_verifier(new QComboBox(this))
    , m_inspection(new QComboBox(this))
    , m_reach(new QComboBox(this))
    , m_everything(new QPushButton(tr("Clear"), this))
    , m_ask(new ActLine(session, this))
    , m_saved(new SavedFilterMenu(session, *this, *m_ask, this))
{
    addChoices();
    fillInspections();
    build();
    setFilter(m_saved->last());
}

SquawkFilterBar::~SquawkFilterBar()
{
    m_saved->keepLast(filter());
}

void SquawkFilterBar::build()
{
    m_text->setPlaceholderText(tr("Type to filter"));
    m_text->setAccessibleName(tr("Filter by words"));
    m_text->setMinimumWidth(110);
    m_part->setPlaceholderText(tr("any part"));
    m_part->setAccessibleName(tr("Filter by part and what is below it"));
    m_part->setClearButtonEnabled(true);
    m_everything->setProperty("flat", true);
    m_everything->setAccessibleName(tr("Clear the filter"));
    m_more->setCheckable(true);
    m_more->setAccessibleName(tr("More filters"));
    m_more->setToolTip(
        tr("More filters: by severity, part, who verifies it, inspection and reach"));
    auto *first = new QHBoxLayout;
    first->addWidget(m_text, 1);
    first->addWidget(m_standing);
    first->addWidget(m_more);
    first->addWidget(m_saved);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    layout->addLayout(first);
    layout->addWidget(buildRest());
    layout->addWidget(m_ask);
    connect(m_text, &QLineEdit::textChanged, this, &SquawkFilterBar::tell);
    connect(m_part, &RecordLine::chosenByPerson, this, &SquawkFilterBar::tell);
    connect(m_part, &QLineEdit::textChanged, this, [this](const QString &text) {
        if (text.isEmpty())
            tell();
    });
    for (const QComboBox *box : {m_standing, m_severity, m_verifier, m_inspection, m_reach})
        connect(box, &QComboBox::currentIndexChanged, this, &SquawkFilterBar::tell);
    connect(m_everything, &QPushButton::clicked, this, [this] { setFilter({}); });
    connect(m_more, &QPushButton::toggled, this, &SquawkFilterBar::showRest);
}

QWidget *SquawkFilterBar::buildRest()
{
    auto *flow = new Flow(m_rest);
    for (QWidget *choice : std::initializer_list<QWidget *>{m_severity, m_reach, m_verifier, m_part,
                                                            m_inspection, m_everything})
        flow->addWidget(choice);
    return m_rest;
}

bool SquawkFilterBar::hasRest() const
{
    SquawkFilter rest = filter();
    rest.text.clear();
    rest.standing = SquawkFilter{}.standing;
    return rest != SquawkFilter{};
}

/// What hides squawks from the list is never hidden itself.
void SquawkFilterBar::showRest()
{
    const bool isSet = hasRest();
    if (isSet)
        m_more->setChecked(true);
    m_more->setEnabled(!isSet);
    m_rest->setVisible(m_more->isChecked());
}

void SquawkFilterBar::addChoices()
{
    m_standing->setAccessibleName(tr("Filter by how far they are dealt with"));
    for (std::size_t i = 0; i < Words<Standing>::list.size(); ++i)
        m_standing->addItem(standingWord(Standing(i)), int(i));
    // Beside it there is room for words to filter by, and its list shows all of each line.
    m_standing->view()->setMinimumWidth(m_standing->sizeHint().width());
    makeNarrow(*m_standing, 11);
    m_severity->setAccessibleName(tr("Filter by severity"));
    m_severity->addItem(tr("any severity"));
    for (const auto severity : {Severity::Airworthiness, Severity::Workmanship, Severity::Cosmetic})
        m_severity->addItem(m_session.theme().icon(severityIcon(severity)), severityWord(severity),
                            int(severity));
    m_verifier->setAccessibleName(tr("Filter by who verifies"));
    m_verifier->addItem(tr("anybody to verify"));
    for (const auto role : {SignerRole::Builder, SignerRole::Adviser, SignerRole::Inspector})
        m_verifier->addItem(verifierWord(role), int(role));
    m_reach->setAccessibleName(tr("Filter by reach"));
    m_reach->addItem(tr("in and out of reach"));
    for (const auto reach : {Reachable::NotForLong, Reachable::NoLonger, Reachable::Yes})
        m_reach->addItem(reachWord(reach), int(reach));
}

void SquawkFilterBar::fillInspections()
{
    const auto records = m_session.records();
    const QVariant kept = m_inspection->currentData();
    m_isFilling = true;
    m_inspection->clear();
    m_inspection->setAccessibleName(tr("Filter by inspection"));
    m_inspection->addItem(tr("any inspection"));
    for (const Inspection &inspection : records->inspections) {
        const RecordRef record{RecordType::Inspection, inspection.id.value()};
        if (!inspection.withdrawn_on)
            m_inspection->addItem(shortName(*records, record), qlonglong(record.id));
    }
    m_inspection->setCurrentIndex(std::max(0, kept.isValid() ? m_inspection->findData(kept) : 0));
    m_inspection->setVisible(m_inspection->count() > 1);
    m_isFilling = false;
}

SquawkFilter SquawkFilterBar::filter() const
{
    SquawkFilter filter;
    filter.standing = Standing(m_standing->currentData().toInt());
    filter.severity = chosenIn<Severity>(*m_severity);
    // An emptied line has chosen nothing, whatever it held before.
    if (!m_part->text().trimmed().isEmpty())
        filter.part = Id<Component>{m_part->chosen()};
    filter.verifier = chosenIn<SignerRole>(*m_verifier);
    filter.inspection = Id<Inspection>{m_inspection->currentData().toLongLong()};
    filter.reachable = chosenIn<Reachable>(*m_reach);
    filter.text = toStd(m_text->text());
    return filter;
}

void SquawkFilterBar::setFilter(const SquawkFilter &filter)
{
    m_isFilling = true;
    m_text->setText(toQt(filter.text));
    m_standing->setCurrentIndex(int(filter.standing));
    choose(*m_severity, filter.severity);
    m_part->setChosen(filter.part.value());
    choose(*m_verifier, filter.verifier);
    choose(*m_reach, filter.reachable);
    const QVariant inspection(qlonglong(filter.inspection.value()));
    m_inspection->setCurrentIndex(std::max(0, m_inspection->findData(inspection)));
    m_isFilling = false;
    tell();
}

void SquawkFilterBar::tell()
{
    if (m_isFilling)
        return;
    m_everything->setEnabled(filter() != SquawkFilter{});
    showRest();
    Q_EMIT changed();
}

/// Not at every letter that is typed: it goes to the disk.
void SquawkFilterBar::hideEvent(QHideEvent *event)
{
    m_saved->keepLast(filter());
    QWidget::hideEvent(event);
}

void SquawkFilterBar::focusText()
{
    m_text->setFocus();
    m_text->selectAll();
}

void SquawkFilterBar::apply(const ChangeNotice &notice)
{
    if (std::ranges::none_of(notice.touched, [](const RecordRef &record) {
            return record.type == RecordType::Inspection;
        }))
        return;
    const auto before = filter();
    fillInspections();
    // The one that was chosen may have gone.
    if (filter() != before)
        tell();
}

} // namespace lastrivet::ui
