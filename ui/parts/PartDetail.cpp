// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartDetail.h"

#include "core/project/acts/SquawkActs.h"
#include "ui/parts/PartFigures.h"
#include "ui/parts/PartHead.h"
#include "ui/parts/PartPhotos.h"
#include "ui/parts/PartSection.h"
#include "ui/parts/SectionChoice.h"
#include "ui/parts/SectionList.h"
#include "ui/parts/SectionModel.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/RecordForm.h"

#include <QCoreApplication>
#include <QEvent>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTreeView>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// Behind the sections that are lists.
int photosSection()
{
    return int(partSections().size());
}

int aboutSection()
{
    return photosSection() + 1;
}

/// Made whole before what it shows, so that the Tab key comes to it first.
SectionChoice *makeChoice(QWidget *parent)
{
    auto *choice = new SectionChoice(parent);
    for (const PartSection &section : partSections())
        choice->add(QCoreApplication::translate("Section", section.title));
    choice->add(PartDetail::tr("Photos"));
    choice->add(PartDetail::tr("The part itself"));
    return choice;
}

int openSquawks(const Records &records, const std::vector<std::int64_t> &ids)
{
    return int(std::ranges::count_if(
        ids, [&](std::int64_t id) { return acts::isOpen(*records.find(Id<Squawk>{id})); }));
}

std::vector<RecordForm::Row> aboutRows()
{
    return {{"name"},
            {"code"},
            {"kind"},
            {"construction"},
            {"part_number"},
            {"serial_number"},
            {"zone"},
            {"plan_ref"},
            {"place"},
            {"shelf"},
            {"never_enclosed_why", false, PartDetail::tr("Never enclosed because")},
            {"note", true}};
}

} // namespace

PartDetail::PartDetail(Session &session, PictureLoader &loader, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_head(new PartHead(session, this))
    , m_ask(new ActLine(session, this))
    , m_choice(makeChoice(this))
    , m_stack(new QStackedWidget(this))
    , m_lists(new SectionList(session, *m_ask, this))
    , m_photos(new PartPhotos(session, loader, this))
    , m_about(new RecordForm(session, RecordType::Component, aboutRows(), this))
{
    build();
    m_choice->choose(0);
}

void PartDetail::build()
{
    m_stack->addWidget(m_lists);
    m_stack->addWidget(m_photos);
    m_stack->addWidget(buildAbout());
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 0, 0, 0);
    layout->setSpacing(6);
    layout->addWidget(m_head);
    layout->addWidget(m_choice);
    layout->addWidget(m_ask);
    layout->addWidget(m_stack, 1);
    m_ask->installEventFilter(this);
    connect(m_ask, &ActLine::ended, this, &PartDetail::giveBack);
    connect(m_choice, &SectionChoice::chosenChanged, this, &PartDetail::fill);
    connect(m_head, &PartHead::fingerTightWanted, this,
            [this] { choose(sectionFor(RecordType::Fastener)); });
    connect(m_head, &PartHead::withBelowChanged, this, [this] {
        updateCounts();
        fill();
    });
}

QWidget *PartDetail::buildAbout()
{
    auto *area = new QScrollArea(this);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    auto *inside = new QWidget(area);
    auto *layout = new QVBoxLayout(inside);
    layout->setContentsMargins(0, 0, 8, 0);
    layout->addWidget(m_about);
    layout->addStretch(1);
    area->setWidget(inside);
    return area;
}

/// A question comes up before it takes the keyboard.
bool PartDetail::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == m_ask && event->type() == QEvent::Show && !event->spontaneous())
        m_isAskedInList = m_lists->isAncestorOf(window()->focusWidget());
    return QWidget::eventFilter(watched, event);
}

/// A question that was asked in the list of a section, as the torque of one line after the other,
/// goes back there; all others to the tree.
void PartDetail::giveBack()
{
    QTreeView &view = m_lists->view();
    if (m_isAskedInList && view.isVisible())
        view.setFocus();
    else
        Q_EMIT finished();
}

QTreeView *PartDetail::list() const
{
    return &m_lists->view();
}

void PartDetail::choose(int section)
{
    if (m_choice->chosen() == section)
        fill();
    else
        m_choice->choose(section);
}

void PartDetail::fill()
{
    const int section = m_choice->chosen();
    if (section == aboutSection()) {
        m_stack->setCurrentIndex(2);
        m_about->show(m_part.value());
    } else if (section == photosSection()) {
        m_stack->setCurrentIndex(1);
        m_photos->show(m_part, m_head->isWithBelow());
    } else {
        m_stack->setCurrentIndex(0);
        m_lists->show(partSections()[std::size_t(section)], m_part, m_head->isWithBelow());
    }
}

void PartDetail::show(Id<Component> part, const PartFigures &figures)
{
    m_ask->follow({{RecordType::Component, part.value()}});
    m_part = part;
    m_photoCount = figures.photos;
    m_head->show(part, figures);
    m_choice->setOffered(aboutSection(), bool(part));
    if (!part && m_choice->chosen() == aboutSection())
        m_choice->choose(0);
    updateCounts();
    fill();
}

void PartDetail::showRecord(RecordRef record)
{
    const int section = sectionFor(record.type);
    if (section < 0)
        return;
    choose(section);
    m_lists->choose(record);
    m_lists->view().setFocus();
}

void PartDetail::apply(const ChangeNotice &notice, const PartFigures &figures)
{
    m_photoCount = figures.photos;
    m_head->show(m_part, figures);
    m_lists->apply(notice);
    m_about->apply(notice);
    if (m_choice->chosen() == photosSection())
        m_photos->apply(notice);
    updateCounts();
}

void PartDetail::applyAnswer(const PartFigures &figures)
{
    m_lists->applyAnswer();
    m_head->show(m_part, figures);
}

void PartDetail::themeChanged()
{
    m_head->themeChanged();
}

void PartDetail::updateCounts()
{
    const auto records = m_session.records();
    const auto parts = partsShown(*records, m_part, m_head->isWithBelow());
    for (int i = 0; i < photosSection(); ++i) {
        const PartSection &section = partSections()[std::size_t(i)];
        const auto ids = section.collect(*records, parts);
        if (section.type == RecordType::Squawk)
            m_choice->setCount(i, int(ids.size()), openSquawks(*records, ids));
        else
            m_choice->setCount(i, int(ids.size()));
    }
    m_choice->setCount(photosSection(), m_photoCount);
}

void PartDetail::editPart()
{
    choose(aboutSection());
    m_about->edit("name");
}

} // namespace lastrivet::ui
