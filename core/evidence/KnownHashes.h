// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <mutex>
#include <string>
#include <unordered_set>
#include <utility>

namespace lastrivet::evidence {

/// The hashes of what was taken in, so that several threads never take the same file in twice.
class KnownHashes {
public:
    /// Claims a hash for one file; given back when the file does not arrive.
    class Claim {
    public:
        Claim(KnownHashes &known, std::string sha256)
            : m_known(known)
            , m_sha256(std::move(sha256))
            , m_isNew(known.add(m_sha256))
        {
        }
        ~Claim()
        {
            if (m_isNew && !m_isKept)
                m_known.remove(m_sha256);
        }
        Claim(const Claim &) = delete;
        Claim &operator=(const Claim &) = delete;

        bool isNew() const { return m_isNew; }
        void keep() { m_isKept = true; }

    private:
        KnownHashes &m_known;
        std::string m_sha256;
        bool m_isNew;
        bool m_isKept = false;
    };

    /// False when it was known.
    bool add(const std::string &sha256)
    {
        const std::scoped_lock lock(m_mutex);
        return m_hashes.insert(sha256).second;
    }

private:
    void remove(const std::string &sha256)
    {
        const std::scoped_lock lock(m_mutex);
        m_hashes.erase(sha256);
    }

    std::mutex m_mutex;
    std::unordered_set<std::string> m_hashes;
};

} // namespace lastrivet::evidence
