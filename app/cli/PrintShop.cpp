// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/PrintShop.h"

#include "app/cli/PlainText.h"
#include "core/base/Error.h"

#include <QGuiApplication>

#include <iostream>
#include <unistd.h>

namespace lastrivet::cli {

namespace {

namespace fs = std::filesystem;

/// What Qt remarks about its surroundings is no concern of whoever prints.
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

PrintCopies::PrintCopies(const Project &project)
    : m_records(project.records())
{
    if (::access(project.folder().c_str(), W_OK) == 0) {
        m_cache.emplace(project.folder());
        return;
    }
    std::string pattern = (fs::temp_directory_path() / "lastrivet-copies-XXXXXX").string();
    if (!::mkdtemp(pattern.data()))
        throw NotSaved("No folder for the copies of photographs could be made.");
    m_temporary = pattern;
    m_cache.emplace(project.folder(), m_temporary);
}

PrintCopies::~PrintCopies()
{
    std::error_code none;
    if (!m_temporary.empty())
        fs::remove_all(m_temporary, none);
}

Result<evidence::PictureCopy, Message> PrintCopies::copyOf(const packet::Photo &photo) const
{
    return m_cache->copy(*m_records->find(photo.id), evidence::PictureSize::Large);
}

} // namespace lastrivet::cli
