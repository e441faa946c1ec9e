// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"
#include "core/base/Result.h"
#include "core/evidence/IncomingFile.h"
#include "core/evidence/PreparedFile.h"
#include "core/records/Records.h"

#include <filesystem>
#include <memory>
#include <stop_token>

namespace lastrivet::evidence {

/// Copies files into a project folder so that they stay: one pass reads, hashes and writes, and a
/// copy gets its final name only when it is on the disk.
///
/// Knows by hash what the records, and it itself, have taken in before. Removes what an interrupted
/// intake left behind. Only for the program that may write to the project.
class Intake {
public:
    /// `now` becomes `imported_on`.
    Intake(const std::filesystem::path &projectFolder, const Records &records, Moment now);
    ~Intake();

    /// Any thread, several at a time. Whatever is wrong with the file is told in the answer; a stop
    /// while it is read counts as failed.
    PreparedFile prepare(const IncomingFile &file, std::stop_token stop = {});

private:
    class Implementation;
    std::unique_ptr<Implementation> m_implementation;
};

} // namespace lastrivet::evidence
