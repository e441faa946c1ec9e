// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/certificate/CertificatePlace.h"
#include "ui/widgets/LineDraft.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QScrollArea;
class QStackedWidget;

namespace lastrivet::ui {

class CreditModel;
class PictureLoader;
class PlainTable;
class TaskPanel;

/// The major portion: every task of the form with who did how much of it, and how the sum stands.
class MajorPortionView final : public CertificatePlace {
    Q_OBJECT

public:
    explicit MajorPortionView(Session &session, QWidget *parent = nullptr);

    bool showRecord(RecordRef record) override;
    void apply(const ChangeNotice &notice) override;
    void startNew() override;
    QWidget *firstFocus() override;
    TaskPanel &panel() const { return *m_panel; }
    QString verdict() const;

protected:
    void hideEvent(QHideEvent *event) override;

private:
    void build();
    QWidget *buildTable();
    QWidget *buildFoot();
    void offerClasses();
    void addSuggested();
    void addOwn();
    void showCurrent();
    void goOn();
    void goToNextGap();
    void updateWords();

    Session &m_session;
    PictureLoader *m_loader;
    CreditModel *m_model;
    QLabel *m_verdict;
    /// Leads from one claimed task without a picture to the next.
    QPushButton *m_gaps;
    QLabel *m_rules;
    PlainTable *m_table;
    QStackedWidget *m_tableOrEmpty;
    QComboBox *m_class;
    QPushButton *m_suggest;
    QLineEdit *m_own;
    /// A task that is typed and not added.
    LineDraft m_draft;
    QPushButton *m_add;
    TaskPanel *m_panel;
    QScrollArea *m_panelArea;
};

} // namespace lastrivet::ui
