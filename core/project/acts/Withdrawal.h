// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <string_view>
#include <vector>

namespace lastrivet::acts {

/// The live records that have to be withdrawn with `records`: those that refer to one of them,
/// those that refer to these, and so on; by type and id.
///
/// Links of photos, the hold points of an inspection and the order of steps do not count: they may
/// refer to withdrawn records. Nor do photographs and papers: what names one is as true without it,
/// see `letGoOfFiles`.
std::vector<RecordRef> companions(const Records &all, const std::vector<RecordRef> &records);

/// The live records that name one of the photographs and papers among `records`, as a sign-off its
/// sheet; by type and id.
std::vector<RecordRef> namingFiles(const Records &all, const std::vector<RecordRef> &records);

/// Takes the photographs and papers among `records` out of those that `namingFiles` tells, which
/// stay.
void letGoOfFiles(Edit &edit, const std::vector<RecordRef> &records);

/// Withdraws records, all for one reason, so that they count nowhere.
void withdraw(Edit &edit, const std::vector<RecordRef> &records, std::string_view why);

} // namespace lastrivet::acts
