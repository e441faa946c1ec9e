// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace lastrivet::print {

class Pages;

/// The head of a document's first page: what it is, whose, and what it is about.
void drawTitle(Pages &pages, const QString &kind, const QString &name, const QString &subject);

} // namespace lastrivet::print
