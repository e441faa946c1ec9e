// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stores/Delivery.h"
#include "ui/stores/StoreBoard.h"
#include "ui/widgets/BegunForms.h"

#include <QVariant>

class QComboBox;
class QLabel;
class QPushButton;

namespace lastrivet::ui {

class ClaimView;
class Section;

/// Packing lists against what was counted: brought in, counted line by line, claimed, and what
/// waits for what is not here.
class DeliveryBoard final : public StoreBoard {
    Q_OBJECT

public:
    explicit DeliveryBoard(Session &session, QWidget *parent = nullptr);

    void showRecord(RecordRef record) override;
    void chooseShipment(const QString &name);
    /// Asks for a list and brings it in.
    void bringIn();
    /// Writes the letter about the chosen shipment.
    void startClaim();
    ClaimView &claim() const { return *m_claim; }

protected:
    void refresh() override;

private:
    void build();
    void connectActs();
    void offerShipments(const std::vector<stores::Shipment> &shipments);
    /// Somebody chose what is listed; a letter gives way to the list.
    void filter();
    void applyFilter();
    bool isListed(std::int64_t line) const;
    const stores::Shipment *chosenShipment() const;
    void say();
    void showWaits();
    void countChosen();
    void enterExpenses();

    std::vector<stores::Shipment> m_shipments;
    /// The name of the shipment that somebody chose, invalid for all of them. It may be gone for a
    /// while, until a change is undone.
    QVariant m_wanted;
    QComboBox *m_shipment;
    QComboBox *m_which;
    QLabel *m_words;
    QPushButton *m_bring;
    QPushButton *m_count;
    QPushButton *m_letter;
    QPushButton *m_expense;
    Section *m_waitsHere;
    Section *m_waits;
    ClaimView *m_claim;
    BegunForms m_begunClaim;
};

} // namespace lastrivet::ui
