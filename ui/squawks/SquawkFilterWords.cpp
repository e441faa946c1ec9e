// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkFilterWords.h"

#include "core/packet/SquawkFilterWords.h"
#include "ui/convert/QtText.h"

namespace lastrivet::ui {

QString standingWord(readiness::SquawkFilter::Standing standing)
{
    return inWords(packet::inWords(standing));
}

QString verifierWord(SignerRole role)
{
    return inWords(packet::verifierInWords(role));
}

QString reachWord(readiness::Reachable reachable)
{
    return inWords(packet::inWords(reachable));
}

} // namespace lastrivet::ui
