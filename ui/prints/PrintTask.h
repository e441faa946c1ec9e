// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/Document.h"

#include <QString>

#include <functional>
#include <optional>
#include <string>

namespace lastrivet::ui {

class Session;

/// A document to be printed from an open project.
struct PrintOrder {
    /// Runs on a worker: holds what it reads, a snapshot for one, and touches nothing of the
    /// window.
    using Print = std::function<std::optional<print::Printed>(
        const print::Imprint &, const print::Pictures &, const print::OnPercent &)>;

    /// What the journal and the line of progress call it: "Packet for Left wing, upper skin".
    QString title;
    /// Where the PDF goes.
    QString file;
    Print print;
    /// False for what does not show the journal's hash.
    bool is_noted = true;
    /// What is said besides, after it is written: what was left out, for one.
    std::function<QString()> remark{};
    /// True when `file` is a folder to be made, with what is printed in it.
    bool is_folder = false;
};

/// Notes the printing in the journal, whose hash the pages then carry, prints on a worker, says
/// what came out and opens it. A failure is said in one sentence, and leaves no file.
void carryOut(Session &session, PrintOrder order);

/// A name for a document's file: "Packet Left wing 2026-03-14.pdf".
QString printFileName(const QString &title, const std::string &day,
                      const QString &ending = QStringLiteral(".pdf"));
/// The paper and the language that the person chose for print, else those of country and screen.
print::Choices usualChoices();

} // namespace lastrivet::ui
