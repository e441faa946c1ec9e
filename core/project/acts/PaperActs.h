// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <string_view>

// What happens to the documents that a certificate asks for.
namespace lastrivet::acts {

/// A document was asked for, on a new record of it; `key` as the country's list has it, or the
/// builder's own name of a document that is in no list.
Id<CertificateDocument> askForPaper(Edit &edit, std::string_view key, Moment on);
/// It is here: on the record of it, or on a new one where `document` is none. Empty numbers stand
/// for none on the paper and leave one that is known.
Id<CertificateDocument> receivePaper(Edit &edit, std::string_view key,
                                     Id<CertificateDocument> document, Moment on,
                                     std::string_view number);
/// A record of it on which nothing has happened yet, to write into.
Id<CertificateDocument> addPaper(Edit &edit, std::string_view key);
void attachScan(Edit &edit, Id<CertificateDocument> document, Id<Media> scan);
void detachScan(Edit &edit, Id<CertificateDocument> document, Id<Media> scan);

} // namespace lastrivet::acts
