// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/rules/RulesWords.h"

#include "ui/convert/QtText.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <array>

namespace lastrivet::ui {

namespace {

// What the file calls them; English needs no translation but a space for each underscore.
[[maybe_unused]] constexpr std::array names{
    QT_TRANSLATE_NOOP("RuleField", "id"),
    QT_TRANSLATE_NOOP("RuleField", "name"),
    QT_TRANSLATE_NOOP("RuleField", "edition"),
    QT_TRANSLATE_NOOP("RuleField", "late_acceptance_by"),
    QT_TRANSLATE_NOOP("RuleField", "factory_closing_needs_document"),
    QT_TRANSLATE_NOOP("RuleField", "credit_basis"),
    QT_TRANSLATE_NOOP("RuleField", "interior_photos"),
    QT_TRANSLATE_NOOP("RuleField", "one_open_request"),
    QT_TRANSLATE_NOOP("RuleField", "late_entry_days"),
    QT_TRANSLATE_NOOP("RuleField", "basis"),
    QT_TRANSLATE_NOOP("RuleField", "hold_points"),
    QT_TRANSLATE_NOOP("RuleField", "checklists"),
    QT_TRANSLATE_NOOP("RuleField", "documents"),
    QT_TRANSLATE_NOOP("RuleField", "test_period"),
    QT_TRANSLATE_NOOP("RuleField", "credit"),
    QT_TRANSLATE_NOOP("RuleField", "cautions"),
    QT_TRANSLATE_NOOP("RuleField", "words"),
    QT_TRANSLATE_NOOP("RuleField", "sources"),
    QT_TRANSLATE_NOOP("RuleField", "rule"),
    QT_TRANSLATE_NOOP("RuleField", "rules"),
    QT_TRANSLATE_NOOP("RuleField", "text"),
    QT_TRANSLATE_NOOP("RuleField", "source"),
    QT_TRANSLATE_NOOP("RuleField", "mark"),
    QT_TRANSLATE_NOOP("RuleField", "kind"),
    QT_TRANSLATE_NOOP("RuleField", "signer_role"),
    QT_TRANSLATE_NOOP("RuleField", "required"),
    QT_TRANSLATE_NOOP("RuleField", "component_kinds"),
    QT_TRANSLATE_NOOP("RuleField", "constructions"),
    QT_TRANSLATE_NOOP("RuleField", "scope"),
    QT_TRANSLATE_NOOP("RuleField", "item"),
    QT_TRANSLATE_NOOP("RuleField", "items"),
    QT_TRANSLATE_NOOP("RuleField", "at"),
    QT_TRANSLATE_NOOP("RuleField", "key"),
    QT_TRANSLATE_NOOP("RuleField", "title"),
    QT_TRANSLATE_NOOP("RuleField", "need"),
    QT_TRANSLATE_NOOP("RuleField", "when"),
    QT_TRANSLATE_NOOP("RuleField", "applies_to"),
    QT_TRANSLATE_NOOP("RuleField", "hours"),
    QT_TRANSLATE_NOOP("RuleField", "columns"),
    QT_TRANSLATE_NOOP("RuleField", "passes_when"),
    QT_TRANSLATE_NOOP("RuleField", "read_on"),
    QT_TRANSLATE_NOOP("RuleField", "note"),
    QT_TRANSLATE_NOOP("RuleField", "squawk"),
    QT_TRANSLATE_NOOP("RuleField", "squawks"),
    QT_TRANSLATE_NOOP("RuleField", "finding"),
    QT_TRANSLATE_NOOP("RuleField", "findings"),
    QT_TRANSLATE_NOOP("RuleField", "undercarriage"),
    QT_TRANSLATE_NOOP("RuleField", "inspector"),
    QT_TRANSLATE_NOOP("RuleField", "adviser"),
    QT_TRANSLATE_NOOP("RuleField", "authority"),
    QT_TRANSLATE_NOOP("RuleField", "certificate"),
};

bool isIndex(const QString &step)
{
    return !step.isEmpty() &&
           std::ranges::all_of(step, [](QChar letter) { return letter.isDigit(); });
}

} // namespace

QString ruleFieldWords(std::string_view field)
{
    const QByteArray key(field.data(), qsizetype(field.size()));
    QString words = QCoreApplication::translate("RuleField", key.constData())
                        .replace(QLatin1Char('_'), QLatin1Char(' '));
    if (!words.isEmpty())
        words[0] = words[0].toUpper();
    return words;
}

QString faultWords(const ProfileFault &fault)
{
    QStringList place;
    for (const QString &step : toQt(fault.pointer).split(QLatin1Char('/'), Qt::SkipEmptyParts))
        place << (isIndex(step)
                      ? QCoreApplication::translate("RulesView", "line %1").arg(step.toInt() + 1)
                      : ruleFieldWords(toStd(step)));
    const QString what = inWords(fault.what);
    return place.isEmpty()
               ? QCoreApplication::translate("RulesView", "The whole %1.").arg(what)
               : QCoreApplication::translate("RulesView", "%1: %2.", "place in the rules, fault")
                     .arg(place.join(QStringLiteral(", ")), what);
}

} // namespace lastrivet::ui
