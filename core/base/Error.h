// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Tongue.h"

#include <filesystem>
#include <stdexcept>
#include <string>
#include <utility>

namespace lastrivet {

/// Marks a fault whose sentence itself says that nothing was changed.
enum class Unchanged { IsSaid };

/// A machine fault (disk, database, file), said in one sentence; caught once, where a command
/// began. `what` says it in English, `message` is what a language has its words for.
class Fault : public std::runtime_error {
public:
    explicit Fault(Message message)
        : std::runtime_error(english(message))
        , m_message(std::move(message))
    {
    }
    Fault(Message message, Unchanged)
        : Fault(std::move(message))
    {
        m_saysUnchanged = true;
    }
    /// A sentence without arguments.
    explicit Fault(const std::string &sentence)
        : std::runtime_error(sentence)
        , m_message{"{0}", {nested({sentence, {}})}}
    {
    }
    Fault(const std::string &sentence, Unchanged)
        : Fault(sentence)
    {
        m_saysUnchanged = true;
    }

    const Message &message() const { return m_message; }

    /// Whoever tells it need not say so once more.
    bool saysNothingWasChanged() const { return m_saysUnchanged; }

private:
    Message m_message;
    bool m_saysUnchanged = false;
};

/// What went wrong, for whoever catches everything.
inline Message messageOf(const std::exception &error)
{
    const auto *fault = dynamic_cast<const Fault *>(&error);
    return fault ? fault->message() : verbatim(error.what());
}

/// The project or an input could not be read, or is not what it should be.
class UnreadableInput : public Fault {
public:
    using Fault::Fault;
    /// `place` is the file or folder that the sentence names.
    UnreadableInput(Message message, std::filesystem::path place)
        : Fault(std::move(message))
        , m_place(std::move(place))
    {
    }
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
    throw UnreadableInput(Message{"{0}: {1}", {place.string(), nested(fault.message())}}, place);
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
