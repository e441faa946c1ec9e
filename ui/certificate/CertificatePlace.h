// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <QWidget>

namespace lastrivet::ui {

class Session;

/// One of the places of the certificate page, of which one is shown at a time.
class CertificatePlace : public QWidget {
    Q_OBJECT

public:
    explicit CertificatePlace(QWidget *parent);

    /// Chooses the record; false when it belongs to another place.
    virtual bool showRecord(RecordRef record) = 0;
    virtual void apply(const ChangeNotice &notice) = 0;
    /// When a new readiness answer is there.
    virtual void applyAnswer() {}
    virtual void startNew() {}
    virtual QWidget *firstFocus() = 0;
};

} // namespace lastrivet::ui
