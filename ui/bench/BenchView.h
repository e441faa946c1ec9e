// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/today/AtPart.h"
#include "ui/shell/Session.h"
#include "ui/widgets/LineDraft.h"

#include <QStringList>
#include <QWidget>

#include <array>
#include <list>

class QBoxLayout;
class QGridLayout;
class QLabel;
class QLineEdit;
class QListView;
class QPushButton;
class QStackedWidget;
class QVBoxLayout;

namespace lastrivet::ui {

class ActLine;
class BenchClock;
class BenchPartChooser;
class BenchPicture;
class MediaModel;
class MessageLine;
class PictureLoader;
class Section;

/// One part as it is needed at the bench, to be read from two metres and used in gloves: its clock,
/// steps, fasteners, lines to check, what must stay open, its newest pictures, and nothing else.
class BenchView final : public QWidget {
    Q_OBJECT

public:
    explicit BenchView(Session &session, QWidget *parent = nullptr);

    void showPart(Id<Component> part);
    Id<Component> part() const { return m_part; }
    /// Its keys and what each does, in turn: for the sheet of keys, which is opened elsewhere.
    static QStringList keys();

Q_SIGNALS:
    void left();

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void hideEvent(QHideEvent *event) override;

private:
    void makeParts();
    void build();
    QWidget *buildHead();
    QWidget *buildBoard();
    QWidget *buildPictures();
    void buildLeft(QVBoxLayout &column);
    /// As many columns as the width has room for.
    void arrange(int width);
    void turnHead();
    void buildKeys();
    void connectSession();
    void choosePart();
    /// False, which is said, while it is still to be chosen.
    bool hasPart();
    void keepDrafts();
    void fill();
    void showPictures();
    /// Shows a picture of the list as large as the bench; nothing when there is no such row.
    void enlarge(int row);
    bool isEnlarged() const;
    /// Back to the part, with the keyboard on its pictures.
    void reduce();
    void tickStep(RecordRef step);
    void tickNextStep();
    void tickCheck(RecordRef check);
    void workOn(RecordRef fastener);
    void askTorque(const Fastener &fastener);
    void addSquawk();
    void addNote();
    /// Says what would clear the nearest thing in the way.
    void explain(RecordRef closing);

    Session &m_session;
    Id<Component> m_part;
    today::AtPart m_here;
    QStackedWidget *m_stack = nullptr;
    BenchPartChooser *m_chooser = nullptr;
    QWidget *m_board = nullptr;
    QBoxLayout *m_head = nullptr;
    QGridLayout *m_grid = nullptr;
    std::array<QWidget *, 3> m_groups{};
    int m_columns = 0;
    QLabel *m_name = nullptr;
    QPushButton *m_change = nullptr;
    BenchClock *m_clock = nullptr;
    Section *m_steps = nullptr;
    Section *m_fasteners = nullptr;
    Section *m_checks = nullptr;
    Section *m_staysOpen = nullptr;
    ActLine *m_torque = nullptr;
    QLineEdit *m_squawk = nullptr;
    QLineEdit *m_note = nullptr;
    std::list<LineDraft> m_drafts;
    QLabel *m_noPictures = nullptr;
    QListView *m_pictures = nullptr;
    MediaModel *m_media = nullptr;
    PictureLoader *m_loader = nullptr;
    /// Made when a picture is first looked at.
    BenchPicture *m_picture = nullptr;
    MessageLine *m_line = nullptr;
};

} // namespace lastrivet::ui
