// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/disk/Medium.h"

#include <algorithm>
#include <fstream>
#include <stdexcept>

namespace lastrivet::faults {

namespace fs = std::filesystem;

namespace {

constexpr std::uint64_t sector = 512;

void put(const Operation &write, std::uint64_t first, std::uint64_t last,
         std::vector<std::uint8_t> &bytes)
{
    if (bytes.size() < last)
        bytes.resize(last);
    std::copy(write.bytes.begin() + std::ptrdiff_t(first - write.at),
              write.bytes.begin() + std::ptrdiff_t(last - write.at),
              bytes.begin() + std::ptrdiff_t(first));
}

void writeFile(const fs::path &file, const std::vector<std::uint8_t> &bytes)
{
    std::ofstream stream(file, std::ios::binary);
    stream.write(reinterpret_cast<const char *>(bytes.data()), std::streamsize(bytes.size()));
}

} // namespace

int Medium::nodeAt(const fs::path &path) const
{
    int node = m_root;
    for (const auto &part : path) {
        if (part.empty() || part == ".")
            continue;
        node = m_seen.at(node).at(part.string());
    }
    return node;
}

int Medium::folderOf(const fs::path &path) const
{
    return nodeAt(path.parent_path());
}

void Medium::apply(const Operation &operation, Bytes &bytes)
{
    if (operation.kind == Operation::Kind::Resize)
        bytes.resize(operation.at);
    else
        put(operation, operation.at, operation.at + operation.bytes.size(), bytes);
}

void Medium::apply(const Operation &operation, Names &names)
{
    const auto name = operation.path.filename().string();
    switch (operation.kind) {
    case Operation::Kind::Rename:
        // Its making may never have reached the disk; the renaming alone brings the new name.
        names[operation.to.filename().string()] = operation.node;
        names.erase(name);
        break;
    case Operation::Kind::Remove:
        names.erase(name);
        break;
    default:
        names[name] = operation.node;
    }
}

void Medium::take(const Operation &operation)
{
    using Kind = Operation::Kind;
    switch (operation.kind) {
    case Kind::Mark:
        return;
    case Kind::Sync: {
        auto &node = m_nodes.at(operation.node);
        for (const Operation *each : node.pending) {
            if (node.isFolder)
                apply(*each, node.names);
            else
                apply(*each, node.bytes);
        }
        node.pending.clear();
        return;
    }
    case Kind::Write:
    case Kind::Resize:
        m_nodes.at(operation.node).pending.push_back(&operation);
        return;
    case Kind::Make:
    case Kind::MakeFolder:
        m_nodes[operation.node].isFolder = operation.kind == Kind::MakeFolder;
        if (operation.path.empty()) {
            m_root = operation.node;
            m_seen[m_root];
            return;
        }
        break;
    case Kind::Rename:
    case Kind::Remove:
        break;
    }
    const int folder = folderOf(operation.path);
    if (operation.kind == Kind::Rename && folderOf(operation.to) != folder)
        throw std::logic_error("a renaming from folder to folder is not modelled");
    m_nodes.at(folder).pending.push_back(&operation);
    apply(operation, m_seen.at(folder));
    if (operation.kind == Kind::MakeFolder)
        m_seen[operation.node];
}

/// One power cut: decides what of a medium is lost.
class Medium::Cut {
public:
    Cut(const Medium &medium, Loss loss, std::mt19937 &random)
        : m_medium(medium)
        , m_loss(loss)
        , m_random(random)
    {
        if (loss != Loss::All)
            m_kept = std::uniform_real_distribution<>(0, 1)(random);
    }

    void write(int folder, const fs::path &to)
    {
        fs::create_directories(to);
        const auto &node = m_medium.m_nodes.at(folder);
        Names names = node.names;
        for (const Operation *each : node.pending) {
            if (isKept())
                apply(*each, names);
        }
        for (const auto &[name, inner] : names) {
            if (m_medium.m_nodes.at(inner).isFolder)
                write(inner, to / name);
            else
                writeFile(to / name, bytesOf(m_medium.m_nodes.at(inner)));
        }
    }

private:
    bool isKept() { return std::uniform_real_distribution<>(0, 1)(m_random) < m_kept; }

    Bytes bytesOf(const Node &node)
    {
        Bytes bytes = node.bytes;
        for (const Operation *each : node.pending) {
            if (m_loss == Loss::Sectors && each->kind == Operation::Kind::Write)
                putSectors(*each, bytes);
            else if (isKept())
                apply(*each, bytes);
        }
        return bytes;
    }

    void putSectors(const Operation &write, Bytes &bytes)
    {
        const auto end = write.at + write.bytes.size();
        for (auto first = write.at; first < end;) {
            const auto last = std::min(end, (first / sector + 1) * sector);
            if (isKept())
                put(write, first, last, bytes);
            first = last;
        }
    }

    const Medium &m_medium;
    Loss m_loss;
    std::mt19937 &m_random;
    double m_kept = 0;
};

void Medium::writeAfterCut(Loss loss, std::mt19937 &random, const fs::path &folder) const
{
    Cut(*this, loss, random).write(m_root, folder);
}

} // namespace lastrivet::faults
