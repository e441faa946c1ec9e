// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/backup/FolderLine.h"

#include "ui/widgets/PathLine.h"

#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QPushButton>

namespace lastrivet::ui {

namespace {

/// A folder that is remembered is the same wherever the program was started: what does not begin at
/// the root is in the person's own folder, as in the terminal after `~`.
QString fromHome(const QString &typed)
{
    static const auto home = QStringLiteral("~");
    const bool isMarked = typed == home || typed.startsWith(home + QLatin1Char('/'));
    return QDir::cleanPath(QDir::home().absoluteFilePath(isMarked ? typed.mid(2) : typed));
}

} // namespace

FolderLine::FolderLine(const QString &name, QWidget *parent)
    : QWidget(parent)
    , m_line(new PathLine(this))
{
    m_line->setAccessibleName(name);
    setFocusProxy(m_line);
    auto *choose = new QPushButton(tr("Choose…"), this);
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_line, 1);
    layout->addWidget(choose);
    connect(m_line, &QLineEdit::textChanged, this, &FolderLine::changed);
    connect(choose, &QPushButton::clicked, this, &FolderLine::browse);
}

QString FolderLine::folder() const
{
    const QString typed = m_line->text().trimmed();
    return typed.isEmpty() ? QString() : fromHome(QDir::fromNativeSeparators(typed));
}

void FolderLine::setFolder(const QString &folder)
{
    m_line->setText(QDir::toNativeSeparators(folder));
}

void FolderLine::browse()
{
    const QString chosen =
        QFileDialog::getExistingDirectory(this, m_line->accessibleName(), folder());
    if (!chosen.isEmpty())
        setFolder(chosen);
}

} // namespace lastrivet::ui
