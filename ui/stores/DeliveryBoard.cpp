// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/DeliveryBoard.h"

#include "core/project/acts/StoreActs.h"
#include "core/stores/Claim.h"
#include "ui/convert/QtText.h"
#include "ui/lists/ListDialog.h"
#include "ui/parts/SectionList.h"
#include "ui/shell/Session.h"
#include "ui/stores/ClaimView.h"
#include "ui/stores/StoreRows.h"
#include "ui/stores/StoreSections.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/Section.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// The title of a list and its first row.
constexpr int leastHeight = 72;

enum class Which { All, ToCount, NotAsListed, Late };

/// The expense on record for the same, of the same amount; 0 when there is none.
Id<Expense> sameExpense(const Records &records, const Expense &expense)
{
    for (const Expense &known : records.expenses) {
        const bool isSame = known.what == expense.what && known.amount == expense.amount &&
                            known.currency == expense.currency;
        if (isSame && !known.withdrawn_on)
            return known.id;
    }
    return {};
}

} // namespace

DeliveryBoard::DeliveryBoard(Session &session, QWidget *parent)
    : StoreBoard(session, storeroom::lineSection(), parent)
    , m_shipment(new QComboBox(this))
    , m_which(new QComboBox(this))
    , m_words(new QLabel(this))
    , m_bring(new QPushButton(tr("Bring in a list…"), this))
    , m_count(new QPushButton(tr("Count selected lines as listed"), this))
    , m_letter(new QPushButton(tr("Claim letter"), this))
    , m_expense(new QPushButton(tr("Shipment as an expense"), this))
    , m_waitsHere(new Section(session.theme(), tr("Waits for this line"),
                              tr("No open step waits for it."), this))
    , m_waits(new Section(session.theme(), tr("What is not here yet"),
                          tr("No packing list is on record yet."), this))
    , m_claim(new ClaimView(session, this))
    , m_begunClaim(session, {m_claim})
{
    build();
    connectActs();
    refresh();
}

void DeliveryBoard::build()
{
    m_which->addItem(tr("all lines"), int(Which::All));
    m_which->addItem(tr("still to count"), int(Which::ToCount));
    m_which->addItem(tr("not as listed"), int(Which::NotAsListed));
    m_which->addItem(tr("late"), int(Which::Late));
    m_shipment->setAccessibleName(tr("Shipment"));
    // Somebody may have typed half a letter as the name of one.
    makeNarrow(*m_shipment, 24);
    m_which->setAccessibleName(tr("Which lines"));
    m_words->setWordWrap(true);
    m_count->setToolTip(tr("All of the selected lines came. Space ticks the line under the cursor "
                           "as counted."));
    auto *bar = new QWidget(this);
    auto *flow = new Flow(bar);
    for (QWidget *part : std::initializer_list<QWidget *>{m_shipment, m_which, m_bring, m_count,
                                                          m_letter, m_expense})
        flow->addWidget(part);
    head().addWidget(bar);
    head().addWidget(m_words);
    m_waitsHere->setMinimumHeight(leastHeight);
    aside().addWidget(m_waitsHere);
    aside().addWidget(m_waits);
    stack().addWidget(m_claim);
    list().setWhenEmpty(tr("No line here. A packing list can be brought in from a spreadsheet, or "
                           "be typed line by line below."));
    list().setCompleting([this](Edit &edit, std::int64_t id) {
        if (const stores::Shipment *shipment = chosenShipment())
            edit.update(Id<PartLine>{id}, [&](PartLine &line) { line.shipment = shipment->name; });
    });
}

void DeliveryBoard::connectActs()
{
    connect(m_shipment, &QComboBox::activated, this, [this] {
        m_wanted = m_shipment->currentData();
        filter();
    });
    connect(m_which, &QComboBox::activated, this, &DeliveryBoard::filter);
    connect(m_bring, &QPushButton::clicked, this, &DeliveryBoard::bringIn);
    connect(m_count, &QPushButton::clicked, this, &DeliveryBoard::countChosen);
    connect(m_letter, &QPushButton::clicked, this, &DeliveryBoard::startClaim);
    connect(m_expense, &QPushButton::clicked, this, &DeliveryBoard::enterExpenses);
    connect(m_claim, &ClaimView::left, this, [this] { showList(); });
    for (Section *section : {m_waitsHere, m_waits})
        connect(section, &Section::chosen, this,
                [this](RecordRef record) { this->session().goTo(record); });
}

void DeliveryBoard::showRecord(RecordRef record)
{
    if (!isListed(record.id)) {
        m_wanted = QVariant();
        m_shipment->setCurrentIndex(0);
        m_which->setCurrentIndex(0);
        filter();
    }
    StoreBoard::showRecord(record);
}

void DeliveryBoard::chooseShipment(const QString &name)
{
    m_shipment->setCurrentIndex(std::max(0, m_shipment->findData(name)));
    m_wanted = m_shipment->currentData();
    filter();
}

/// The first entry stands for all of them and has no name as its data.
void DeliveryBoard::offerShipments(const std::vector<stores::Shipment> &shipments)
{
    const QVariant before = m_shipment->currentData();
    m_shipment->clear();
    m_shipment->addItem(tr("all shipments"));
    for (const stores::Shipment &shipment : shipments) {
        const QString name = shipment.name.empty() ? tr("no shipment named") : toQt(shipment.name);
        m_shipment->addItem(shipment.isSettled() ? name : tr("%1 (open)").arg(name),
                            toQt(shipment.name));
    }
    m_shipment->setCurrentIndex(m_wanted.isValid() ? std::max(0, m_shipment->findData(m_wanted))
                                                   : 0);
    // Its name may be gone, or there again; the list follows what the box says.
    if (m_shipment->currentData() != before)
        applyFilter();
}

