// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <vector>

namespace lastrivet::acts {

/// The file belongs to the record, too.
void linkMedia(Edit &edit, Id<Media> media, RecordRef record);
/// The file does not belong to the record.
void unlinkMedia(Edit &edit, Id<Media> media, RecordRef record);
/// Sets or takes away one thing that the picture shows.
void setShown(Edit &edit, Id<Media> media, Shows what, bool isShown);

/// Draws these marks over the picture in place of those that were there; the file stays as it is.
void setAnnotations(Edit &edit, Id<Media> media, const std::vector<Media::Annotation> &marks);

/// The file belongs to the log entry, and to the part that was worked on.
void linkToSession(Edit &edit, Id<Media> media, Id<WorkSession> session);

} // namespace lastrivet::acts
