// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/credit/TaskEvidence.h"
#include "core/credit/Tenths.h"
#include "core/project/Project.h"
#include "ui/shell/Drafts.h"
#include "ui/widgets/RestTimer.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class ActLine;
class PaidHelpBox;
class PhotoStrip;
class PictureLoader;
class RecordForm;
class ScanList;
class Section;
class Session;
class TenthsEditor;

/// One task of the major portion: who did how much of it, what paid help would change, and what
/// shows the builder's part.
class TaskPanel final : public QWidget {
    Q_OBJECT

public:
    TaskPanel(Session &session, PictureLoader &loader, QWidget *parent = nullptr);

    /// A copy: showing another one may keep what was being typed, and the tasks are read again.
    void show(Id<CreditTask> task, credit::TaskEvidence evidence);
    Id<CreditTask> shown() const { return m_task; }
    void apply(const ChangeNotice &notice);
    TenthsEditor &tenths() const { return *m_tenths; }
    PaidHelpBox &paidHelp() const { return *m_paidHelp; }

Q_SIGNALS:
    /// Its tenths were kept: the next task's turn.
    void settled();

protected:
    void hideEvent(QHideEvent *event) override;

private:
    void build();
    QWidget *buildActs();
    bool keep(const credit::Tenths &tenths);
    void keepDraft();
    void takeUpDraft();
    void type(const QString &draft);
    void setNotApplicable();
    void attach(const QStringList &files);
    void takeOff(Id<Media> file);
    void showEvidence(const credit::TaskEvidence &evidence);
    QString name() const;

    Session &m_session;
    Id<CreditTask> m_task;
    /// Tenths that are typed and not kept.
    Drafts m_drafts;
    RestTimer m_soon;
    QLabel *m_heading;
    TenthsEditor *m_tenths;
    PaidHelpBox *m_paidHelp;
    RecordForm *m_form;
    QLabel *m_gap;
    PhotoStrip *m_photos;
    ScanList *m_files;
    Section *m_sessions;
    ActLine *m_ask;
    QPushButton *m_withdraw;
};

} // namespace lastrivet::ui
