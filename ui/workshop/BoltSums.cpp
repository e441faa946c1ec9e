// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/Torque.h"
#include "core/workshop/Wrench.h"
#include "ui/convert/QtText.h"
#include "ui/workshop/RuleWords.h"
#include "ui/workshop/Sum.h"

#include <QCoreApplication>

namespace lastrivet::ui {

namespace {

using workshop::Quantity;

QString tr(const char *text)
{
    return QCoreApplication::translate("Workshop", text);
}

std::vector<Figure> torqueFigures(const workshop::Torque &torque, const Entered &entered,
                                  const workshop::OwnLimit *own)
{
    const auto units = entered.units;
    std::vector<Figure> figures;
    if (own)
        figures.push_back({tr("The project's own limit"),
                           ownText(*own),
                           tr("without the drag of the nut"),
                           {own->source, "own"},
                           true,
                           false});
    figures.push_back(
        {tr("Set the wrench to"), spanText(torque.minimum, torque.maximum, Quantity::Torque, units),
         torque.drag_added > 0 ? tr("with the drag of the nut") : tr("add the drag of the nut"),
         torque.source, !own, own != nullptr});
    figures.push_back({tr("Never more than"),
                       figureText(torque.allowed_maximum, Quantity::Torque, units),
                       toQt(torque.remark), torque.source, false, own != nullptr});
    for (const auto &least : workshop::prevailingTorque(torque.thread))
        figures.push_back({tr("Least drag of a self-locking nut"),
                           figureText(least.minimum, Quantity::Torque, units),
                           ruleWords(least.basis), least.source});
    return figures;
}

SumAnswer workTorque(const Entered &entered)
{
    const auto &thread = entered.keys[0];
    const auto nut = entered.keys[1] == word(workshop::Nut::Shear) ? workshop::Nut::Shear
                                                                   : workshop::Nut::Tension;
    const auto torque = workshop::torque(thread, nut, entered.numbers[2]);
    const auto subject = workshop::torqueSubject(thread, entered.keys[1]);
    if (!torque)
        return {{}, inWords(torque.reason()), subject};
    return {torqueFigures(*torque, entered, workshop::ownLimit(entered.own, subject)), {}, subject};
}

Sum torqueSum()
{
    Sum sum;
    sum.title = tr("Torque of a bolt");
    sum.how = tr("The drag is read off the wrench while the nut runs down, and added. For clean, "
                 "dry, cadmium-plated threads; what lubricated threads take the maker says.");
    SumField thread{tr("Thread")};
    thread.keys = workshop::threads();
    for (const auto &known : thread.keys)
        thread.choices << toQt(known);
    SumField nut{tr("Nut")};
    nut.choices = {tr("thick, loaded in tension"), tr("thin, loaded in shear")};
    nut.keys = {std::string(word(workshop::Nut::Tension)), std::string(word(workshop::Nut::Shear))};
    sum.fields = {thread, nut, {tr("Drag of the nut"), Quantity::Torque}};
    sum.own_unit = QStringLiteral("in-lb");
    sum.work = workTorque;
    return sum;
}

workshop::Source wrenchPaper()
{
    return {std::string(workshop::wrenchSource), "read in two places"};
}

std::vector<SumField> leverFields(const QString &torque, double initial)
{
    return {{torque, Quantity::Torque, initial},
            {tr("Lever: middle of the grip to the drive"), Quantity::Length, 10},
            {tr("Extension: drive to the nut"), Quantity::Length, 4}};
}

Sum settingSum()
{
    Sum sum;
    sum.title = tr("Wrench with an extension: what to set");
    sum.how = tr("An extension that points back to the handle is below zero; at a right angle it "
                 "changes nothing.");
    sum.fields = leverFields(tr("Torque wanted at the nut"), 300);
    sum.work = [](const Entered &entered) -> SumAnswer {
        const auto &n = entered.numbers;
        const auto setting = workshop::wrenchSetting(n[0], n[1], n[2]);
        if (!setting)
            return {{}, inWords(setting.reason())};
        return {{{tr("Set the wrench to"), figureText(*setting, Quantity::Torque, entered.units),
                  QStringLiteral("T × L / (L + E)"), wrenchPaper(), true}},
                {}};
    };
    return sum;
}

Sum appliedSum()
{
    Sum sum;
    sum.title = tr("Wrench with an extension: what reaches the nut");
    sum.fields = leverFields(tr("The wrench is set to"), 200);
    sum.work = [](const Entered &entered) -> SumAnswer {
        const auto &n = entered.numbers;
        const auto applied = workshop::appliedTorque(n[0], n[1], n[2]);
        if (!applied)
            return {{}, inWords(applied.reason())};
        return {{{tr("At the nut"), figureText(*applied, Quantity::Torque, entered.units),
                  QStringLiteral("S × (L + E) / L"), wrenchPaper(), true}},
                {}};
    };
    return sum;
}

} // namespace

std::vector<Sum> boltSums()
{
    return {torqueSum(), settingSum(), appliedSum()};
}

} // namespace lastrivet::ui
