// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionList.h"

#include "ui/convert/QtText.h"
#include "ui/parts/SectionActsBar.h"
#include "ui/parts/SectionAside.h"
#include "ui/parts/SectionModel.h"
#include "ui/parts/StepMoves.h"
#include "ui/parts/StepPicture.h"
#include "ui/shell/Session.h"
#include "ui/shell/ShortcutSheet.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/OneRow.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/TallRows.h"
#include "ui/widgets/UnkeptHold.h"
#include "ui/widgets/WithdrawAct.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QTimer>
#include <QTreeView>
#include <QVBoxLayout>

#include <algorithm>
#include <string>

namespace lastrivet::ui {

namespace {

/// What the line for a new one is about: a section, and the part that the record would belong to.
std::string subjectOf(const PartSection &section, Id<Component> part)
{
    const std::string kind = std::string(word(section.type)) + " " + section.title;
    return part ? kind + " " + std::to_string(part.value()) : kind;
}

} // namespace

SectionList::SectionList(Session &session, ActLine &ask, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_ask(ask)
    , m_section(&partSections().front())
    , m_model(new SectionModel(session, this))
    , m_view(new QTreeView(this))
    , m_picture(new StepPicture(session, this))
    , m_stack(new QStackedWidget(this))
    , m_nothing(new QLabel(tr("Nothing on record here."), this))
    , m_acts(new SectionActsBar(session, ask, this))
    , m_new(new QLineEdit(this))
    , m_draft(session, "section_line", *m_new)
    , m_drawn(new QPushButton(tr("Drawn"), this))
    , m_halves(new QSplitter(Qt::Vertical, this))
    , m_formArea(new QScrollArea(this))
    , m_forms(new QStackedWidget(this))
    , m_lower(new QWidget(this))
    , m_asideArea(new QScrollArea(this))
    , m_asides(new QStackedWidget(this))
    , m_keys(new QLabel(this))
{
    build();
    buildView();
    buildKeys();
    buildMenu();
    new UnkeptHold(session, m_model->unkept(), this);
}

void SectionList::build()
{
    m_formArea->setWidgetResizable(true);
    m_formArea->setFocusPolicy(Qt::NoFocus);
    m_formArea->setWidget(m_forms);
    m_halves->setChildrenCollapsible(false);
    m_halves->addWidget(buildUpper());
    m_halves->addWidget(buildLower());
    m_halves->setStretchFactor(0, 3);
    m_halves->setStretchFactor(1, 2);
    m_halves->setSizes({300, 240});
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_halves);
    connect(m_new, &QLineEdit::returnPressed, this, &SectionList::addNew);
    connect(m_drawn, &QPushButton::toggled, this, &SectionList::showPicture);
    connect(m_picture, &StepPicture::chosen, this, [this](qint64 step) {
        choose({RecordType::Step, step});
    });
}

QWidget *SectionList::buildUpper()
{
    m_nothing->setWordWrap(true);
    m_nothing->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_nothing->setContentsMargins(8, 12, 8, 12);
    m_stack->addWidget(m_view);
    m_stack->addWidget(m_nothing);
    m_stack->addWidget(m_picture);
    m_drawn->setCheckable(true);
    m_drawn->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    m_drawn->setToolTip(tr("Which step comes before which, as a picture"));
    auto *newLine = new QHBoxLayout;
    newLine->addWidget(m_new, 1);
    newLine->addWidget(m_drawn, 0, Qt::AlignRight);
    auto *upper = new QWidget(this);
    auto *layout = new QVBoxLayout(upper);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    layout->addWidget(m_stack, 1);
    layout->addLayout(newLine);
    layout->addWidget(m_acts);
    m_keys->setForegroundRole(QPalette::PlaceholderText);
    m_keys->setWordWrap(true);
    layout->addWidget(m_keys);
    return upper;
}

void SectionList::buildView()
{
    m_view->setModel(m_model);
    m_view->setItemDelegate(new TallRows(this));
    m_view->setRootIsDecorated(false);
    m_view->setUniformRowHeights(true);
    m_view->setAllColumnsShowFocus(true);
    m_view->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_view->setDragDropMode(QAbstractItemView::InternalMove);
    m_view->setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::DoubleClicked);
    m_view->setTabKeyNavigation(false);
    m_view->header()->setStretchLastSection(false);
    m_view->header()->setResizeContentsPrecision(60);
    m_view->installEventFilter(this);
    m_view->viewport()->installEventFilter(this);
    connect(m_view, &QTreeView::activated, this, &SectionList::openCurrent);
    connect(m_view->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &now, const QModelIndex &before) {
                chooseFirst(now, before);
                showCurrent();
            });
}

