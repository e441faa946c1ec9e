// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/certificate/CertificatePlace.h"

namespace lastrivet::ui {

CertificatePlace::CertificatePlace(QWidget *parent)
    : QWidget(parent)
{
}

} // namespace lastrivet::ui
