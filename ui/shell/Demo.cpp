// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Demo.h"

#include "core/base/Error.h"
#include "core/exchange/Import.h"
#include "core/exchange/InputError.h"
#include "core/profiles/ProfileLibrary.h"
#include "ui/convert/QtText.h"

#include <QDir>
#include <QFileInfo>

#include <utility>

namespace lastrivet::ui {

Demo::Demo(QString folder, QString document)
    : m_folder(std::move(folder))
    , m_document(std::move(document))
{
}

bool Demo::isThere() const
{
    return (!m_folder.isEmpty() && QDir(m_folder).exists()) || QFileInfo::exists(m_document);
}

QString Demo::open(const Clock &clock) const
{
    if (QDir(m_folder).exists())
        return m_folder;
    // Made beside its place, and moved there when it is whole.
    const QDir around = QFileInfo(m_folder).dir();
    QDir making(around.filePath(QStringLiteral("demo-in-the-making.lastrivet")));
    making.removeRecursively();
    QDir().mkpath(around.path());
    auto made = exchange::importAsNewProject(toPath(making.path()), toPath(m_document),
                                             ProfileLibrary::standard(), {&clock, {}, false});
    if (!made)
        throw UnreadableInput(exchange::english(made.reason().front(), toStd(m_document)));
    made->project.reset();
    if (!QDir().rename(making.path(), m_folder))
        throw NotSaved(toStd(tr("%1 could not be made.").arg(m_folder)));
    return m_folder;
}

} // namespace lastrivet::ui
