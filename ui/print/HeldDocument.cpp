// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/HeldDocument.h"

#include "core/base/Error.h"
#include "core/base/WriteFailure.h"
#include "core/evidence/files/FileBehind.h"
#include "core/evidence/files/FileFault.h"
#include "core/evidence/files/NewFile.h"

#include <string>
#include <system_error>
#include <utility>

namespace lastrivet::print {

namespace fs = std::filesystem;

HeldDocument::HeldDocument(const fs::path &place)
    : m_place(evidence::fileBehind(place.has_filename() ? place : place.parent_path()))
    , m_held(m_place.parent_path() / evidence::temporaryName())
{
}

HeldDocument::~HeldDocument()
{
    std::error_code none;
    if (!m_held.empty())
        fs::remove_all(m_held, none);
}

void HeldDocument::make(const std::function<void()> &body) const
{
    try {
        body();
    } catch (const NotSaved &fault) {
        Message named = fault.message();
        for (std::string &argument : named.arguments) {
            if (argument.starts_with(m_held.string()))
                argument.replace(0, m_held.string().size(), m_place.string());
        }
        throw NotSaved(std::move(named));
    }
}

void HeldDocument::publish()
{
    // By now the journal says that it is printed, so it is not removed whatever happens.
    const fs::path held = std::exchange(m_held, {});
    std::error_code failure;
    fs::rename(held, m_place, failure);
    if (failure)
        throw NotSaved(Message{
            "{0} could not be given its name: {1}; the document lies beside its place as {2}.",
            {m_place.string(), whyNotWritten(failure.value()), held.filename().string()}});
    try {
        const fs::path folder = m_place.parent_path();
        evidence::settleFolder(folder.empty() ? fs::path(".") : folder);
    } catch (const evidence::FileFault &) {
        // It is there; some folders can be written and not flushed.
    }
}

} // namespace lastrivet::print
