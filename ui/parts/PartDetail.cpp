// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/PartDetail.h"

#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/parts/PartFigures.h"
#include "ui/parts/PartSection.h"
#include "ui/parts/SectionModel.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/PhotoStrip.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/TallRows.h"
#include "ui/widgets/WithdrawAct.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QCoreApplication>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QTreeView>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

const int aboutSection = int(partSections().size());

std::vector<RecordForm::Row> aboutRows()
{
    return {{"name"},          {"code"},        {"kind"},   {"construction"},
            {"part_number"},   {"serial_number"}, {"zone"}, {"plan_ref"},
            {"place"},         {"shelf"},
            {"never_enclosed_why", false, PartDetail::tr("Never enclosed because")},
            {"note", true}};
}

} // namespace

PartDetail::PartDetail(Session &session, PictureLoader &loader, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_heading(new QLabel(this))
    , m_stateShape(new QLabel(this))
    , m_state(new QLabel(this))
    , m_figures(new QLabel(this))
    , m_buttons(new QButtonGroup(this))
    , m_below(new QCheckBox(tr("With everything below"), this))
    , m_ask(new ActLine(session, this))
    , m_model(new SectionModel(session, this))
    , m_list(new QTreeView(this))
    , m_nothing(new QLabel(this))
    , m_new(new QLineEdit(this))
    , m_stack(new QStackedWidget(this))
    , m_lists(new QSplitter(Qt::Vertical, this))
    , m_formArea(new QScrollArea(this))
    , m_forms(new QStackedWidget(this))
    , m_about(new RecordForm(session, RecordType::Component, aboutRows(), this))
    , m_photos(new PhotoStrip(session, loader, this))
{
    build();
    buildKeys();
    choose(0);
}

void PartDetail::build()
{
    m_heading->setFont(m_session.theme().font(1));
    m_heading->setWordWrap(true);
    m_figures->setWordWrap(true);
    m_below->setChecked(true);
    auto *aboutArea = new QScrollArea(this);
    aboutArea->setWidgetResizable(true);
    aboutArea->setFocusPolicy(Qt::NoFocus);
    auto *aboutInside = new QWidget(aboutArea);
    auto *aboutLayout = new QVBoxLayout(aboutInside);
    aboutLayout->setContentsMargins(0, 0, 8, 0);
    aboutLayout->addWidget(m_about);
    aboutLayout->addStretch(1);
    aboutArea->setWidget(aboutInside);
    m_stack->addWidget(buildLists());
    m_stack->addWidget(aboutArea);
    auto *top = new QHBoxLayout;
    top->addWidget(m_heading, 1);
    top->addWidget(m_stateShape);
    top->addWidget(m_state);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 0, 0, 0);
    layout->setSpacing(6);
    layout->addLayout(top);
    layout->addWidget(m_figures);
    layout->addWidget(buildBar());
    layout->addWidget(m_ask);
    layout->addWidget(m_photos);
    layout->addWidget(m_stack, 1);
    connect(m_ask, &ActLine::ended, this, &PartDetail::finished);
    connect(m_below, &QCheckBox::toggled, this, [this] {
        updateCounts();
        choose(m_section);
    });
}

QWidget *PartDetail::buildBar()
{
    auto *bar = new QWidget(this);
    auto *flow = new Flow(bar);
    for (int i = 0; i <= aboutSection; ++i) {
        auto *button = new QPushButton(bar);
        button->setCheckable(true);
        button->setFocusPolicy(Qt::TabFocus);
        m_buttons->addButton(button, i);
        flow->addWidget(button);
    }
    m_buttons->button(aboutSection)->setText(tr("The part itself"));
    flow->addWidget(m_below);
    connect(m_buttons, &QButtonGroup::idClicked, this, &PartDetail::choose);
    return bar;
}

