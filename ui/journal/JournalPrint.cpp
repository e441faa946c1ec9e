// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/JournalPrint.h"

#include "ui/convert/QtText.h"
#include "ui/print/JournalPrinter.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>

namespace lastrivet::ui {

namespace {

/// Reads the project for itself, so that a long journal keeps nobody waiting.
packet::JournalReport reportOf(const std::filesystem::path &folder, const JournalListing &listing,
                               Moment asOf)
{
    Project::Options options;
    options.readOnly = true;
    const auto project = Project::open(folder, options);
    auto report = packet::journalReport(*project->records(), project->profile(), asOf,
                                        project->journal(), listing.rows,
                                        [&](std::int64_t seq) { return project->changesOf(seq); });
    report.filter = listing.filter;
    report.rows_in_all = listing.rows_in_all;
    return report;
}

} // namespace

void printJournal(Session &session, JournalListing listing, const QString &file)
{
    PrintOrder order;
    order.title = QCoreApplication::translate("JournalPrint", "Journal");
    order.file = file;
    order.print = [folder = session.project().folder(), listing = std::move(listing), file,
                   asOf = session.now(),
                   choices = usualChoices()](const print::Imprint &imprint, const print::Pictures &,
                                             const print::OnPercent &onPercent) {
        return print::printJournal(reportOf(folder, listing, asOf), imprint, choices, toPath(file),
                                   onPercent);
    };
    carryOut(session, std::move(order));
}

} // namespace lastrivet::ui