/// With the keyboard a list gets a current row, but Qt does not choose it: its form would be shown,
/// and neither the eye nor the keys would find it.
void SectionList::chooseFirst(const QModelIndex &now, const QModelIndex &before)
{
    QItemSelectionModel *selection = m_view->selectionModel();
    if (now.isValid() && !before.isValid() && !selection->hasSelection())
        selection->select(now, QItemSelectionModel::Select | QItemSelectionModel::Rows);
}

void SectionList::addKey(const QKeySequence &keys, const QString &words, void (SectionList::*act)())
{
    auto *shortcut = new QShortcut(keys, m_view);
    shortcut->setContext(Qt::WidgetShortcut);
    shortcut->setWhatsThis(words);
    connect(shortcut, &QShortcut::activated, this, [this, act] {
        if (!m_session.isReadOnly())
            (this->*act)();
    });
}

void SectionList::buildKeys()
{
    addKey(QKeySequence::Delete, tr("Withdraw what is chosen"), &SectionList::withdrawChosen);
    addKey(QKeySequence(Qt::Key_Insert), tr("A new one before the chosen one"),
           &SectionList::insertBefore);
    addKey(QKeySequence(Qt::ALT | Qt::Key_Up), tr("Move up"), &SectionList::moveUp);
    addKey(QKeySequence(Qt::ALT | Qt::Key_Down), tr("Move down"), &SectionList::moveDown);
}

void SectionList::show(const PartSection &section, Id<Component> part, bool isWithBelow)
{
    // What was typed for one section would become a record of another kind in the next, and what
    // was typed for one part a record of another part.
    m_draft.turnTo(subjectOf(section, part));
    m_section = &section;
    m_part = part;
    m_isWithBelow = isWithBelow;
    m_model->show(section, part, isWithBelow);
    m_view->setAccessibleName(QCoreApplication::translate("Section", section.title));
    const bool canAdd =
        section.addPrompt && !m_session.isReadOnly() && (part || !section.needsPart);
    m_new->setVisible(canAdd);
    if (section.addPrompt) {
        m_new->setPlaceholderText(QCoreApplication::translate("Section", section.addPrompt));
        m_new->setAccessibleName(m_new->placeholderText());
    }
    m_drawn->setVisible(section.type == RecordType::Step);
    m_keys->setText(keyWords());
    m_view->setProperty(ShortcutSheet::toldKeys, ownKeys());
    fitColumns();
    updateEmptiness();
    showCurrent();
}

void SectionList::hideEvent(QHideEvent *event)
{
    m_draft.keep();
    QWidget::hideEvent(event);
}

void SectionList::setFilter(std::function<bool(std::int64_t id)> filter)
{
    m_model->setFilter(std::move(filter));
    followUse();
    updateEmptiness();
    showCurrent();
}

int SectionList::count() const
{
    return m_model->rowCount();
}

void SectionList::setWhenEmpty(const QString &sentence)
{
    m_nothing->setText(sentence);
}

void SectionList::setCompleting(std::function<void(Edit &edit, std::int64_t id)> complete)
{
    m_complete = std::move(complete);
}

QWidget *SectionList::firstFocus()
{
    return m_model->rowCount() == 0 ? static_cast<QWidget *>(m_new) : m_view;
}

void SectionList::startNew()
{
    m_new->setFocus(Qt::ShortcutFocusReason);
}

void SectionList::choose(RecordRef record)
{
    const int row = m_model->rowOf(record);
    if (row < 0)
        return;
    chooseOneRow(*m_view, m_model->index(row, 0));
    m_view->scrollTo(m_view->currentIndex());
    // The fields that are shown now may leave the list less room.
    QTimer::singleShot(0, m_view, [view = m_view] { view->scrollTo(view->currentIndex()); });
}

