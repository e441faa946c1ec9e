// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/MaterialUse.h"
#include "ui/widgets/ActForm.h"

#include <optional>

class QComboBox;
class QLineEdit;

namespace lastrivet::ui {

class MomentLine;
class RecordLine;
class Session;

/// A lot was used on a part: when, how it was mixed, how warm it was, how long it cures.
class UseForm final : public ActForm {
    Q_OBJECT

public:
    explicit UseForm(Session &session, QWidget *parent = nullptr);

    void start(Id<MaterialLot> lot);

protected:
    bool perform() override;

private:
    std::optional<MaterialUse> filled();
    void warnOfExpiry();
    bool readWarmth(MaterialUse &use);
    bool readCure(MaterialUse &use);

    Session &m_session;
    Id<MaterialLot> m_lot;
    RecordLine *m_part;
    RecordLine *m_other;
    MomentLine *m_when;
    QLineEdit *m_mix;
    QLineEdit *m_warmth;
    QLineEdit *m_humidity;
    QLineEdit *m_cure;
    QComboBox *m_sample;
};

/// A length of time to wait for, as people write it: "14 d", "24h", "90 min"; a bare number is
/// hours. Empty for anything else.
std::optional<Minutes> cureTime(const QString &text);

} // namespace lastrivet::ui
