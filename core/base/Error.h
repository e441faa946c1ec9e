// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stdexcept>
#include <string>

namespace lastrivet {

/// A machine fault (disk, database, file) told in one sentence; caught once, at the command border.
class Fault : public std::runtime_error {
public:
    explicit Fault(const std::string &sentence)
        : std::runtime_error(sentence)
    {
    }
};

/// The project or an input could not be read, or is not what it should be.
class UnreadableInput : public Fault {
public:
    using Fault::Fault;
};

/// The project is open for writing elsewhere, or cannot be written here.
class NotWritable : public Fault {
public:
    using Fault::Fault;
};

/// Something could not be saved; what was there before is still there.
class NotSaved : public Fault {
public:
    using Fault::Fault;
};

} // namespace lastrivet
