// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Error.h"
#include "core/base/Message.h"

#include <utility>

namespace lastrivet::evidence {

/// Why one file cannot be taken in or written; carries the sentence as a `Message`.
class FileFault : public Fault {
public:
    explicit FileFault(Message message)
        : Fault(std::move(message))
    {
    }
};

/// The project's disk does not take a file: nothing is wrong with that, and another time it may.
class DiskFault : public FileFault {
public:
    using FileFault::FileFault;
};

} // namespace lastrivet::evidence
