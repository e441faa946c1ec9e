// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/workshop/OwnLimits.h"
#include "ui/parts/PartSection.h"

/// What people do with fasteners and measurements, and what may not be written of them.
namespace lastrivet::ui::sections {

/// The project's own limits, as they are kept on this computer.
std::vector<workshop::OwnLimit> ownLimits(Session &session);

std::int64_t newFastener(Session &session, Edit &edit, Id<Component> part,
                         const std::string &words);
QString whyNotFastener(Session &session, const QString &words);
QString whyNotFastenerFields(const void *fastener);
std::span<const SectionKey> fastenerKeys();
SectionAside *torquePanel(Session &session, QWidget *parent);

QString whyNotMeasurement(Session &session, const QString &words);
std::span<const SectionAct> measurementActs();
SectionAside *measurementPanel(Session &session, QWidget *parent);

} // namespace lastrivet::ui::sections
