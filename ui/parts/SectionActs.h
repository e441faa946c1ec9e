// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/parts/PartSection.h"

#include <QStringList>

/// What people do with steps, deviations and bulletins, beside writing into their fields.
namespace lastrivet::ui::sections {

std::span<const SectionAct> stepActs();
std::span<const SectionAct> deviationActs();
std::span<const SectionAct> bulletinActs();

void attachToDeviation(Edit &edit, std::int64_t id, Id<Media> file);
void attachToBulletin(Edit &edit, std::int64_t id, Id<Media> file);

/// Takes files into the project and attaches them to a record of the section; says what could not
/// be taken in.
bool attachFiles(Session &session, const PartSection &section, std::int64_t id,
                 const QStringList &files);

} // namespace lastrivet::ui::sections
