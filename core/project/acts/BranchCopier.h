// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/acts/BranchCopy.h"

#include <unordered_map>
#include <unordered_set>

namespace lastrivet::acts {

/// Whether a record of a branch is copied with it.
bool isCopied(const Step &step);
bool isCopied(const Closing &closing);
bool isCopied(const Fastener &fastener);
bool isCopied(const Measurement &measurement);

/// Makes the records of a copied branch, and keeps track of which is the copy of which.
class BranchCopier {
public:
    BranchCopier(Edit &edit, const BranchCopy &copy);

    Id<Component> run();

private:
    void copyParts();
    void copyClosings();
    void copyClosing(const Closing &original);
    void copyChecks(const Closing &original);
    void copyHoldPoints(const Closing &original);
    void copySteps();
    void copyStep(const Step &original);
    void copyFasteners();
    void copyMeasurements();
    /// The steps that come before the copy; in place of one that is not copied, those before it.
    IdSet<Step> before(const Step &original) const;
    IdSet<Closing> mayFollow(const IdSet<Closing> &original) const;
    Id<Step> stepFor(Id<Step> original) const;
    std::string words(const std::string &text) const;
    std::optional<Moment> planned(const std::optional<Moment> &original) const;

    Edit &m_edit;
    const BranchCopy &m_copy;
    /// The records as they were before, so that what is added here is not copied again.
    const Records m_before;
    std::unordered_map<Id<Component>, Id<Component>> m_parts;
    std::unordered_map<Id<Closing>, Id<Closing>> m_closings;
    std::unordered_map<Id<Step>, Id<Step>> m_steps;
};

} // namespace lastrivet::acts
