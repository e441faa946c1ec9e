// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace lastrivet::cli {

/// What the program tells the shell.
enum class Outcome {
    Done = 0,
    /// The answer to a question is no.
    No = 1,
    WrongUsage = 2,
    /// Something could not be read or written, or is invalid.
    Failed = 3,
};

} // namespace lastrivet::cli
