// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"

#include <filesystem>
#include <stop_token>
#include <vector>

namespace lastrivet {

/// The quick look that follows every opening: the database's pages, table by table, references, and
/// whether all tables have the shape that this program gives them. A sentence for each kind of
/// damage; empty when all is well, or `stop` asked for an end.
///
/// Reads on a connection of its own and so may run on any thread beside the open project; a writer
/// waits for no more than one table.
std::vector<Message> damagesAtOpening(const std::filesystem::path &folder,
                                      std::stop_token stop = {});

} // namespace lastrivet
