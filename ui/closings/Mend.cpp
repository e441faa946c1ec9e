// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/Mend.h"

#include <QCoreApplication>

namespace lastrivet::ui {

Mend mendFor(const readiness::Blocker &blocker)
{
    switch (blocker.rule) {
    case readiness::Rule::UnsignedHoldPoint:
        return Mend::Sign;
    case readiness::Rule::OutdatedSignOff:
        // Who has been there once has to come again.
        return blocker.waits_for == SignerRole::Builder ? Mend::Sign : Mend::AskForVisit;
    case readiness::Rule::SignatureWithoutSheet:
        return Mend::AddSheet;
    case readiness::Rule::TooFewPhotos:
    case readiness::Rule::StalePhotos:
        return Mend::AddPhoto;
    case readiness::Rule::UntickedCheck:
        return Mend::Tick;
    case readiness::Rule::UndoneStep:
        return Mend::StepDone;
    default:
        return Mend::None;
    }
}

QString mendWords(Mend mend)
{
    switch (mend) {
    case Mend::None:
        return {};
    case Mend::Sign:
        return QCoreApplication::translate("Mend", "Sign");
    case Mend::AskForVisit:
        return QCoreApplication::translate("Mend", "Ask for a visit");
    case Mend::AddSheet:
        return QCoreApplication::translate("Mend", "Add the sheet");
    case Mend::AddPhoto:
        return QCoreApplication::translate("Mend", "Add photos");
    case Mend::Tick:
        return QCoreApplication::translate("Mend", "Tick");
    case Mend::StepDone:
        return QCoreApplication::translate("Mend", "Tick off");
    }
    return {};
}

} // namespace lastrivet::ui
