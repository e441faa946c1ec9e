// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"
#include "ui/certificate/CertificatePlace.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace lastrivet::certificate {
struct TestProgress;
}

namespace lastrivet::ui {

class ActLine;
class EmptyPlace;
class FlightForm;
class RecordForm;
class RowListView;
class Session;

/// The test period: what is still to be flown by the country's rules, a form for the next flight,
/// and the flights so far.
class FlightsView final : public CertificatePlace {
    Q_OBJECT

public:
    explicit FlightsView(Session &session, QWidget *parent = nullptr);

    bool showRecord(RecordRef record) override;
    void apply(const ChangeNotice &notice) override;
    void startNew() override;
    QWidget *firstFocus() override;

private:
    QWidget *buildLeft();
    QWidget *buildRight();
    void choose(Id<Flight> flight);
    void work();
    void showRules();
    void addRule(const Profile::TestPeriod &rule, const certificate::TestProgress *progress,
                 Minutes flown);
    void showFlights();

    Session &m_session;
    Id<Flight> m_shown;
    QLabel *m_sum;
    QVBoxLayout *m_rules;
    FlightForm *m_form;
    QLabel *m_listTitle = nullptr;
    RowListView *m_list;
    RecordForm *m_detail;
    ActLine *m_ask;
    QWidget *m_chosen;
    QPushButton *m_withdraw;
};

} // namespace lastrivet::ui
