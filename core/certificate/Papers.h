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
    Missing, ///< not asked for yet
    Asked,   ///< asked for, not here yet
    Here,    ///< received
    Expired, ///< received, and no longer valid
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
    /// The record that counts; none while nobody began one.
    Id<CertificateDocument> record;
    /// Received without a number, or without a picture of it: told, but no fault.
    bool hasNumber = false;
    bool hasScan = false;
};

/// The country's documents in its order, then those that the builder added, as they stood at
/// `asOf`. Of several records of one document one that is here counts before an expired one, that
/// before one that was asked for; of equals the latest.
std::vector<Paper> papers(const Records &records, const Profile &profile, Moment asOf);

/// "not here", "asked for on 3 Mar 2026", "here since …", "expired after …": the state with its
/// day.
Message inWords(const Paper &paper, const Records &records);
/// "required", "expected", "in some cases", "for resale".
Message inWords(Need need);

} // namespace lastrivet::certificate