QWidget *PartDetail::buildLists()
{
    m_list->setModel(m_model);
    m_list->setItemDelegate(new TallRows(this));
    m_list->setRootIsDecorated(false);
    m_list->setUniformRowHeights(true);
    m_list->setAllColumnsShowFocus(true);
    m_list->setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::DoubleClicked);
    m_list->setTabKeyNavigation(false);
    m_list->header()->setStretchLastSection(false);
    m_nothing->setWordWrap(true);
    m_nothing->setContentsMargins(8, 12, 8, 12);
    auto *upper = new QWidget(this);
    auto *layout = new QVBoxLayout(upper);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_list, 1);
    layout->addWidget(m_nothing, 1, Qt::AlignTop);
    layout->addWidget(m_new);
    m_formArea->setWidgetResizable(true);
    m_formArea->setFocusPolicy(Qt::NoFocus);
    m_formArea->setWidget(m_forms);
    m_lists->addWidget(upper);
    m_lists->addWidget(m_formArea);
    m_lists->setStretchFactor(0, 3);
    m_lists->setStretchFactor(1, 2);
    connect(m_new, &QLineEdit::returnPressed, this, &PartDetail::addNew);
    connect(m_list, &QTreeView::activated, this, &PartDetail::openCurrent);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this] { showCurrent(); });
    return m_lists;
}

void PartDetail::buildKeys()
{
    auto *removal = new QShortcut(QKeySequence::Delete, m_list);
    removal->setContext(Qt::WidgetShortcut);
    connect(removal, &QShortcut::activated, this, &PartDetail::withdrawCurrent);
}

RecordForm *PartDetail::formFor(int section)
{
    const PartSection &shown = partSections()[std::size_t(section)];
    if (!shown.form)
        return nullptr;
    RecordForm *&form = m_formOf[section];
    if (!form) {
        form = new RecordForm(m_session, shown.type, shown.form(), m_forms);
        m_forms->addWidget(form);
    }
    return form;
}

void PartDetail::choose(int section)
{
    m_section = section;
    m_buttons->button(section)->setChecked(true);
    m_stack->setCurrentIndex(section == aboutSection ? 1 : 0);
    if (section == aboutSection) {
        m_about->show(m_part.value());
        return;
    }
    const PartSection &shown = partSections()[std::size_t(section)];
    m_model->show(shown, m_part, m_below->isChecked());
    const QString title = QCoreApplication::translate("Section", shown.title);
    m_list->setAccessibleName(title);
    m_new->setVisible(shown.addPrompt && !m_session.isReadOnly());
    if (shown.addPrompt) {
        m_new->setPlaceholderText(QCoreApplication::translate("Section", shown.addPrompt));
        m_new->setAccessibleName(m_new->placeholderText());
    }
    fitColumns();
    showCurrent();
    updateCounts();
}

/// One column takes the room that the others leave; none of them takes much.
void PartDetail::fitColumns()
{
    QHeaderView *header = m_list->header();
    const int columns = m_model->columnCount();
    constexpr int widest = 132;
    constexpr int leeway = 12;
    const bool isLog = partSections()[std::size_t(m_section)].type == RecordType::WorkSession;
    for (int column = 0; column < columns; ++column) {
        const bool isWide = column == (isLog ? columns - 1 : 0);
        header->setSectionResizeMode(column, isWide ? QHeaderView::Stretch
                                                    : QHeaderView::Interactive);
        if (!isWide) {
            m_list->resizeColumnToContents(column);
            header->resizeSection(column, std::min(header->sectionSize(column) + leeway, widest));
        }
    }
}

void PartDetail::show(Id<Component> part)
{
    if (part == m_part)
        return;
    if (m_ask->isVisible())
        m_ask->leave();
    m_part = part;
    m_photos->show({{RecordType::Component, part.value()}});
    setVisible(bool(part));
    choose(m_section);
    updateWords();
}

void PartDetail::showRecord(RecordRef record)
{
    const int section = sectionFor(record.type);
    if (section < 0)
        return;
    choose(section);
    if (const int row = m_model->rowOf(record); row >= 0) {
        m_list->setCurrentIndex(m_model->index(row, 0));
        m_list->scrollTo(m_list->currentIndex(), QAbstractItemView::PositionAtCenter);
        m_list->setFocus();
    }
}