bool SectionList::isListed(RecordRef record) const
{
    return m_model->rowOf(record) >= 0;
}

RecordRef SectionList::current() const
{
    const QModelIndex index = m_view->currentIndex();
    return index.isValid() ? m_model->recordAt(index.row()) : RecordRef{RecordType::Project, 0};
}

std::vector<RecordRef> SectionList::chosen() const
{
    QModelIndexList rows = m_view->selectionModel()->selectedRows();
    std::ranges::sort(rows, {}, [](const QModelIndex &index) { return index.row(); });
    std::vector<RecordRef> records;
    for (const QModelIndex &index : rows)
        records.push_back(m_model->recordAt(index.row()));
    return records;
}

void SectionList::showCurrent()
{
    const RecordRef record = current();
    RecordForm *shown = form();
    SectionAside *beside = aside();
    m_lower->setVisible(shown && record.id != 0);
    m_asideArea->setVisible(beside != nullptr);
    if (beside) {
        m_asides->setCurrentWidget(beside);
        beside->present(record.id);
    }
    if (shown) {
        m_forms->setCurrentWidget(shown);
        shown->show(record.id);
    }
    m_picture->setCurrent(record.type == RecordType::Step ? record.id : 0);
    m_acts->show(*m_section, record.id);
    Q_EMIT currentChanged(record);
}

void SectionList::updateEmptiness()
{
    const bool isPicture = m_section->type == RecordType::Step && m_drawn->isChecked();
    QWidget *shown = m_model->rowCount() == 0 ? static_cast<QWidget *>(m_nothing)
                     : isPicture              ? static_cast<QWidget *>(m_picture)
                                              : static_cast<QWidget *>(m_view);
    m_stack->setCurrentWidget(shown);
    m_keys->setVisible(!m_keys->text().isEmpty() && m_model->rowCount() > 0);
    if (shown != m_picture)
        return;
    m_picture->show(m_model->rows());
    m_picture->setCurrent(current().id);
}

void SectionList::showPicture(bool isShown)
{
    updateEmptiness();
    if (isShown)
        m_picture->setFocus();
    else
        m_view->setFocus();
}

void SectionList::apply(const ChangeNotice &notice)
{
    m_model->apply(notice);
    followUse();
    for (const auto &[section, form] : m_formOf)
        form->apply(notice);
    updateEmptiness();
    showCurrent();
}

void SectionList::applyAnswer()
{
    m_model->applyAnswer();
}

void SectionList::addNew()
{
    const std::string words = toStd(m_new->text());
    if (words.empty())
        return;
    if (const QString why =
            m_section->whyNotAdd ? m_section->whyNotAdd(m_session, m_new->text()) : QString();
        !why.isEmpty()) {
        m_session.complain(why);
        return;
    }
    std::int64_t added = 0;
    const QString where = m_part ? partName(*m_session.records(), m_part)
                                 : QCoreApplication::translate("Section", m_section->title);
    const QString label = tr("%1: %2 added").arg(where, toQt(words));
    if (!m_session.change(label, [&](Edit &edit) {
            added = m_section->addHere ? m_section->addHere(m_session, edit, m_part, words)
                                       : m_section->add(edit, m_part, words);
            if (m_complete)
                m_complete(edit, added);
        }))
        return;
    // Undo is about the record from here on, not about its words.
    m_new->setText({});
    m_draft.keep();
    Q_EMIT recordAdded({m_section->type, added});
    choose({m_section->type, added});
}

void SectionList::openCurrent()
{
    if (current().id != 0 && !m_section->form)
        m_session.goTo(current());
}

void SectionList::withdrawChosen()
{
    if (const auto records = chosen(); !records.empty())
        askToWithdraw(m_session, m_ask, records);
}

void SectionList::insertBefore()
{
    if (m_section->type == RecordType::Step && current().id != 0)
        m_section->acts().front().run(m_session, m_ask, current().id);
}

void SectionList::moveSteps(int by)
{
    if (m_section->type == RecordType::Step)
        moveStepsByKey(m_session, chosen(), by);
}

} // namespace lastrivet::ui
