// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/certificate/Papers.h"
#include "core/packet/CorrectionsReport.h"
#include "core/packet/HandOver.h"
#include "core/packet/MajorPortion.h"
#include "core/packet/WeightReport.h"

#include <string>
#include <vector>

namespace lastrivet::packet {

/// Everything that goes to the final inspection, in one document.
struct FinalFile {
    /// A document on the way to the certificate.
    struct Document {
        std::string title;
        std::optional<Need> need;
        Message state;
        certificate::PaperState standing = certificate::PaperState::Missing;
        std::string number;
        std::string edition;
        std::size_t scans = 0;
    };
    /// Two records that do not say the same.
    struct Difference {
        std::string record;
        Message what;
    };

    Aircraft aircraft;
    std::vector<Document> documents;
    std::vector<Difference> differences;
    /// Every inspection that was held, by day, with its findings and what became of them.
    std::vector<CorrectionsReport> inspections;
    MajorPortion major_portion;
    WeightReport weight;
    /// The aircraft as built: closings, equipment, hours, deviations, bulletins, open squawks.
    HandOver built;

    std::size_t missingDocuments() const;
    std::size_t openFindings() const;
    /// Closings that are not closed, of the whole aircraft's too.
    std::size_t openClosings() const;
    /// Closings that were closed with gaps, and that nobody has accepted since.
    std::size_t closedWithGaps() const;
    /// Deviations that nobody has decided, and those that were rejected and are built all the same.
    std::size_t openDeviations() const;
    /// Bulletins that apply, or that nobody has looked into, and are not complied with.
    std::size_t openBulletins() const;
};

FinalFile finalFile(const Records &records, const Profile &profile,
                    const readiness::Answer &answer);

} // namespace lastrivet::packet