void PartDetail::apply(const ChangeNotice &notice)
{
    if (m_section != aboutSection)
        m_model->apply(notice);
    m_about->apply(notice);
    for (const auto &[section, form] : m_formOf) {
        if (form)
            form->apply(notice);
    }
    m_photos->apply(notice);
    showCurrent();
    updateWords();
}

void PartDetail::applyAnswer()
{
    if (m_section != aboutSection)
        m_model->applyAnswer();
    updateWords();
}

void PartDetail::updateWords()
{
    const auto records = m_session.records();
    const Component *part = records->findLive(m_part);
    if (!part)
        return;
    m_heading->setText(partName(*records, m_part));
    const auto badge = m_session.answer()->badge(m_part);
    m_state->setVisible(badge.has_value());
    m_stateShape->setVisible(badge.has_value());
    if (badge) {
        const Theme &theme = m_session.theme();
        m_state->setText(stateWords(*badge));
        m_stateShape->setPixmap(
            theme.icon(stateIcon(*badge), theme.colours().state(*badge)).pixmap(24, 24));
    }
    QStringList facts{plainWord(word(part->kind))};
    if (part->construction)
        facts.append(plainWord(word(*part->construction)));
    for (const std::string &text : {part->zone, part->place, part->shelf, part->plan_ref}) {
        if (!text.empty())
            facts.append(toQt(text));
    }
    const auto all = figuresByPart(*records);
    if (const auto own = all.find(m_part.value()); own != all.end())
        facts.append(tr("%1 with everything below").arg(hoursText(own->second.minutes)));
    m_figures->setText(facts.join(QStringLiteral(" · ")));
    updateCounts();
}

void PartDetail::updateCounts()
{
    const auto records = m_session.records();
    const auto parts = partsShown(*records, m_part, m_below->isChecked());
    for (int i = 0; i < aboutSection; ++i) {
        const PartSection &section = partSections()[std::size_t(i)];
        const QString title = QCoreApplication::translate("Section", section.title);
        const int count = m_part ? countIn(section, *records, parts) : 0;
        m_buttons->button(i)->setText(count > 0 ? tr("%1 %2").arg(title).arg(count) : title);
    }
    const bool isEmpty = m_model->rowCount() == 0;
    m_list->setVisible(!isEmpty);
    m_nothing->setVisible(isEmpty);
    m_nothing->setText(tr("Nothing on record here."));
}

RecordRef PartDetail::current() const
{
    const QModelIndex index = m_list->currentIndex();
    return index.isValid() ? m_model->recordAt(index.row()) : RecordRef{RecordType::Project, 0};
}

void PartDetail::showCurrent()
{
    RecordForm *form = m_section == aboutSection ? nullptr : formFor(m_section);
    const RecordRef record = current();
    m_formArea->setVisible(form && record.id != 0);
    if (!form)
        return;
    m_forms->setCurrentWidget(form);
    form->show(record.id);
}

void PartDetail::addNew()
{
    const std::string words = toStd(m_new->text());
    if (words.empty() || !m_part)
        return;
    const PartSection &section = partSections()[std::size_t(m_section)];
    std::int64_t added = 0;
    const QString label =
        tr("%1: %2 added").arg(partName(*m_session.records(), m_part), toQt(words));
    if (!m_session.change(label, [&](Edit &edit) { added = section.add(edit, m_part, words); }))
        return;
    m_new->clear();
    if (const int row = m_model->rowOf({section.type, added}); row >= 0)
        m_list->setCurrentIndex(m_model->index(row, 0));
}

void PartDetail::openCurrent()
{
    const RecordRef record = current();
    if (record.id == 0)
        return;
    if (!partSections()[std::size_t(m_section)].form)
        m_session.goTo(record);
}

void PartDetail::withdrawCurrent()
{
    if (current().id != 0 && !m_session.isReadOnly())
        askToWithdraw(m_session, *m_ask, current());
}

void PartDetail::editPart()
{
    choose(aboutSection);
    m_about->edit("name");
}

} // namespace lastrivet::ui
