// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/HoldPoint.h"
#include "core/records/SignOff.h"
#include "ui/widgets/ActForm.h"

#include <functional>
#include <string>

class QLineEdit;

namespace lastrivet::ui {

class PersonBox;
class Session;

/// Takes something back, or lets it go, with a typed reason: a wrong signature, a waived hold
/// point.
class ReasonForm final : public ActForm {
    Q_OBJECT

public:
    explicit ReasonForm(Session &session, QWidget *parent = nullptr);

    void startWithdrawing(const SignOff &signature);
    void startWaiving(const HoldPoint &point);

protected:
    bool perform() override;

private:
    void start(const QString &title, const QString &doWords, bool asksWho);

    Session &m_session;
    Id<SignOff> m_signature;
    Id<HoldPoint> m_point;
    PersonBox *m_by;
    QLineEdit *m_reason;
};

} // namespace lastrivet::ui
