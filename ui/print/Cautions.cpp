// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Cautions.h"

#include "ui/print/Pages.h"

#include <algorithm>

namespace lastrivet::print {

namespace {

/// Said in every document, also when the rule profile does not.
constexpr std::string_view ownCaution =
    "This paper is what the builder wrote down. It is no approval and no finding that the work is "
    "right: the drawings, the authority and the inspector decide.";

void drawCaution(Pages &pages, const QString &text)
{
    const double indent = points(18);
    const TextBlock block(text, Size::Body, pages.body().width() - indent);
    pages.need(block.height());
    pages.painter().fillRect(QRectF(pages.body().left() + points(4), pages.y() + points(4.2),
                                    points(5), points(5)),
                             Qt::black);
    pages.textAt(indent, text);
    pages.advance(points(6));
}

} // namespace

void drawOwnCaution(Pages &pages)
{
    pages.text(pages.wording().text(ownCaution), Size::Small);
}

void drawCautions(Pages &pages, const std::vector<Profile::Caution> &cautions)
{
    const Wording &words = pages.wording();
    pages.heading(0, words.text("Cautions"), points(80));
    const bool isSaid = std::any_of(cautions.begin(), cautions.end(), [](const auto &caution) {
        return caution.id == "builders_record";
    });
    if (!isSaid)
        drawCaution(pages, words.text(ownCaution));
    for (const Profile::Caution &caution : cautions)
        drawCaution(pages, words.text(caution.text));
}

} // namespace lastrivet::print
