// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/certificate/Papers.h"
#include "core/project/Project.h"

#include <QWidget>

#include <string>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class ActLine;
class RecordForm;
class ScanList;
class Section;
class Session;

/// One document on the way to the certificate: why it is needed, how far it has come, what it says,
/// and the scans of it.
class PaperPanel final : public QWidget {
    Q_OBJECT

public:
    PaperPanel(Session &session, QWidget *parent = nullptr);

    /// A copy: showing another one may keep what was being typed, and the list is read again.
    void show(certificate::Paper paper);
    /// Shows an earlier record of the same document in place of the one that counts.
    void showEarlier(Id<CertificateDocument> document);
    void apply(const ChangeNotice &notice);

Q_SIGNALS:
    /// An act was done or left: the list gets the keyboard back.
    void finished();
    /// What is half answered about a record of this document is to be shown.
    void begunWanted(const std::string &key,
                     lastrivet::Id<lastrivet::CertificateDocument> document);

private:
    void build();
    QWidget *buildActs();
    void askFor();
    void receive();
    void startRecord();
    void attach(const QStringList &files);
    void takeOff(Id<Media> file);
    void withdraw();
    void showRecord(Id<CertificateDocument> document);
    void showOthers();
    QString stateWords() const;

    Session &m_session;
    certificate::Paper m_paper;
    /// The record that is shown; mostly the paper's own.
    Id<CertificateDocument> m_document;
    QLabel *m_heading;
    QLabel *m_needed;
    QLabel *m_source;
    QLabel *m_state;
    QPushButton *m_here;
    QPushButton *m_asked;
    QPushButton *m_newer;
    QPushButton *m_write;
    QPushButton *m_withdraw;
    ActLine *m_ask;
    RecordForm *m_form;
    ScanList *m_scans;
    Section *m_others;
};

} // namespace lastrivet::ui
