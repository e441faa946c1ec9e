// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Squawk.h"
#include "ui/widgets/ActForm.h"

class QLineEdit;

namespace lastrivet::ui {

class MomentLine;
class PersonBox;
class Session;
class SheetBox;

/// The answer to a finding: how it was corrected, with a picture, or who looked at the correction.
class AnswerForm final : public ActForm {
    Q_OBJECT

public:
    explicit AnswerForm(Session &session, QWidget *parent = nullptr);

    void startCorrecting(const Squawk &finding);
    void startVerifying(const Squawk &finding);
    SheetBox &picture() const { return *m_picture; }

protected:
    bool perform() override;

private:
    void start(const Squawk &finding, bool isVerifying);
    bool correct(const Squawk &finding);
    bool verify(const Squawk &finding);

    Session &m_session;
    Id<Squawk> m_finding;
    bool m_isVerifying = false;
    QLineEdit *m_correction;
    MomentLine *m_on;
    PersonBox *m_by;
    SheetBox *m_picture;
};

} // namespace lastrivet::ui
