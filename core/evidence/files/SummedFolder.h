// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>

namespace lastrivet::evidence {

/// A folder of files with their SHA-256 sums in `SHA256SUMS`, as `sha256sum -c` reads them.
///
/// Filled beside its place under a temporary name, so that it appears whole and durable or not at
/// all. Throws `NotSaved` with one sentence when the disk is full or the place cannot be written.
class SummedFolder {
public:
    /// `place`: where nothing is yet, or an empty folder.
    explicit SummedFolder(std::filesystem::path place);
    ~SummedFolder();
    SummedFolder(const SummedFolder &) = delete;
    SummedFolder &operator=(const SummedFolder &) = delete;

    /// Takes in a file that `write` writes at the path it is given.
    using Write = std::function<void(const std::filesystem::path &)>;
    void addBy(const std::string &name, const Write &write);
    /// Copies a file in under `name`, which may begin with a folder; returns its SHA-256, 64 hex
    /// digits.
    std::string add(const std::filesystem::path &source, const std::string &name);
    /// Writes the sums and gives the folder its name.
    void finish();

private:
    [[noreturn]] void fail(const std::string &why) const;
    template <class Body> auto told(Body &&body) const;
    void write(const std::string &name, const std::string &text) const;
    void addLine(const std::string &sum, const std::string &name);

    std::filesystem::path m_place;
    std::filesystem::path m_filling;
    std::string m_lines;
};

} // namespace lastrivet::evidence
