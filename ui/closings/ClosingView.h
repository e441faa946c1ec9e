// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/closings/Mend.h"
#include "ui/shell/Session.h"
#include "ui/widgets/BegunForms.h"

#include <QWidget>

#include <vector>

class QBoxLayout;
class QCheckBox;
class QLabel;
class QLayout;

namespace lastrivet::ui {

class ActForm;
class CheckPanel;
class CloseForm;
class ClosingHead;
class HoldPointForm;
class HoldPointPanel;
class LedgerView;
class PhotoIntake;
class ReasonForm;
class SignOffForm;

/// One closing opened: every rule with what it looked at, its hold points, its list, its history,
/// and what can be done now.
class ClosingView final : public QWidget {
    Q_OBJECT

public:
    explicit ClosingView(Session &session, QWidget *parent = nullptr);
    ~ClosingView() override;

    void show(Id<Closing> closing);
    void setBackWords(const QString &words);
    Id<Closing> shown() const { return m_closing; }
    /// Looks again at records and answer.
    void refresh();
    LedgerView &ledger() const { return *m_ledger; }
    void startSigning(Id<HoldPoint> point);
    void startClosing();
    CloseForm &closeForm() const { return *m_closeForm; }
    SignOffForm &signOff() const { return *m_signOff; }
    /// Takes pictures of the inside in, linked to the closing.
    void addPhotos(const QStringList &files);

Q_SIGNALS:
    void backWanted();
    void visitWanted(lastrivet::Id<lastrivet::Closing> closing);
    void packetWanted(lastrivet::Id<lastrivet::Closing> closing);
    /// What is begun for this closing is to be shown.
    void begunWanted(lastrivet::Id<lastrivet::Closing> closing);

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    enum class Purpose { Sign, Answer, Accept, Waive, Withdraw, Plan, Close, Reopen };

    void build();
    QLayout *buildSide();
    void orderStops();
    void connectParts();
    QString history(const Closing &closing) const;
    static QString eventWords(bool isClosed, bool isApproximate, const QString &day,
                              const QString &person);
    void mend(Mend mend, RecordRef record);
    void attachSheet(Id<HoldPoint> point);
    void choosePhotos();
    void writeChanges(Id<HoldPoint> point);
    std::vector<ActForm *> forms() const;
    void markStepDone(Id<Step> step);
    void startWaiving(Id<HoldPoint> point);
    void startWithdrawing(Id<SignOff> signature);
    void startAnswer(Id<HoldPoint> point);
    void startPlanning();
    void startLateAcceptance();
    /// Shows it to be filled anew; false while something else is begun, or the same.
    bool startForm(ActForm &form, Purpose purpose, std::int64_t record);
    void leaveForm();

    Session &m_session;
    Id<Closing> m_closing;
    ClosingHead *m_head;
    QCheckBox *m_onlyOpen;
    LedgerView *m_ledger;
    HoldPointPanel *m_points;
    CheckPanel *m_checks;
    QLabel *m_history;
    SignOffForm *m_signOff;
    CloseForm *m_closeForm;
    ReasonForm *m_reason;
    HoldPointForm *m_plan;
    BegunForms m_begun;
    PhotoIntake *m_intake;
    QBoxLayout *m_body;
};

} // namespace lastrivet::ui
