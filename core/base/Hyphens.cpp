// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Hyphens.h"

#include "core/base/CaseFold.h"
#include "core/base/Digits.h"

#include <cstddef>

namespace lastrivet {

namespace {

bool isInWord(char c)
{
    return isDigit(c) || isAsciiLetter(c);
}

} // namespace

std::string withPlainHyphens(std::string_view text)
{
    std::string plain(text);
    for (const std::string_view hyphen : hyphens) {
        for (auto at = plain.find(hyphen, 1); at != std::string::npos;
             at = plain.find(hyphen, at + 1)) {
            const std::size_t behind = at + hyphen.size();
            if (!isInWord(plain[at - 1]) || behind >= plain.size() || !isInWord(plain[behind]))
                continue;
            plain[at] = '-';
            plain.erase(at + 1, hyphen.size() - 1);
        }
    }
    return plain;
}

} // namespace lastrivet