const stores::Shipment *DeliveryBoard::chosenShipment() const
{
    const int place = m_shipment->currentIndex() - 1;
    return place < 0 ? nullptr : &m_shipments[std::size_t(place)];
}

bool DeliveryBoard::isListed(std::int64_t id) const
{
    const PartLine *line = session().records()->find(Id<PartLine>{id});
    const stores::Shipment *shipment = chosenShipment();
    if (!line || (shipment && line->shipment != shipment->name))
        return false;
    const auto standing = stores::standingOf(*line, session().today());
    using enum stores::LineState;
    switch (Which(m_which->currentData().toInt())) {
    case Which::All:
        return true;
    case Which::ToCount:
        return standing.state == Awaited || standing.state == Late;
    case Which::NotAsListed:
        return standing.state == Missing || standing.state == Damaged || standing.state == Surplus;
    case Which::Late:
        return standing.isOverdue();
    }
    return true;
}

void DeliveryBoard::filter()
{
    if (stack().currentWidget() == m_claim)
        showList();
    applyFilter();
}

void DeliveryBoard::applyFilter()
{
    list().setFilter([this](std::int64_t line) { return isListed(line); });
}

void DeliveryBoard::refresh()
{
    auto shipments = stores::shipments(*session().records(), session().today());
    if (m_shipment->count() == 0 || shipments != m_shipments) {
        m_shipments = std::move(shipments);
        offerShipments(m_shipments);
    }
    say();
    showWaits();
}

void DeliveryBoard::say()
{
    const stores::Shipment *shipment = chosenShipment();
    m_letter->setEnabled(shipment != nullptr);
    for (QPushButton *act : {m_letter, m_expense})
        act->setToolTip(shipment ? QString() : tr("Choose a shipment first."));
    m_expense->setEnabled(shipment != nullptr && !session().isReadOnly());
    m_words->setText(shipment ? shipmentWords(*shipment) : allShipmentsWords(m_shipments));
}

void DeliveryBoard::showWaits()
{
    const auto waits = stores::waits(*session().records(), session().today());
    const bool isAnyListed = std::ranges::any_of(
        session().records()->part_lines, [](const PartLine &line) { return !line.withdrawn_on; });
    m_waits->setWhenEmpty(isAnyListed ? tr("Everything on the lists is here.")
                                      : tr("No packing list is on record yet."));
    m_waits->setRows(waitRows(waits, *session().records(), *session().answer()));
    const RecordRef chosen = list().current();
    const auto here = std::ranges::find(waits, chosen.id,
                                        [](const stores::Wait &wait) { return wait.line.value(); });
    m_waitsHere->setVisible(here != waits.end());
    if (here != waits.end())
        m_waitsHere->setRows(waitingRows(*here, *session().records(), *session().answer()));
}

void DeliveryBoard::countChosen()
{
    std::vector<Id<PartLine>> lines;
    for (const RecordRef &record : list().chosen())
        lines.push_back(Id<PartLine>{record.id});
    if (!lines.empty())
        session().change(tr("%n lines counted as listed", nullptr, int(lines.size())),
                         [&](Edit &edit) { acts::countAsListed(edit, lines); });
}

void DeliveryBoard::bringIn()
{
    ListDialog dialog(session(), this);
    dialog.setType(RecordType::PartLine);
    if (const stores::Shipment *shipment = chosenShipment())
        dialog.setShipment(toQt(shipment->name));
    dialog.exec();
}

void DeliveryBoard::startClaim()
{
    const stores::Shipment *shipment = chosenShipment();
    if (!shipment)
        return;
    const auto claim = stores::claimFor(*session().records(), shipment->name, session().today());
    if (claim.isEmpty()) {
        session().say(tr("Nothing of this shipment is missing, damaged or late."));
        return;
    }
    BegunForms::Purpose purpose;
    for (const char letter : shipment->name)
        purpose.push_back(letter);
    if (!m_begunClaim.mayStart(0, purpose))
        return;
    stack().setCurrentWidget(m_claim);
    m_claim->show(claim);
}

void DeliveryBoard::enterExpenses()
{
    const stores::Shipment *shipment = chosenShipment();
    if (!shipment)
        return;
    const std::string what = shipment->name.empty() ? toStd(tr("Parts")) : shipment->name;
    const auto expenses =
        acts::expensesFor(*session().records(), shipment->lines, what, session().today());
    if (!expenses) {
        session().complain(inWords(expenses.reason()));
        return;
    }
    Id<Expense> known;
    const bool isThere = std::ranges::all_of(*expenses, [&](const Expense &expense) {
        known = sameExpense(*session().records(), expense);
        return known.value() != 0;
    });
    if (isThere && known.value() != 0) {
        session().goTo({RecordType::Expense, known.value()});
        session().complain(
            tr("%1 is among the expenses already, with the same amount.").arg(toQt(what)));
        return;
    }
    Id<Expense> made;
    if (session().change(tr("%1: entered as an expense").arg(toQt(what)), [&](Edit &edit) {
            for (const Expense &expense : *expenses)
                made = edit.put(expense);
        }))
        session().goTo({RecordType::Expense, made.value()});
}

} // namespace lastrivet::ui
