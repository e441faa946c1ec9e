// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stores/Spending.h"
#include "ui/stores/StoreBoard.h"

#include <QVariant>

class QComboBox;
class QLabel;

namespace lastrivet::ui {

class AmountBars;
class AmountColumns;

/// Expenses with their receipts, by category and over time; each currency for itself.
class ExpenseBoard final : public StoreBoard {
    Q_OBJECT

public:
    explicit ExpenseBoard(Session &session, QWidget *parent = nullptr);

    void showRecord(RecordRef record) override;

protected:
    void refresh() override;

private:
    void build();
    void offer(const stores::Spending &spending);
    void filter();
    void say(const stores::Spending &spending);
    void draw(const stores::Spending &spending);

    QComboBox *m_category;
    /// The category that somebody chose, invalid for all of them. It may be gone for a while, until
    /// a change is undone.
    QVariant m_wanted;
    QLabel *m_words;
    QLabel *m_total;
    QComboBox *m_currency;
    AmountBars *m_categories;
    AmountColumns *m_months;
};

} // namespace lastrivet::ui
