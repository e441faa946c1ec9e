// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Result.h"
#include "core/base/TemporaryFolder.h"
#include "core/evidence/PictureCache.h"
#include "core/packet/Photo.h"
#include "core/project/Project.h"
#include "ui/print/Document.h"

#include <memory>
#include <optional>
#include <string>

class QGuiApplication;

namespace CLI {
class App;
}

namespace lastrivet::cli {

class Terminal;

/// Qt's application object, which its fonts need for printing; with the platform "offscreen" it
/// needs no display. One at a time.
class PrintShop {
public:
    PrintShop();
    ~PrintShop();

private:
    char m_name[14] = "lastrivet-cli";
    char *m_arguments[2] = {m_name, nullptr};
    int m_count = 1;
    std::unique_ptr<QGuiApplication> m_application;
};

/// What every verb that prints can be told about the paper.
struct PaperOptions {
    std::string paper = "A4";
    std::string language = "en";
};

void addPaper(CLI::App &verb, PaperOptions &options);
/// Within the shop, whose fonts and texts it needs.
print::Choices choicesOf(const PaperOptions &options);

/// What no typeface here could show, where there is any.
void complainOfUnshown(const print::Printed &printed, Terminal &terminal);

/// The copies of photographs for print: in the project, or for the time of the run elsewhere, when
/// the folder cannot be written.
class PrintCopies {
public:
    explicit PrintCopies(const Project &project);

    Result<evidence::PictureCopy, Message> copyOf(const packet::Photo &photo) const;

private:
    Snapshot m_records;
    std::optional<TemporaryFolder> m_elsewhere;
    std::optional<evidence::PictureCache> m_cache;
};

} // namespace lastrivet::cli
