// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/StoreTexts.h"

#include "ui/convert/MoneyText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>

// Expenses.
namespace lastrivet::ui::storeroom {

namespace {

const Expense &expenseOf(const Session &session, std::int64_t id)
{
    return *session.records()->find(Id<Expense>{id});
}

} // namespace

QString expenseDay(const Session &session, std::int64_t id)
{
    return dayText(*expenseOf(session, id).spent_on);
}

QString expenseWhat(const Session &session, std::int64_t id)
{
    return toQt(expenseOf(session, id).what);
}

QString expenseSupplier(const Session &session, std::int64_t id)
{
    return toQt(expenseOf(session, id).supplier);
}

QString expenseCategory(const Session &session, std::int64_t id)
{
    return toQt(expenseOf(session, id).category);
}

QString expenseAmount(const Session &session, std::int64_t id)
{
    const Expense &expense = expenseOf(session, id);
    return moneyText(Money{expense.amount, expense.currency});
}

QString expenseReceipt(const Session &session, std::int64_t id)
{
    return session.records()->findLive(expenseOf(session, id).media_id)
               ? QCoreApplication::translate("StoreTexts", "on file")
               : QString();
}

bool writeCategory(Edit &edit, std::int64_t id, const QString &text)
{
    edit.update(Id<Expense>{id}, [&](Expense &expense) { expense.category = toStd(text); });
    return true;
}

} // namespace lastrivet::ui::storeroom
