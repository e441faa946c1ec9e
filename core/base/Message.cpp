// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Message.h"

namespace lastrivet {

std::string filled(std::string_view pattern, const std::vector<std::string> &arguments)
{
    std::string text;
    for (std::size_t i = 0; i < pattern.size(); ++i) {
        const bool isPlace = pattern[i] == '{' && i + 2 < pattern.size() && pattern[i + 2] == '}' &&
                             pattern[i + 1] >= '0' && pattern[i + 1] <= '9';
        const std::size_t index = isPlace ? std::size_t(pattern[i + 1] - '0') : 0;
        if (!isPlace) {
            text += pattern[i];
            continue;
        }
        if (index < arguments.size())
            text += arguments[index];
        i += 2;
    }
    return text;
}

} // namespace lastrivet
