// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <cstdlib>
#include <span>
#include <string_view>

// Everything that reads what a stranger may have written, one function each. Whatever the bytes
// are, a function returns; a promise that does not hold ends the program, as a crash does.
namespace lastrivet::fuzz {

using Input = std::span<const std::uint8_t>;

void csv(Input input);
void changeset(Input input);
void database_bytes(Input input);
void database_statements(Input input);
void document(Input input);
void entry_line(Input input);
void exif_time(Input input);
void file_name(Input input);
void picture(Input input);
void profile(Input input);
void search(Input input);
void squawk_line(Input input);

/// A function and the folder of its inputs under `corpus`.
struct Target {
    std::string_view name;
    void (*feed)(Input input);
};

inline constexpr std::array targets{
    Target{"changeset", changeset},
    Target{"csv", csv},
    Target{"database_bytes", database_bytes},
    Target{"database_statements", database_statements},
    Target{"document", document},
    Target{"entry_line", entry_line},
    Target{"exif_time", exif_time},
    Target{"file_name", file_name},
    Target{"picture", picture},
    Target{"profile", profile},
    Target{"search", search},
    Target{"squawk_line", squawk_line},
};

inline std::string_view textOf(Input input)
{
    return {reinterpret_cast<const char *>(input.data()), input.size()};
}

/// Unlike an assertion it is always there.
inline void promised(bool isKept)
{
    if (!isKept)
        std::abort();
}

} // namespace lastrivet::fuzz
