// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Page.h"
#include "ui/widgets/BegunForms.h"

class QLineEdit;
class QMenu;
class QPushButton;
class QScrollArea;
class QStackedWidget;

namespace lastrivet::ui {

class ActForm;
class ClosingBoard;
class ClosingView;
class EmptyPlace;
class InspectionView;
class NewClosingForm;
class PacketForm;
class VisitBoard;
class VisitForm;

/// The closings: all of them by state, or one opened to its ledger; new ones, and visits.
class ClosingsPage final : public Page {
    Q_OBJECT

public:
    explicit ClosingsPage(Session &session, QWidget *parent = nullptr);

    void showRecord(RecordRef record) override;
    void startNew() override;
    QWidget *firstFocus() override;
    Id<Component> shownPart() const override;

    /// What one visit could cover, and the visits on record.
    void showVisits();
    void showInspection(Id<Inspection> visit);
    void startVisit(const IdSet<Closing> &closings);
    void startPacket(const IdSet<Closing> &closings);

    /// The closing that is opened, if one is.
    Id<Closing> shownClosing() const;
    /// That one, or the one that is chosen on the board.
    Id<Closing> chosenClosing() const;
    ClosingView &view() const { return *m_view; }
    ClosingBoard &board() const { return *m_board; }
    VisitForm &visit() const { return *m_visit; }
    NewClosingForm &newClosing() const { return *m_new; }
    VisitBoard &visits() const { return *m_visits; }
    PacketForm &packet() const { return *m_packet; }
    InspectionView &inspection() const { return *m_inspection; }

protected:
    void recordsChanged(const ChangeNotice &notice) override;
    void answerChanged() override;
    void themeChanged() override;

private:
    QWidget *buildBoard();
    QWidget *scrolled(QWidget &content, int mostWidth);
    void connectPlaces();
    void buildMenus();
    void offerActs(QMenu &menu, Id<Closing> closing);
    void showBoard();
    /// Opened from `from`, where the way back leads; from the board when null.
    void showClosing(Id<Closing> closing, QWidget *from = nullptr);
    void leaveClosing();
    /// Records what was said at a visit that was asked for.
    void startHolding(Id<Inspection> visit);
    /// Back to where a form was started from.
    void leaveForm();
    /// The closing that a hold point, check, signature or visit belongs to.
    Id<Closing> closingOf(RecordRef record) const;
    void refresh();

    QStackedWidget *m_stack;
    QLineEdit *m_filter;
    QPushButton *m_plan;
    QPushButton *m_add;
    ClosingBoard *m_board;
    EmptyPlace *m_empty;
    QStackedWidget *m_boardOrEmpty;
    ClosingView *m_view;
    NewClosingForm *m_new;
    VisitForm *m_visit;
    BegunForms m_begunVisit;
    VisitBoard *m_visits;
    InspectionView *m_inspection;
    PacketForm *m_packet;
    QWidget *m_boardPlace;
    QWidget *m_newPlace;
    QWidget *m_visitPlace;
    QWidget *m_visitsPlace;
    QWidget *m_inspectionPlace;
    QWidget *m_packetPlace;
    /// Where the form that is open was started from.
    QWidget *m_cameFrom = nullptr;
    QWidget *m_backFromClosing = nullptr;
    Id<Closing> m_pending;
};

} // namespace lastrivet::ui
