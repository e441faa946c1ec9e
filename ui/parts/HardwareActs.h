// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/parts/PartSection.h"

/// What people do with fasteners and measurements, and what may not be written of them.
namespace lastrivet::ui::sections {

QString whyNotFastener(const Session &session, const QString &words);
QString whyNotFastenerFields(const void *fastener);
std::span<const SectionKey> fastenerKeys();
SectionAside *torquePanel(Session &session, QWidget *parent);

QString whyNotMeasurement(const Session &session, const QString &words);
std::span<const SectionAct> measurementActs();
SectionAside *measurementPanel(Session &session, QWidget *parent);

} // namespace lastrivet::ui::sections
