// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/acts/Inspecting.h"
#include "ui/widgets/ActForm.h"

class QComboBox;
class QLineEdit;
class QRadioButton;

namespace lastrivet::ui {

class FindingRows;
class MomentLine;
class PersonBox;
class Session;
class SheetBox;
class VerdictRows;

/// A visit of an inspector or adviser: asked for, or held, with several hold points on one sheet
/// and the findings on it.
class VisitForm final : public ActForm {
    Q_OBJECT

public:
    explicit VisitForm(Session &session, QWidget *parent = nullptr);

    /// For a closing, or with an empty id for whatever waits.
    void start(Id<Closing> closing);
    VerdictRows &verdicts() const { return *m_verdicts; }
    FindingRows &findings() const { return *m_findings; }

protected:
    bool perform() override;

private:
    void addFields();
    void setAsking(bool isAsking);
    void offerPeople();
    Id<Inspection> openRequest() const;
    std::vector<Id<Component>> reachableParts(Id<Closing> closing) const;
    bool performAsking();
    bool performHolding();

    Session &m_session;
    Id<Inspection> m_asked;
    bool m_isWarned = false;
    QRadioButton *m_ask;
    QRadioButton *m_held;
    VerdictRows *m_verdicts;
    PersonBox *m_inspector;
    MomentLine *m_day;
    QLineEdit *m_reference;
    QComboBox *m_seen;
    SheetBox *m_sheet;
    FindingRows *m_findings;
};

} // namespace lastrivet::ui
