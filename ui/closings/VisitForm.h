// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/acts/Inspecting.h"
#include "ui/widgets/ActForm.h"

class QCheckBox;
class QComboBox;
class QLineEdit;
class QRadioButton;

namespace lastrivet::ui {

class FindingRows;
class MomentLine;
class OpenRequestNotice;
class PersonBox;
class Session;
class SheetBox;
class SheetPreview;
class VerdictRows;

/// A visit of an inspector or adviser: asked for, or held, with several hold points on one sheet
/// and the findings on it.
class VisitForm final : public ActForm {
    Q_OBJECT

public:
    explicit VisitForm(Session &session, QWidget *parent = nullptr);

    /// For some closings, or for whatever waits.
    void start(const IdSet<Closing> &closings);
    /// To record what was said at a visit that was asked for.
    void startHolding(const Inspection &visit);
    VerdictRows &verdicts() const { return *m_verdicts; }
    FindingRows &findings() const { return *m_findings; }
    SheetBox &sheet() const { return *m_sheet; }

Q_SIGNALS:
    /// The visit is on record.
    void recorded(lastrivet::Id<lastrivet::Inspection> visit);

protected:
    bool perform() override;

private:
    void addFields();
    void connectParts();
    void showOthers();
    void begin(const IdSet<Closing> &closings);
    void setAsking(bool isAsking);
    void offerPeople();
    /// Who was named stays named when other hold points are chosen, as far as they may sign those.
    void offerPeopleAgain();
    void extend(Id<Inspection> visit);
    Id<Inspection> openRequest() const;
    QString whyNotHold() const;
    bool warnOnce(const QString &sentence);
    bool mayGoWithoutRequest();
    bool mayFollowTheClosing();
    bool performAsking();
    bool performHolding();
    acts::HeldInspection typed(Edit &edit, Id<Media> sheet) const;

    Session &m_session;
    Id<Inspection> m_asked;
    QString m_warned;
    /// What was said of closings that were closed before the visit.
    QString m_toldOfClosing;
    bool m_isAsking = true;
    /// The day as it is typed for the other choice: planned for, or held on.
    QString m_otherDay;
    QRadioButton *m_ask;
    QRadioButton *m_held;
    OpenRequestNotice *m_notice;
    VerdictRows *m_verdicts;
    PersonBox *m_inspector;
    MomentLine *m_askedOn;
    MomentLine *m_day;
    QLineEdit *m_reference;
    QLineEdit *m_present;
    QComboBox *m_seen;
    SheetBox *m_sheet;
    SheetPreview *m_preview;
    FindingRows *m_findings;
    QCheckBox *m_complete;
};

} // namespace lastrivet::ui
