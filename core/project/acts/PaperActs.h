// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <string_view>

// What happens to the documents that a certificate asks for.
namespace lastrivet::acts {

/// Adds a record of a document that was asked for; `key` is that of the country's list, or the
/// builder's own name for a document that is not in it.
Id<CertificateDocument> askForPaper(Edit &edit, std::string_view key, Moment on);
/// Records that a document was received: on its record, or on a new one when `document` is empty.
/// An empty `number` leaves one that is known.
Id<CertificateDocument> receivePaper(Edit &edit, std::string_view key,
                                     Id<CertificateDocument> document, Moment on,
                                     std::string_view number);
/// Adds a record of a document on which nothing has happened yet.
Id<CertificateDocument> addPaper(Edit &edit, std::string_view key);
void attachScan(Edit &edit, Id<CertificateDocument> document, Id<Media> scan);
void detachScan(Edit &edit, Id<CertificateDocument> document, Id<Media> scan);

} // namespace lastrivet::acts
