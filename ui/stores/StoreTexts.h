// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/parts/PartSection.h"

/// What the columns of the stores show and do; each takes the id of the list's record.
namespace lastrivet::ui::storeroom {

QString lineName(const Session &session, std::int64_t id);
QString linePartNumber(const Session &session, std::int64_t id);
QString lineListed(const Session &session, std::int64_t id);
QString lineReceived(const Session &session, std::int64_t id);
QString lineDamaged(const Session &session, std::int64_t id);
QString lineStands(const Session &session, std::int64_t id);
QString lineFor(const Session &session, std::int64_t id);
Tone lineTone(const Session &session, std::int64_t id);
bool isCounted(const Records &records, std::int64_t id);
void tickCounted(Edit &edit, std::int64_t id, bool isTicked);
bool writeReceived(Edit &edit, std::int64_t id, const QString &text);
bool writeDamaged(Edit &edit, std::int64_t id, const QString &text);
QString whyNotReceived(const Session &session, std::int64_t id, const QString &text);
QString whyNotDamaged(const Session &session, std::int64_t id, const QString &text);

QString lotName(const Session &session, std::int64_t id);
QString lotNumber(const Session &session, std::int64_t id);
QString lotExpires(const Session &session, std::int64_t id);
QString lotStands(const Session &session, std::int64_t id);
Tone lotTone(const Session &session, std::int64_t id);
QString lotUsed(const Session &session, std::int64_t id);
/// "5 Dec, 10:00: 3 d 2 h left", and what it holds open.
QString cureWords(const Session &session, Id<MaterialUse> use);

QString toolName(const Session &session, std::int64_t id);
QString toolSerial(const Session &session, std::int64_t id);
QString toolDue(const Session &session, std::int64_t id);
QString toolStands(const Session &session, std::int64_t id);
Tone toolTone(const Session &session, std::int64_t id);
QString toolCertificate(const Session &session, std::int64_t id);
QString toolOutside(const Session &session, std::int64_t id);
Tone toolOutsideTone(const Session &session, std::int64_t id);

QString expenseDay(const Session &session, std::int64_t id);
QString expenseWhat(const Session &session, std::int64_t id);
QString expenseSupplier(const Session &session, std::int64_t id);
QString expenseCategory(const Session &session, std::int64_t id);
QString expenseAmount(const Session &session, std::int64_t id);
QString expenseReceipt(const Session &session, std::int64_t id);
bool writeCategory(Edit &edit, std::int64_t id, const QString &text);

/// "3 d 2 h", "5 h 20".
QString spanText(Minutes minutes);

} // namespace lastrivet::ui::storeroom
