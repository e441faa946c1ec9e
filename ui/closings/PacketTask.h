// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Closing.h"
#include "core/records/HoldPoint.h"
#include "core/records/Inspection.h"
#include "ui/print/PacketMaker.h"

#include <QString>

class QWidget;

namespace lastrivet::ui {

class Session;

// What the closings page writes as PDF, each on a worker with progress and cancel, and opened when
// it is done.

/// A packet as a person wants it.
struct PacketWish {
    IdSet<Closing> closings;
    print::PacketForm form = print::PacketForm::Pdf;
    print::Paper paper = print::Paper::A4;
    QLocale::Language language = QLocale::English;
    /// The PDF, or the folder.
    QString place;
};
void makePacket(Session &session, const PacketWish &wish);
/// A name for it without its end: "Packet Left wing, upper skin 2026-03-14".
QString packetName(const Session &session, const IdSet<Closing> &closings);

/// Names for the papers below: "Corrections report Left wing, upper skin".
QString correctionsName(const Session &session, Id<Inspection> visit);
QString changesName(const Session &session, Id<HoldPoint> point);
/// Writes what became of the findings of a visit.
void makeCorrectionsReport(Session &session, Id<Inspection> visit, const QString &file);
/// Writes what changed since the latest signature at a hold point.
void makeChangesPage(Session &session, Id<HoldPoint> point, const QString &file);
/// Asks where a PDF of this name goes, with the day behind it; empty when the person does not want
/// it after all.
QString askForPdf(QWidget *parent, const Session &session, const QString &name);

} // namespace lastrivet::ui
