// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <vector>

namespace lastrivet::acts {

/// Links the file to the record, besides those that it is linked to.
void linkMedia(Edit &edit, Id<Media> media, RecordRef record);
/// Takes that link away.
void unlinkMedia(Edit &edit, Id<Media> media, RecordRef record);
/// Sets or takes away one thing that the picture shows.
void setShown(Edit &edit, Id<Media> media, Shows what, bool isShown);

/// Replaces the marks over the picture; the file itself stays as it is.
void setAnnotations(Edit &edit, Id<Media> media, const std::vector<Media::Annotation> &marks);

/// Links the file to the log entry, and to the part that was worked on.
void linkToSession(Edit &edit, Id<Media> media, Id<WorkSession> session);

} // namespace lastrivet::acts
