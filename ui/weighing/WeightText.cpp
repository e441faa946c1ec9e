// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/WeightText.h"

#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>

namespace lastrivet::ui {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Weighing", text);
}

} // namespace

QString weightText(double weight, WeightUnit unit)
{
    // What deviations and bulletins change is often less than a tenth.
    return plainNumber(weight, 2) + QChar(QChar::Nbsp) + toQt(word(unit));
}

QString armText(double arm, ArmUnit unit)
{
    return plainNumber(arm, unit == ArmUnit::Inches ? 2 : 1) + QChar(QChar::Nbsp) +
           toQt(word(unit));
}

QString balanceText(const balance::Balance &sum, balance::Units units)
{
    const QString weight = weightText(sum.weight, units.weight);
    const QString arm = armText(sum.cg, units.arm);
    return sum.percent_mac
               ? tr("%1 at %2, %3 % MAC").arg(weight, arm, plainNumber(*sum.percent_mac, 1))
               : tr("%1 at %2").arg(weight, arm);
}

QString headWithUnit(const QString &head, std::string_view unit)
{
    return QStringLiteral("%1, %2").arg(head, toQt(unit));
}

QString readOnlyReason(const Session &session)
{
    return session.isReadOnly() ? tr("This project is to read only: nothing can be written down.")
                                : QString();
}

} // namespace lastrivet::ui
