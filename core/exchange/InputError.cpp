// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/InputError.h"

#include "core/base/Tongue.h"

#include <utility>

namespace lastrivet::exchange {

InputError errorAt(Message spot, Message what)
{
    return {lastrivet::english(spot), {}, std::move(what), std::move(spot)};
}

Message placeOf(const InputError &error)
{
    return error.spot.pattern.empty() ? verbatim(error.place) : error.spot;
}

std::string english(const InputError &error, std::string_view file)
{
    std::string line{file};
    for (const std::string &part : {error.place, error.record}) {
        if (!part.empty())
            line += ": " + part;
    }
    return line + ": " + lastrivet::english(error.what);
}

} // namespace lastrivet::exchange
