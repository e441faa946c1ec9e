// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stores/Delivery.h"
#include "ui/stores/StoreBoard.h"
#include "ui/widgets/BegunForms.h"

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
    void filter();
    bool isListed(std::int64_t line) const;
    const stores::Shipment *chosenShipment() const;
    void say();
    void showWaits();
    void countChosen();
    void enterExpenses();

    std::vector<stores::Shipment> m_shipments;
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
