// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/print/PrintedFolder.h"

#include "core/base/Sha256.h"
#include "core/readiness/Readiness.h"
#include "tests/support/WingProject.h"

#include <catch2/catch.hpp>

#include <QFile>
#include <QImage>
#include <QProcess>

namespace lastrivet::test {

PrintedFolder::PrintedFolder()
{
    REQUIRE(m_folder.isValid());
}

std::filesystem::path PrintedFolder::path(const std::string &name) const
{
    return std::filesystem::path(m_folder.path().toStdString()) / name;
}

evidence::PictureCopy PrintedFolder::picture(int number, bool isUpright) const
{
    const std::filesystem::path file = path("picture-" + std::to_string(number) + ".jpg");
    const QSize size = isUpright ? QSize(750, 1000) : QSize(1000, 750);
    if (!std::filesystem::exists(file)) {
        QImage image(size, QImage::Format_RGB32);
        for (int y = 0; y < size.height(); ++y) {
            QRgb *line = reinterpret_cast<QRgb *>(image.scanLine(y));
            for (int x = 0; x < size.width(); ++x)
                line[x] = qRgb((x * number / 8) % 256, y / 4 % 256, (x + y) / 8 % 256);
        }
        REQUIRE(image.save(QString::fromStdString(file.string()), "JPEG", 85));
    }
    return {file, size.width(), size.height(), hashOf(file)};
}

print::Pictures PrintedFolder::pictures() const
{
    return [this](const packet::Photo &photo) -> Result<evidence::PictureCopy, Message> {
        return picture(int(photo.id.value()));
    };
}

std::filesystem::path PrintedFolder::print(const packet::Packet &packet,
                                           const print::Choices &choices,
                                           const std::string &name) const
{
    const std::filesystem::path file = path(name);
    REQUIRE(print::printPacket(packet, imprintOfTest(), pictures(), choices, file));
    return file;
}

PrintedFolder::Run PrintedFolder::run(const QString &program, const QStringList &arguments)
{
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(program, arguments);
    REQUIRE(process.waitForFinished());
    return {process.exitCode(), QString::fromUtf8(process.readAll())};
}

std::string PrintedFolder::hashOf(const std::filesystem::path &file)
{
    QFile stream(QString::fromStdString(file.string()));
    REQUIRE(stream.open(QIODevice::ReadOnly));
    const QByteArray bytes = stream.readAll();
    Sha256 sum;
    sum.add(std::string_view(bytes.constData(), std::size_t(bytes.size())));
    return hex(sum.digest());
}

QString PrintedFolder::text(const std::filesystem::path &pdf)
{
    const Run run = PrintedFolder::run(
        QStringLiteral("pdftotext"),
        {QStringLiteral("-layout"), QString::fromStdString(pdf.string()), QStringLiteral("-")});
    REQUIRE(run.exit_code == 0);
    return run.output;
}

QStringList PrintedFolder::pageTexts(const std::filesystem::path &pdf)
{
    QStringList pages = text(pdf).split(QLatin1Char('\f'));
    pages.removeLast();
    return pages;
}

bool PrintedFolder::isSound(const std::filesystem::path &pdf)
{
    const Run check = run(QStringLiteral("qpdf"),
                          {QStringLiteral("--check"), QString::fromStdString(pdf.string())});
    return check.exit_code == 0 &&
           check.output.contains(QLatin1String("No syntax or stream encoding errors found"));
}

QStringList PrintedFolder::codesOn(const std::filesystem::path &pdf, int page) const
{
    const QString picture = QString::fromStdString(path("page").string());
    const QString number = QString::number(page);
    QStringList codes;
    // Many codes on one picture are more than zbar always finds; a second look at another scale is
    // what a person with a scanner does.
    for (const QString &scale : {QStringLiteral("150"), QStringLiteral("400")}) {
        REQUIRE(run(QStringLiteral("pdftoppm"),
                    {QStringLiteral("-r"), scale, QStringLiteral("-aaVector"), QStringLiteral("no"),
                     QStringLiteral("-f"), number, QStringLiteral("-l"), number,
                     QStringLiteral("-singlefile"), QStringLiteral("-png"),
                     QString::fromStdString(pdf.string()), picture})
                    .exit_code == 0);
        QProcess zbar;
        zbar.start(QStringLiteral("zbarimg"), {QStringLiteral("-q"), QStringLiteral("--raw"),
                                               picture + QStringLiteral(".png")});
        REQUIRE(zbar.waitForFinished());
        codes += QString::fromUtf8(zbar.readAllStandardOutput())
                     .split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    }
    codes.sort();
    codes.removeDuplicates();
    return codes;
}

print::Imprint imprintOfTest()
{
    return {"0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef",
            WingProject::at("2026-03-14T15:20")};
}

packet::Packet wingPacket()
{
    return wingPacket(WingProject{});
}

} // namespace lastrivet::test
