// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/ReadableName.h"

#include <fmt/format.h>

#include <array>

namespace lastrivet::evidence {

namespace {

constexpr std::size_t longestSlug = 40;

/// ASCII for U+00C0 to U+017F (Latin-1 Supplement and Latin Extended-A of the Unicode Standard):
/// the letter without its marks, as names on disk are commonly simplified.
constexpr std::string_view latin = "a a a a a a aec e e e e i i i i "
                                   "d n o o o o o   o u u u u y thss"
                                   "a a a a a a aec e e e e i i i i "
                                   "d n o o o o o   o u u u u y thy "
                                   "a a a a a a c c c c c c c c d d "
                                   "d d e e e e e e e e e e g g g g "
                                   "g g g g h h h h i i i i i i i i "
                                   "i i ijijj j k k k l l l l l l l "
                                   "l l l n n n n n n n n n o o o o "
                                   "o o oeoer r r r r r s s s s s s "
                                   "s s t t t t t t u u u u u u u u "
                                   "u u u u w w y y y z z z z z z s ";
static_assert(latin.size() == 2 * (0x180 - 0xc0));

/// The ASCII letters for a two-byte UTF-8 sequence; empty for letters that have none.
std::string_view simplified(unsigned char lead, unsigned char next)
{
    const unsigned code = (lead & 0x1fu) << 6 | (next & 0x3fu);
    if (code < 0xc0 || code >= 0x180)
        return {};
    const std::string_view letters = latin.substr(2 * (code - 0xc0), 2);
    return letters.substr(0, letters.find(' '));
}

char lowered(char letter)
{
    return letter >= 'A' && letter <= 'Z' ? char(letter - 'A' + 'a') : letter;
}

} // namespace

std::string slug(std::string_view name)
{
    std::string text;
    bool gap = false;
    const auto add = [&](std::string_view letters) {
        if (gap && !text.empty() && !letters.empty())
            text += '-';
        gap = gap && letters.empty();
        text += letters;
    };
    for (std::size_t i = 0; i < name.size() && text.size() < longestSlug; ++i) {
        const char letter = lowered(name[i]);
        const auto byte = static_cast<unsigned char>(letter);
        if ((letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9'))
            add({&letter, 1});
        else if ((byte & 0xe0) == 0xc0 && i + 1 < name.size())
            add(simplified(byte, static_cast<unsigned char>(name[++i])));
        else if (letter != '\'')
            gap = true;
    }
    return text;
}

std::filesystem::path folderFor(FileKind kind, Moment when)
{
    if (mediaKind(kind) == MediaKind::Document)
        return "documents";
    return std::filesystem::path("photos") / when.text().substr(0, 4);
}

std::string readableName(FileKind kind, Moment when, std::string_view slug, std::string_view sha256,
                         std::size_t digits)
{
    std::string name = when.dayOnly().text();
    if (when.hasTime())
        name += fmt::format("_{:02}{:02}", when.minuteOfDay() / 60, when.minuteOfDay() % 60);
    if (!slug.empty())
        name += fmt::format("_{}", slug);
    return name + fmt::format("_{}.{}", sha256.substr(0, digits), suffix(kind));
}

} // namespace lastrivet::evidence
