// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/TemporaryFolder.h"

#include "core/base/Error.h"
#include "core/base/WriteFailure.h"

#include <cerrno>
#include <cstdlib>
#include <system_error>

namespace lastrivet {

TemporaryFolder::TemporaryFolder()
{
    std::error_code failure;
    const auto place = std::filesystem::temp_directory_path(failure);
    if (failure)
        throw NotSaved("There is no folder for temporary files; TMPDIR may name one.");
    auto pattern = (place / "lastrivet-XXXXXX").string();
    if (!::mkdtemp(pattern.data()))
        throw NotSaved(Message{"No temporary folder could be made: {0}.", {whyNotWritten(errno)}});
    m_path = pattern;
}

TemporaryFolder::~TemporaryFolder()
{
    std::error_code none;
    std::filesystem::remove_all(m_path, none);
}

} // namespace lastrivet
