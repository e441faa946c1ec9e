// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Page.h"

class QButtonGroup;
class QPushButton;
class QStackedWidget;

namespace lastrivet::ui {

class CertificatePlace;
class CrossCheckView;
class FlightsView;
class Flow;
class MajorPortionView;
class PapersView;
class WeighingView;
class RulesView;

/// The way to the certificate: its documents, whether they agree, and what goes into them.
class CertificatePage final : public Page {
    Q_OBJECT

public:
    explicit CertificatePage(Session &session, QWidget *parent = nullptr);

    void showRecord(RecordRef record) override;
    void startNew() override;
    QWidget *firstFocus() override;

    PapersView &papers() const { return *m_papers; }
    CrossCheckView &crossCheck() const { return *m_crossCheck; }
    MajorPortionView &majorPortion() const { return *m_majorPortion; }
    RulesView &rules() const { return *m_rules; }
    void open(CertificatePlace &place);

protected:
    void recordsChanged(const ChangeNotice &notice) override;
    void answerChanged() override;
    void themeChanged() override;

private:
    QPushButton *addButtons();
    void build();
    void show(QWidget &place);
    void updateWords();
    CertificatePlace *shown() const;

    QWidget *m_head;
    Flow *m_flow;
    QButtonGroup *m_buttons;
    QPushButton *m_toCrossCheck;
    QStackedWidget *m_stack;
    PapersView *m_papers;
    CrossCheckView *m_crossCheck;
    MajorPortionView *m_majorPortion;
    RulesView *m_rules;
    WeighingView *m_weighing;
    FlightsView *m_flights;
    std::vector<CertificatePlace *> m_places;
};

} // namespace lastrivet::ui
