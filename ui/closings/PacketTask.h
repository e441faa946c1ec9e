// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Closing.h"

#include <QString>

namespace lastrivet::ui {

class Session;

/// Writes the inspection packet of some closings as PDF on a worker, and opens it when it is done.
void makePacket(Session &session, const IdSet<Closing> &closings, const QString &file);

/// A name for the packet's file: "Packet Left wing, upper skin 2026-03-14.pdf".
QString packetFileName(const Session &session, const IdSet<Closing> &closings);

} // namespace lastrivet::ui
