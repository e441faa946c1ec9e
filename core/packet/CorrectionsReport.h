// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Aircraft.h"
#include "core/packet/FrontPages.h"
#include "core/packet/SquawkEntry.h"
#include "core/profiles/Profile.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// What became of the findings of one inspection: each with its correction, pictures before and
/// after, and who verified it.
struct CorrectionsReport {
    struct Finding {
        SquawkEntry squawk;
        /// What was agreed about the answer, and other remarks.
        std::string note;
        std::vector<Photo> before;
        std::vector<Photo> after;
    };
    /// A hold point that was looked at, and what was said.
    struct Verdict {
        std::string closing;
        HoldPointKind kind = HoldPointKind::PreCover;
        SignOffResult result = SignOffResult::Accepted;
        std::string remarks;
    };

    Moment as_of;
    Aircraft aircraft{};
    FrontPages::Visit visit{};
    std::vector<Verdict> verdicts{};
    /// By the number on the sheet, as a number where it is one.
    std::vector<Finding> findings{};
    std::vector<Profile::Caution> cautions{};

    /// Findings that are neither verified nor accepted, and those of them that are corrected.
    std::size_t openCount() const;
    std::size_t correctedCount() const;
};

/// The report as of a moment; nothing for an inspection that is not held or not on record.
std::optional<CorrectionsReport> correctionsReport(const Records &records, const Profile &profile,
                                                   Id<Inspection> inspection, Moment asOf);

/// The photographs of a squawk that show how it was found, and how it was put right: as the picture
/// says itself (`defect`, `repair`), else by whether it was taken before the correction.
struct BeforeAndAfter {
    std::vector<const Media *> before;
    std::vector<const Media *> after;
};
BeforeAndAfter beforeAndAfter(const Records &records, const Squawk &squawk);

} // namespace lastrivet::packet
