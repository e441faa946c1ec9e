// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/credit/Credit.h"
#include "core/credit/Tenths.h"
#include "core/packet/Aircraft.h"
#include "core/packet/Photo.h"

#include <string>
#include <vector>

namespace lastrivet::packet {

/// The major-portion account as a form with the evidence behind each row.
struct MajorPortion {
    struct Task {
        std::string section;
        std::string title;
        /// The builder added it to the form.
        bool is_added = false;
        bool is_not_applicable = false;
        credit::Tenths tenths;
        credit::HalfTicks ticks;
        /// Numbers of its pictures.
        std::vector<int> pictures;
        std::int64_t sessions = 0;
        Minutes minutes{0};
        std::optional<Moment> first_work;
        std::optional<Moment> last_work;
        std::string note;

        /// Claimed by the builder, and no picture on record shows it.
        bool isGap() const { return tenths.builder() > 0 && pictures.empty(); }
    };
    struct Picture {
        Photo photo;
        /// Cannot be printed.
        bool is_video = false;
    };
    /// What the country says of the count, with its source.
    struct Rule {
        std::string text;
        std::string source;
    };

    Moment as_of;
    Aircraft aircraft{};
    credit::Account account{};
    /// Section by section.
    std::vector<Task> tasks{};
    /// Every photograph and video that shows a task, once; by task, then by day.
    std::vector<Picture> pictures{};
    std::vector<Rule> rules{};
    std::vector<Profile::Caution> cautions{};
};

MajorPortion majorPortion(const Records &records, const Profile &profile, Moment asOf);

} // namespace lastrivet::packet
