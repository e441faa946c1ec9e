// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QString>

#include <optional>
#include <vector>

namespace lastrivet::print {

/// A heading that contents and bookmarks lead to.
struct Heading {
    /// 0 for a section, 1 below it.
    int level = 0;
    QString title;
    /// Counted from 0.
    int page = 0;
    /// Distance from the upper edge of the paper, in print units.
    double top = 0;

    friend bool operator==(const Heading &, const Heading &) = default;
};

/// A place on a page that leads to a heading.
struct Link {
    int page = 0;
    QRectF place;
    std::size_t heading = 0;
};

/// Where a page ended behind which nothing but the cautions was left for the next one.
struct LoneEnd {
    /// Counted from 1.
    int page = 0;
    /// Distance from the upper edge of the paper, in print units.
    double bottom = 0;

    friend bool operator==(const LoneEnd &, const LoneEnd &) = default;
};

/// What one layout of a document came to; the next one prints it as contents and page numbers.
struct Outline {
    int page_count = 0;
    std::vector<Heading> headings;
    /// Kept from layout to layout once it is known, so that they come to an end.
    std::optional<LoneEnd> before_cautions{};

    friend bool operator==(const Outline &, const Outline &) = default;
};

} // namespace lastrivet::print
