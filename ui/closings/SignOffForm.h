// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/HoldPoint.h"
#include "core/records/SignOff.h"
#include "ui/widgets/ActForm.h"

class QComboBox;
class QLineEdit;

namespace lastrivet::ui {

class MomentLine;
class PersonBox;
class Session;
class SheetBox;

/// Records a signature: at a hold point, or afterwards for a closing that was closed too early.
class SignOffForm final : public ActForm {
    Q_OBJECT

public:
    explicit SignOffForm(Session &session, QWidget *parent = nullptr);

    void startFor(const HoldPoint &point);
    /// As `startFor`, for whoever signed before and answered by message.
    void startAnswer(const HoldPoint &point);
    void startLateAcceptance(const Closing &closing);
    /// The photographed sheet, when it lies there already.
    SheetBox &sheet() const { return *m_sheet; }

protected:
    bool perform() override;

private:
    void start(SignerRole role);
    void fillCredential();
    /// Why nothing can be signed; empty when all is there.
    QString whyNot() const;
    QString whyTooLate() const;
    QString whyTooEarly() const;
    QString label() const;
    SignOff typed(Id<Person> person, Id<Media> sheet) const;

    Session &m_session;
    Id<HoldPoint> m_point;
    Id<Closing> m_late;
    PersonBox *m_person;
    QLineEdit *m_credential;
    MomentLine *m_signedOn;
    QComboBox *m_result;
    QComboBox *m_seen;
    QLineEdit *m_remarks;
    SheetBox *m_sheet;
};

} // namespace lastrivet::ui
