// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/profiles/Profile.h"
#include "core/records/Records.h"

#include <vector>

namespace lastrivet::certificate {

/// How far a document on the way to the certificate has come.
enum class PaperState {
    Missing,  ///< nobody asked for it
    Asked,    ///< asked for, not here yet
    Here,     ///< received
    Expired,  ///< received, and no longer valid
};

/// A document of the country, or one that the builder added, with the record of it.
struct Paper {
    /// Of the profile; of an added document, its own.
    std::string key;
    std::string title;
    /// Nothing for an added document.
    std::optional<Need> need;
    /// When it is due, or in which cases; may be empty.
    std::string when;
    /// As people cite it; empty for an added document.
    std::string source;
    PaperState state = PaperState::Missing;
    /// The latest record of it; none when it is missing.
    Id<CertificateDocument> record;
    /// Received without a number, or without a picture of it: told, but no fault.
    bool hasNumber = false;
    bool hasScan = false;
};

/// The country's documents in its order, then those that the builder added, as they stood at
/// `asOf`. Of several records of one document the latest received counts, else the latest.
std::vector<Paper> papers(const Records &records, const Profile &profile, Moment asOf);

/// Required documents that are not here, in the same order.
std::vector<Paper> missingPapers(const Records &records, const Profile &profile, Moment asOf);

/// Two papers, or a paper and the project, that do not say the same.
struct Disagreement {
    /// What is written differently: "name", "model", "serial number", "registration".
    std::string what;
    Id<CertificateDocument> document;
    std::string written;
    /// What the project's own facts say.
    std::string expected;
};

/// Documents whose name, model, serial number or registration is written otherwise than the
/// project has it. Upper and lower case, spaces, hyphens and full stops do not count; an empty
/// entry disagrees with nothing.
std::vector<Disagreement> disagreements(const Records &records);

/// Two live parts or pieces of equipment that claim one serial number of one maker's part.
struct SameSerialNumber {
    RecordRef first{RecordType::Equipment, 0};
    RecordRef second{RecordType::Equipment, 0};
    std::string serial_number;
};

std::vector<SameSerialNumber> sameSerialNumbers(const Records &records);

} // namespace lastrivet::certificate
