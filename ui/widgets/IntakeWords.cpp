// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/IntakeWords.h"

#include "ui/convert/QtText.h"

#include <QCoreApplication>

namespace lastrivet::ui {

namespace {

struct IntakeWords {
    Q_DECLARE_TR_FUNCTIONS(IntakeWords)
};

} // namespace

std::string intakeLabel(std::size_t files, bool onlyPhotos)
{
    if (files == 0)
        return toStd(IntakeWords::tr("Photos linked that were there already"));
    return toStd(onlyPhotos ? IntakeWords::tr("%n photos taken in", nullptr, int(files))
                            : IntakeWords::tr("%n files taken in", nullptr, int(files)));
}

} // namespace lastrivet::ui
