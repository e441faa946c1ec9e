// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/steps/Layering.h"

#include <algorithm>
#include <numeric>

namespace lastrivet::steps {

namespace {

using Index = std::size_t;
using Indexes = std::vector<Index>;

/// The order of Kahn: a node comes when all before it have come.
Indexes inOrder(Index nodes, const std::vector<Arrow> &arrows)
{
    Indexes waiting(nodes);
    for (const Arrow &arrow : arrows)
        ++waiting[arrow.to];
    Indexes order;
    for (Index node = 0; node < nodes; ++node) {
        if (waiting[node] == 0)
            order.push_back(node);
    }
    for (Index next = 0; next < order.size(); ++next) {
        for (const Arrow &arrow : arrows) {
            if (arrow.from == order[next] && --waiting[arrow.to] == 0)
                order.push_back(arrow.to);
        }
    }
    return order;
}

/// Leaves out each arrow whose end is also reached by a longer way.
std::vector<Arrow> reduced(Index nodes, const std::vector<Arrow> &arrows, const Indexes &order)
{
    std::vector<std::vector<bool>> reaches(nodes, std::vector<bool>(nodes));
    std::vector<Arrow> kept;
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        std::vector<bool> &own = reaches[*at];
        Indexes next;
        for (const Arrow &arrow : arrows) {
            if (arrow.from == *at)
                next.push_back(arrow.to);
        }
        for (const Index node : next) {
            for (Index far = 0; far < nodes; ++far)
                own[far] = own[far] || reaches[node][far];
        }
        for (const Index node : next) {
            if (!own[node])
                kept.push_back({*at, node});
        }
        for (const Index node : next)
            own[node] = true;
    }
    std::ranges::sort(kept);
    return kept;
}

/// Orders each layer so that few lines cross: again and again, each node goes to the middle of
/// its neighbours in the layer beside it.
class Ordering {
public:
    explicit Ordering(Layering &layering)
        : m_layering(layering)
        , m_layers(layering.layers)
    {
        for (Index node = 0; node < layering.places.size(); ++node)
            add(layering.places[node].layer);
        for (const Layering::Line &line : layering.lines)
            addLine(line);
    }

    void run()
    {
        constexpr int sweeps = 8;
        for (int sweep = 0; sweep < sweeps; ++sweep) {
            const bool isForward = sweep % 2 == 0;
            for (Index i = 1; i < m_layers.size(); ++i) {
                const Index layer = isForward ? i : m_layers.size() - 1 - i;
                arrange(m_layers[layer], isForward ? m_before : m_after);
            }
        }
        tell();
    }

private:
    Index add(Index layer)
    {
        m_row.push_back(double(m_layers[layer].size()));
        m_layers[layer].push_back(m_row.size() - 1);
        m_layerOf.push_back(layer);
        m_before.emplace_back();
        m_after.emplace_back();
        return m_row.size() - 1;
    }

    void addLine(const Layering::Line &line)
    {
        Index last = line.from;
        for (Index layer = m_layerOf[line.from] + 1; layer < m_layerOf[line.to]; ++layer) {
            const Index point = add(layer);
            join(last, point);
            last = point;
        }
        join(last, line.to);
    }

    void join(Index from, Index to)
    {
        m_after[from].push_back(to);
        m_before[to].push_back(from);
    }

    void arrange(Indexes &layer, const std::vector<Indexes> &neighbours)
    {
        std::vector<double> middle(m_row);
        for (const Index node : layer) {
            const Indexes &beside = neighbours[node];
            if (beside.empty())
                continue;
            middle[node] = std::accumulate(beside.begin(), beside.end(), 0.0,
                                           [&](double sum, Index i) { return sum + m_row[i]; }) /
                           double(beside.size());
        }
        std::ranges::stable_sort(layer, {}, [&](Index node) { return middle[node]; });
        for (Index row = 0; row < layer.size(); ++row)
            m_row[layer[row]] = double(row);
    }

    void tell()
    {
        const auto place = [&](Index node) {
            return Layering::Place{m_layerOf[node], Index(m_row[node])};
        };
        for (Index node = 0; node < m_layering.places.size(); ++node)
            m_layering.places[node] = place(node);
        Index point = m_layering.places.size();
        for (Layering::Line &line : m_layering.lines) {
            const Index length = m_layerOf[line.to] - m_layerOf[line.from];
            for (Index i = 1; i < length; ++i)
                line.via.push_back(place(point++));
        }
        for (const Indexes &layer : m_layers)
            m_layering.rows = std::max(m_layering.rows, layer.size());
    }

    Layering &m_layering;
    std::vector<Indexes> m_layers;
    std::vector<double> m_row;
    Indexes m_layerOf;
    std::vector<Indexes> m_before;
    std::vector<Indexes> m_after;
};

} // namespace

Layering layered(std::size_t nodes, std::vector<Arrow> arrows)
{
    Layering layering;
    layering.places.resize(nodes);
    std::ranges::sort(arrows);
    arrows.erase(std::unique(arrows.begin(), arrows.end()), arrows.end());
    const Indexes order = inOrder(nodes, arrows);
    for (const Index node : order) {
        for (const Arrow &arrow : arrows) {
            if (arrow.from == node)
                layering.places[arrow.to].layer =
                    std::max(layering.places[arrow.to].layer, layering.places[node].layer + 1);
        }
        layering.layers = std::max(layering.layers, layering.places[node].layer + 1);
    }
    for (const Arrow &arrow : reduced(nodes, arrows, order))
        layering.lines.push_back({arrow.from, arrow.to, {}});
    Ordering(layering).run();
    return layering;
}

} // namespace lastrivet::steps
