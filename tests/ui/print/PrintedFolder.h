// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Packet.h"
#include "ui/print/PacketPrinter.h"

#include <QString>
#include <QStringList>
#include <QTemporaryDir>

#include <filesystem>
#include <vector>

namespace lastrivet::test {

/// A folder for one test, with JPEG copies for the photographs of a packet and what is printed.
class PrintedFolder {
public:
    PrintedFolder();

    std::filesystem::path path(const std::string &name) const;
    /// A JPEG that no other number gives; upright when `isUpright`.
    evidence::PictureCopy picture(int number, bool isUpright = false) const;
    /// Every photo has a picture, each made at its first use.
    print::Pictures pictures() const;

    /// Prints for 14 March 2026 with a made-up journal hash.
    std::filesystem::path print(const packet::Packet &packet, const print::Choices &choices = {},
                                const std::string &name = "packet.pdf") const;

    struct Run {
        int exit_code;
        QString output;
    };
    /// Runs a program of poppler or qpdf.
    static Run run(const QString &program, const QStringList &arguments);
    static std::string hashOf(const std::filesystem::path &file);
    static QString text(const std::filesystem::path &pdf);
    /// The text of each page.
    static QStringList pageTexts(const std::filesystem::path &pdf);
    /// True when qpdf finds the document sound.
    static bool isSound(const std::filesystem::path &pdf);
    /// What zbar reads from the codes on one page, sorted.
    QStringList codesOn(const std::filesystem::path &pdf, int page) const;

private:
    QTemporaryDir m_folder;
};

print::Imprint imprintOfTest();
/// The packet for the wing of the test project.
packet::Packet wingPacket();

} // namespace lastrivet::test
