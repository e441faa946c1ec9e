// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkFilterWords.h"

#include "ui/convert/QtText.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>
#include <QStringList>

namespace lastrivet::ui {

using readiness::Reachable;
using readiness::SquawkFilter;
using Standing = SquawkFilter::Standing;

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("SquawkFilter", text);
}

} // namespace

QString standingWord(Standing standing)
{
    switch (standing) {
    case Standing::Outstanding:
        return tr("outstanding");
    case Standing::ToFix:
        return tr("to be fixed");
    case Standing::ToVerify:
        return tr("fixed, to be looked at");
    case Standing::Done:
        return tr("done");
    case Standing::All:
        break;
    }
    return tr("outstanding and done");
}

QString verifierWord(SignerRole role)
{
    switch (role) {
    case SignerRole::Inspector:
        return tr("for the inspector to verify");
    case SignerRole::Adviser:
        return tr("for the adviser to verify");
    case SignerRole::Builder:
        break;
    }
    return tr("for the builder to verify");
}

QString reachWord(Reachable reachable)
{
    switch (reachable) {
    case Reachable::NotForLong:
        return tr("soon out of reach");
    case Reachable::NoLonger:
        return tr("out of reach");
    default:
        return tr("in reach");
    }
}

QString inWords(const SquawkFilter &filter, const Records &records)
{
    if (filter == SquawkFilter{.standing = Standing::All})
        return {};
    QStringList words{standingWord(filter.standing)};
    if (filter.severity)
        words.append(severityWord(*filter.severity));
    if (filter.reachable)
        words.append(reachWord(*filter.reachable));
    if (filter.verifier)
        words.append(verifierWord(*filter.verifier));
    if (filter.part)
        words.append(tr("%1 and below").arg(partName(records, filter.part)));
    if (filter.inspection)
        words.append(shortName(records, {RecordType::Inspection, filter.inspection.value()}));
    if (!filter.text.empty())
        words.append(tr("with the words “%1”").arg(toQt(filter.text)));
    return words.join(QStringLiteral("; "));
}

} // namespace lastrivet::ui
