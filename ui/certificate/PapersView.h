// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/certificate/CertificatePlace.h"
#include "ui/widgets/LineDraft.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QScrollArea;

namespace lastrivet::ui {

class PaperModel;
class PaperPanel;
class PlainTable;

/// The country's documents and the builder's own: what is missing, and the chosen one to work on.
class PapersView final : public CertificatePlace {
    Q_OBJECT

public:
    explicit PapersView(Session &session, QWidget *parent = nullptr);

    bool showRecord(RecordRef record) override;
    void apply(const ChangeNotice &notice) override;
    void startNew() override;
    QWidget *firstFocus() override;
    PaperPanel &panel() const { return *m_panel; }

protected:
    void hideEvent(QHideEvent *event) override;

private:
    void build();
    QWidget *buildList();
    void addOwn();
    void showCurrent();
    void updateWords();

    Session &m_session;
    PaperModel *m_model;
    QLabel *m_headline;
    PlainTable *m_table;
    QLineEdit *m_own;
    /// A document that is typed and not added.
    LineDraft m_draft;
    QPushButton *m_add;
    PaperPanel *m_panel;
    QScrollArea *m_panelArea;
};

} // namespace lastrivet::ui
