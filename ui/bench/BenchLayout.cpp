// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/BenchView.h"

#include "ui/bench/BenchClock.h"
#include "ui/bench/BenchPartChooser.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/MediaModel.h"
#include "ui/widgets/MessageLine.h"
#include "ui/widgets/RowListView.h"
#include "ui/widgets/Section.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QResizeEvent>
#include <QScrollArea>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>

// How the bench view is put together; what it does is in BenchView.cpp.
namespace lastrivet::ui {

namespace {

constexpr int wordSteps = 2; // 10 pt × 1.25² is about 16 pt
constexpr int nameSteps = 4; // 24 pt
constexpr int rowsShown = 4;
/// Narrower columns break words of this size into letters.
constexpr int threeColumnsFrom = 1080;
constexpr int oneColumnBelow = 640;
/// With the padding of the application's style sheet buttons and lines are 56 px high. The sheet
/// sets the fonts, too, because widgets that a sheet styles do not take over their parent's.
const auto touchSheet = QStringLiteral("QWidget { font-size: %1pt; } #name { font-size: %2pt; } "
                                       "QPushButton, QLineEdit, QComboBox { min-height: 44px; }");

/// Big rows; a press anywhere in one acts.
Section *touchSection(const Theme &theme, const QString &title, const QString &whenEmpty,
                      QWidget *parent)
{
    auto *section = new Section(theme, title, whenEmpty, parent);
    section->setShortLength(rowsShown);
    section->list().setTouch();
    section->list().setTitleLines(4);
    // Limits and what is still to do are what people come to read.
    section->list().setDetailLines(4);
    return section;
}

} // namespace

BenchView::BenchView(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
{
    makeParts();
    build();
    connectSession();
    for (LineDraft &draft : m_drafts)
        draft.takeUp();
    if (const auto part = m_chooser->usualPart())
        showPart(part);
    else
        choosePart();
}

void BenchView::makeParts()
{
    const Theme &theme = m_session.theme();
    m_stack = new QStackedWidget(this);
    m_chooser = new BenchPartChooser(m_session, this);
    m_board = new QWidget(this);
    m_name = new QLabel(this);
    m_change = new QPushButton(tr("Other part (F6)"), this);
    m_clock = new BenchClock(m_session, this);
    m_steps =
        touchSection(theme, tr("Next steps (F3)"), tr("No step of this part is left to do."), this);
    m_fasteners =
        touchSection(theme, tr("Torque and lock"), tr("No fasteners are on record here."), this);
    m_checks = touchSection(theme, tr("Lines to check"),
                            tr("No line of an inspector's list is left here."), this);
    m_staysOpen = touchSection(theme, tr("Must stay open here"),
                               tr("No closing on record has to stay open here."), this);
    m_torque = new ActLine(m_session, this);
    m_squawk = new QLineEdit(this);
    m_note = new QLineEdit(this);
    m_noPictures = new QLabel(tr("No picture of this part is on record."), this);
    m_pictures = new QListView(this);
    m_line = new MessageLine(this);
}

void BenchView::build()
{
    const Theme &theme = m_session.theme();
    m_name->setObjectName(QStringLiteral("name"));
    setStyleSheet(
        touchSheet.arg(theme.font(wordSteps).pointSizeF()).arg(theme.font(nameSteps).pointSizeF()));
    setAutoFillBackground(true);
    auto *scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(buildBoard());
    m_stack->addWidget(m_chooser);
    m_stack->addWidget(scroll);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(24, 16, 24, 8);
    layout->addWidget(buildHead());
    layout->addWidget(m_stack, 1);
    layout->addWidget(m_line);
    buildKeys();
}

QWidget *BenchView::buildHead()
{
    auto *head = new QWidget(this);
    m_name->setWordWrap(true);
    auto *leave = new QPushButton(tr("Leave (Esc)"), head);
    auto *acts = new QHBoxLayout;
    acts->addStretch(1);
    acts->addWidget(m_change);
    acts->addWidget(leave);
    m_head = new QBoxLayout(QBoxLayout::LeftToRight, head);
    m_head->setContentsMargins(0, 0, 0, 0);
    m_head->addWidget(m_name, 1);
    m_head->addLayout(acts);
    turnHead();
    connect(m_change, &QPushButton::clicked, this, &BenchView::choosePart);
    connect(leave, &QPushButton::clicked, this, &BenchView::left);
    return head;
}

QWidget *BenchView::buildBoard()
{
    m_grid = new QGridLayout(m_board);
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(32);
    m_grid->setVerticalSpacing(16);
    QVBoxLayout *column[3];
    for (std::size_t i = 0; i < m_groups.size(); ++i) {
        m_groups[i] = new QWidget(m_board);
        column[i] = new QVBoxLayout(m_groups[i]);
        column[i]->setContentsMargins(0, 0, 0, 0);
        column[i]->setSpacing(16);
    }
    buildLeft(*column[0]);
    column[1]->addWidget(m_torque);
    column[1]->addWidget(m_fasteners);
    column[1]->addWidget(m_checks);
    column[2]->addWidget(m_staysOpen);
    column[2]->addWidget(buildPictures());
    for (QVBoxLayout *each : column)
        each->addStretch(1);
    arrange(width());
    connect(m_fasteners, &Section::acted, this, &BenchView::workOn);
    connect(m_fasteners, &Section::chosen, this, &BenchView::workOn);
    connect(m_checks, &Section::acted, this, &BenchView::tickCheck);
    connect(m_checks, &Section::chosen, this, &BenchView::tickCheck);
    connect(m_staysOpen, &Section::chosen, this, &BenchView::explain);
    return m_board;
}

void BenchView::arrange(int width)
{
    const int columns = width < oneColumnBelow ? 1 : width < threeColumnsFrom ? 2 : 3;
    if (columns == m_columns)
        return;
    m_columns = columns;
    turnHead();
    for (QWidget *group : m_groups)
        m_grid->removeWidget(group);
    const auto [acts, lists, looks] = m_groups;
    m_grid->addWidget(acts, 0, 0);
    if (columns == 1) {
        m_grid->addWidget(lists, 1, 0);
        m_grid->addWidget(looks, 2, 0);
    } else if (columns == 2) {
        m_grid->addWidget(lists, 0, 1, 2, 1);
        m_grid->addWidget(looks, 1, 0);
    } else {
        m_grid->addWidget(lists, 0, 1);
        m_grid->addWidget(looks, 0, 2);
    }
    for (int column = 0; column < int(m_groups.size()); ++column)
        m_grid->setColumnStretch(column, column < columns ? 1 : 0);
    for (int row = 0; row < int(m_groups.size()); ++row)
        m_grid->setRowStretch(row, row == (columns == 3 ? 0 : columns == 2 ? 1 : 2) ? 1 : 0);
}

/// In one column there is no room for the acts beside the name.
void BenchView::turnHead()
{
    if (m_head)
        m_head->setDirection(m_columns == 1 ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

void BenchView::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    arrange(event->size().width());
}

void BenchView::buildLeft(QVBoxLayout &column)
{
    m_squawk->setPlaceholderText(tr("What is wrong?"));
    m_squawk->setAccessibleName(tr("New squawk"));
    m_note->setPlaceholderText(tr("To remember about this part"));
    m_note->setAccessibleName(tr("Note"));
    column.addWidget(m_clock);
    column.addWidget(m_steps);
    column.addWidget(heading(tr("New squawk (F4)"), this));
    column.addWidget(m_squawk);
    column.addWidget(heading(tr("Note (F5)"), this));
    column.addWidget(m_note);
    for (QLineEdit *line : {m_squawk, m_note})
        line->setEnabled(!m_session.isReadOnly());
    m_drafts.emplace_back(m_session, "bench_squawk", *m_squawk);
    m_drafts.emplace_back(m_session, "bench_note", *m_note);
    connect(m_steps, &Section::acted, this, &BenchView::tickStep);
    connect(m_steps, &Section::chosen, this, &BenchView::tickStep);
    connect(m_squawk, &QLineEdit::returnPressed, this, &BenchView::addSquawk);
    connect(m_note, &QLineEdit::returnPressed, this, &BenchView::addNote);
}

QStringList BenchView::keys()
{
    return {QStringLiteral("F2"), tr("At the bench: start or stop work"),
            QStringLiteral("F3"), tr("At the bench: tick the next step"),
            QStringLiteral("F4"), tr("At the bench: a new squawk"),
            QStringLiteral("F5"), tr("At the bench: a note"),
            QStringLiteral("F6"), tr("At the bench: another part")};
}

void BenchView::buildKeys()
{
    const auto add = [this](Qt::Key key, auto act) {
        auto *shortcut = new QShortcut(key, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    // While the part is still to be chosen, nobody sees what these keys would do.
    const auto addOfPart = [this, add](Qt::Key key, auto act) {
        add(key, [this, act] {
            if (!hasPart())
                return;
            reduce();
            act();
        });
    };
    addOfPart(Qt::Key_F2, [this] { m_clock->startOrStop(); });
    addOfPart(Qt::Key_F3, [this] { tickNextStep(); });
    addOfPart(Qt::Key_F4, [this] { m_squawk->setFocus(); });
    addOfPart(Qt::Key_F5, [this] { m_note->setFocus(); });
    add(Qt::Key_F6, [this] { choosePart(); });
}

void BenchView::connectSession()
{
    Session *session = &m_session;
    connect(m_chooser, &BenchPartChooser::chosen, this, &BenchView::showPart);
    connect(m_chooser, &BenchPartChooser::left, this, [this] {
        if (m_part)
            showPart(m_part);
        else
            Q_EMIT left();
    });
    connect(session, &Session::changed, this, [this](const ChangeNotice &notice) {
        m_chooser->recordsChanged();
        m_media->apply(notice);
        fill();
    });
    connect(session, &Session::answerChanged, this, &BenchView::fill);
    connect(session, &Session::said, m_line, &MessageLine::say);
    connect(session, &Session::complained, m_line, &MessageLine::complain);
    connect(m_line, &MessageLine::undoWanted, session, &Session::undo);
    connect(m_torque, &ActLine::wanted, this,
            [this] { showPart(Id<Component>{m_torque->aboutId()}); });
    connect(m_torque, &ActLine::ended, &m_fasteners->list(),
            [this] { m_fasteners->list().setFocus(); });
}

} // namespace lastrivet::ui
