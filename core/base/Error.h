// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <stdexcept>
#include <string>
#include <utility>

namespace lastrivet {

/// Marks a fault whose sentence itself says that nothing was changed.
enum class Unchanged { IsSaid };

/// A machine fault (disk, database, file), said in one English sentence; caught once, where a
/// command began.
class Fault : public std::runtime_error {
public:
    explicit Fault(const std::string &sentence)
        : std::runtime_error(sentence)
    {
    }
    Fault(const std::string &sentence, Unchanged)
        : std::runtime_error(sentence)
        , m_saysUnchanged(true)
    {
    }

    /// Whoever tells it need not say so once more.
    bool saysNothingWasChanged() const { return m_saysUnchanged; }

private:
    bool m_saysUnchanged = false;
};

/// The project or an input could not be read, or is not what it should be.
class UnreadableInput : public Fault {
public:
    using Fault::Fault;
    /// `place` is the file or folder that the sentence names.
    UnreadableInput(const std::string &sentence, std::filesystem::path place)
        : Fault(sentence)
        , m_place(std::move(place))
    {
    }

    /// Empty when the sentence does not say where it is.
    const std::filesystem::path &place() const { return m_place; }

private:
    std::filesystem::path m_place;
};

/// Throws the fault again; puts `place` before its sentence unless that names a place already.
[[noreturn]] inline void throwNamed(const std::filesystem::path &place,
                                    const UnreadableInput &fault)
{
    if (!fault.place().empty())
        throw fault;
    throw UnreadableInput(place.string() + ": " + fault.what(), place);
}

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
