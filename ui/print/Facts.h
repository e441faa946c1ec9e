// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <vector>

namespace lastrivet::print {

class Pages;

/// A name and what is known under it.
struct Fact {
    QString name;
    QString value;
};

/// Facts in two columns, the name small above its value; those without value are left out, and long
/// ones stand below the others across the page.
void drawFacts(Pages &pages, const std::vector<Fact> &facts);
/// A frame across the page with a hatched edge and a text in it.
void drawNotice(Pages &pages, const QString &head, const QString &text);

} // namespace lastrivet::print
