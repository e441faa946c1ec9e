// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Expense.h"

#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Media.h"

namespace lastrivet {

const RecordDescription &describeExpense()
{
    static const std::array fields{
        idField<&Expense::id>(),
        field<&Expense::spent_on>("spent_on", true),
        field<&Expense::what>("what", true),
        field<&Expense::supplier>("supplier"),
        field<&Expense::amount>("amount", true),
        field<&Expense::currency>("currency", true),
        field<&Expense::category>("category"),
        field<&Expense::media_id>("media_id"),
        field<&Expense::note>("note"),
        field<&Expense::withdrawn_on>("withdrawn_on"),
        field<&Expense::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Expense>(fields);
    return description;
}

} // namespace lastrivet
