// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/PrintShop.h"

#include "app/cli/PlainText.h"
#include "app/cli/Terminal.h"
#include "ui/print/Language.h"

#include <CLI/CLI.hpp>

#include <QGuiApplication>

#include <iostream>
#include <unistd.h>

namespace lastrivet::cli {

namespace {

/// Prints Qt's errors only; its warnings about its environment do not concern the person who
/// prints.
void hearQt(QtMsgType type, const QMessageLogContext &, const QString &text)
{
    if (type == QtCriticalMsg || type == QtFatalMsg)
        std::cerr << "lastrivet-cli: " << onOneLine(text.toStdString()) << std::endl;
}

} // namespace

PrintShop::PrintShop()
{
    qInstallMessageHandler(hearQt);
    qputenv("QT_QPA_PLATFORM", "offscreen");
    m_application = std::make_unique<QGuiApplication>(m_count, m_arguments);
}

PrintShop::~PrintShop() = default;

void addPaper(CLI::App &verb, PaperOptions &options)
{
    std::vector<std::string> codes;
    for (const print::Language &language : print::languages())
        codes.push_back(language.code.toStdString());
    verb.add_option("--paper", options.paper, "A4 or Letter")
        ->transform(CLI::IsMember({"A4", "Letter"}, CLI::ignore_case))
        ->type_name("SIZE");
    verb.add_option("--language", options.language, "The language of the paper: en, de or fr")
        ->transform(CLI::IsMember(codes, CLI::ignore_case))
        ->type_name("CODE");
}

print::Choices choicesOf(const PaperOptions &options)
{
    print::Choices choices;
    choices.paper = options.paper == "Letter" ? print::Paper::Letter : print::Paper::A4;
    if (const auto *language = print::languageOfCode(QString::fromStdString(options.language)))
        choices.wording = print::wordingIn(*language);
    return choices;
}

void complainOfUnshown(const print::Printed &printed, Terminal &terminal)
{
    if (!printed.unshown.empty())
        terminal.complain("No typeface on this computer has " + onOneLine(printed.unshown) +
                          ": boxes stand in their place.");
}

PrintCopies::PrintCopies(const Project &project)
    : m_records(project.records())
{
    if (::access(project.folder().c_str(), W_OK) == 0) {
        m_cache.emplace(project.folder());
        return;
    }
    m_elsewhere.emplace();
    m_cache.emplace(project.folder(), m_elsewhere->path());
}

Result<evidence::PictureCopy, Message> PrintCopies::copyOf(const packet::Photo &photo) const
{
    return m_cache->copy(*m_records->find(photo.id), evidence::PictureSize::Large);
}

} // namespace lastrivet::cli
