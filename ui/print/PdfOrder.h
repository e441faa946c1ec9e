// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>

#include <memory>

class Buffer;

namespace lastrivet::print {

/// The same pages with their objects numbered as they are met from the first page on, and the
/// typefaces named in that order. Qt writes typefaces in the order of a hash table, which is
/// another in each run of a program, and makes their names from it.
std::shared_ptr<Buffer> inOrder(const QByteArray &pages);

} // namespace lastrivet::print
