// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/backup/FolderLine.h"

#include "ui/convert/UsualFolders.h"
#include "ui/widgets/PathLine.h"

#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QPushButton>

namespace lastrivet::ui {

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
    return wholePath(m_line->text(), QDir::homePath());
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
