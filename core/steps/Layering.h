// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

namespace lastrivet::steps {

/// Where the nodes of a graph are drawn so that every line goes from a layer to a later one.
struct Layering {
    struct Place {
        std::size_t layer = 0;
        std::size_t row = 0;

        friend bool operator==(const Place &, const Place &) = default;
    };
    struct Line {
        std::size_t from = 0;
        std::size_t to = 0;
        /// One place in each layer between, which nothing else takes.
        std::vector<Place> via;
    };

    /// One per node; a node without predecessors is in layer 0, every other directly behind the
    /// last of its predecessors.
    std::vector<Place> places;
    /// Without those that other lines imply; sorted.
    std::vector<Line> lines;
    std::size_t layers = 0;
    std::size_t rows = 0;
};

/// A line of a graph: `from` comes before `to`.
struct Arrow {
    std::size_t from = 0;
    std::size_t to = 0;

    friend auto operator<=>(const Arrow &, const Arrow &) = default;
};

/// Lays out `nodes` nodes. Arrows name nodes below `nodes` and make no ring. Takes time with the
/// product of nodes and arrows: meant for what fits on a screen.
Layering layered(std::size_t nodes, std::vector<Arrow> arrows);

} // namespace lastrivet::steps
