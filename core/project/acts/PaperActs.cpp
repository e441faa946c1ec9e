// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/PaperActs.h"

#include "core/base/SortedIds.h"

namespace lastrivet::acts {

Id<CertificateDocument> addPaper(Edit &edit, std::string_view key)
{
    CertificateDocument document;
    document.key = key;
    return edit.put(document);
}

Id<CertificateDocument> askForPaper(Edit &edit, std::string_view key, Moment on)
{
    const auto id = addPaper(edit, key);
    edit.update(id, [&](CertificateDocument &document) { document.asked_on = on; });
    return id;
}

Id<CertificateDocument> receivePaper(Edit &edit, std::string_view key,
                                     Id<CertificateDocument> document, Moment on,
                                     std::string_view number)
{
    const auto id = document ? document : addPaper(edit, key);
    edit.update(id, [&](CertificateDocument &received) {
        received.received_on = on;
        if (!number.empty())
            received.number = number;
    });
    return id;
}

void attachScan(Edit &edit, Id<CertificateDocument> document, Id<Media> scan)
{
    edit.update(document,
                [&](CertificateDocument &changed) { insertSorted(changed.media_ids, scan); });
}

void detachScan(Edit &edit, Id<CertificateDocument> document, Id<Media> scan)
{
    edit.update(document,
                [&](CertificateDocument &changed) { std::erase(changed.media_ids, scan); });
}

} // namespace lastrivet::acts
