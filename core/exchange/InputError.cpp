// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/InputError.h"

namespace lastrivet::exchange {

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
