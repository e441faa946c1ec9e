// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Error.h"
#include "core/base/Message.h"

#include <utility>

namespace lastrivet::evidence {

/// Something about one file that keeps it from being taken in; ends there as a sentence.
class FileFault : public Fault {
public:
    explicit FileFault(Message message)
        : Fault(english(message))
        , m_message(std::move(message))
    {
    }

    const Message &message() const { return m_message; }

private:
    Message m_message;
};

} // namespace lastrivet::evidence
