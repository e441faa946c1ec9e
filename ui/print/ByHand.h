// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/Table.h"

#include <QString>
#include <QStringList>

#include <vector>

// What is filled in by hand.
namespace lastrivet::print {

/// A line to write on, its name small below it.
void drawWritingLine(Pages &pages, double left, double width, double y, const QString &name);
/// A heading, and below it a row to sign for each of those who sign, who stand in the first column.
void drawTableToSign(Pages &pages, const QString &title, std::vector<Table::Column> columns,
                     const QStringList &signers);

} // namespace lastrivet::print
