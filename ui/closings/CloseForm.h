// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/records/Closing.h"
#include "ui/widgets/ActForm.h"

#include <QStringList>

#include <optional>

class QCheckBox;
class QLabel;
class QLineEdit;

namespace lastrivet::ui {

class MomentLine;
class PersonBox;
class Session;
class SheetBox;

/// Records that a region was closed, or opened again.
class CloseForm final : public ActForm {
    Q_OBJECT

public:
    explicit CloseForm(Session &session, QWidget *parent = nullptr);

    /// Asks for a reason when something on record stands against closing.
    void startClosing(const Closing &closing);
    /// Asks for a reason, and says beforehand what the opening makes of signatures and closings.
    void startReopening(const Closing &closing);
    SheetBox &picture() const { return *m_picture; }

protected:
    bool perform() override;

private:
    void start(const Closing &closing);
    void tellWhatStands();
    std::optional<readiness::ClosingAnswer> ifClosedThen() const;
    static QStringList firstFew(QStringList lines);
    QString whatStood(const readiness::ClosingAnswer &then) const;
    bool isReasonNeeded(const std::optional<readiness::ClosingAnswer> &then) const;
    bool isReasonMissing() const;
    QString whatOpeningDoes(const Closing &closing) const;
    QString whyNot() const;

    Session &m_session;
    Id<Closing> m_closing;
    bool m_isReopening = false;
    /// The day for which the form says what stood against closing, or what the opening does.
    std::optional<Moment> m_toldFor;
    MomentLine *m_on;
    QCheckBox *m_about;
    PersonBox *m_by;
    QLineEdit *m_reason;
    SheetBox *m_picture;
    QLabel *m_effect;
};

} // namespace lastrivet::ui
