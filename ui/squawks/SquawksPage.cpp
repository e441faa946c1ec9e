// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawksPage.h"

#include "core/packet/SquawkFilterWords.h"
#include "ui/convert/QtText.h"
#include "ui/convert/UsualFolders.h"
#include "ui/squawks/SquawkCapture.h"
#include "ui/squawks/SquawkDelegate.h"
#include "ui/squawks/SquawkEditor.h"
#include "ui/squawks/SquawkFilterBar.h"
#include "ui/squawks/SquawkListTask.h"
#include "ui/squawks/SquawkModel.h"
#include "ui/widgets/EmptyPlace.h"
#include "ui/widgets/NewFileName.h"
#include "ui/widgets/PictureLoader.h"
#include "ui/widgets/RowMenu.h"

#include <QDir>
#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

SquawksPage::SquawksPage(Session &session, QWidget *parent)
    : Page(session, parent)
    , m_model(new SquawkModel(session, this))
    , m_loader(new PictureLoader(session, this))
    , m_capture(new SquawkCapture(session, QStringLiteral("squawk_on_page"), this))
    , m_filter(new SquawkFilterBar(session, this))
    , m_count(new QLabel(this))
    , m_list(new QListView(this))
    , m_empty(new EmptyPlace({}, this))
    , m_noMatch(new EmptyPlace({}, this))
    , m_stack(new QStackedWidget(this))
    , m_editor(new SquawkEditor(session, *m_loader, this))
    , m_editorArea(new QScrollArea(this))
{
    m_model->setFilter(m_filter->filter());
    build();
    buildKeys();
    choose(0);
    showCurrent();
    updateWords();
}

void SquawksPage::build()
{
    auto *halves = new QSplitter(this);
    halves->setChildrenCollapsible(false);
    halves->addWidget(buildList());
    halves->addWidget(buildEditor());
    halves->setStretchFactor(0, 1);
    halves->setStretchFactor(1, 1);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 8);
    layout->addWidget(m_capture);
    layout->addWidget(halves, 1);
    m_capture->layout()->setContentsMargins(0, 0, 0, 0);
    m_capture->setQuietWhenEmpty();
    // The keyboard stays in the line: the next squawk may follow.
    connect(m_capture, &SquawkCapture::recorded, this, [this](qint64 id) {
        bringUp({RecordType::Squawk, id});
    });
    connect(m_capture, &SquawkCapture::left, this, [this] { list().setFocus(); });
}

QWidget *SquawksPage::buildList()
{
    m_list->setModel(m_model);
    m_list->setItemDelegate(new SquawkDelegate(theme(), this));
    m_list->setAccessibleName(tr("Squawks"));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_empty->setSentence(tr("Defects that are found will be listed here, those first that will "
                            "soon be out of reach. Write the first one in the line above."));
    m_noMatch->setSentence(tr("No squawk matches the filter."));
    m_noMatch->setAction(tr("Clear the filter"));
    for (QWidget *view : std::initializer_list<QWidget *>{m_list, m_empty, m_noMatch})
        m_stack->addWidget(view);
    auto *left = new QWidget(this);
    auto *layout = new QVBoxLayout(left);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_filter);
    layout->addWidget(m_stack, 1);
    layout->addWidget(buildFoot());
    connect(m_filter, &SquawkFilterBar::changed, this, &SquawksPage::filter);
    connect(m_noMatch, &EmptyPlace::acted, this, [this] { m_filter->setFilter({}); });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this] { showCurrent(); });
    connect(m_list, &QListView::activated, this, [this] { m_editor->editTitle(); });
    connect(m_editor, &SquawkEditor::finished, this, [this] { m_list->setFocus(); });
    connect(m_editor, &SquawkEditor::begunWanted, this, [this](Id<Squawk> squawk) {
        showRecord({RecordType::Squawk, squawk.value()});
    });
    return left;
}

QWidget *SquawksPage::buildFoot()
{
    auto *foot = new QWidget(this);
    auto *print = new QPushButton(tr("Print the list…"), foot);
    auto *csv = new QPushButton(tr("CSV…"), foot);
    csv->setAccessibleName(tr("Write the list as CSV"));
    for (QPushButton *button : {print, csv})
        button->setProperty("flat", true);
    m_count->setWordWrap(true);
    auto *layout = new QHBoxLayout(foot);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_count, 1);
    layout->addWidget(print);
    layout->addWidget(csv);
    connect(print, &QPushButton::clicked, this,
            [this] { askToWrite(QStringLiteral(".pdf"), tr("PDF (*.pdf)")); });
    connect(csv, &QPushButton::clicked, this,
            [this] { askToWrite(QStringLiteral(".csv"), tr("CSV for a spreadsheet (*.csv)")); });
    return foot;
}

QWidget *SquawksPage::buildEditor()
{
    m_editorArea->setWidgetResizable(true);
    m_editorArea->setWidget(m_editor);
    m_editorArea->setFocusPolicy(Qt::NoFocus);
    return m_editorArea;
}

void SquawksPage::buildKeys()
{
    auto *fixed = new QShortcut(QKeySequence(Qt::Key_F), m_list);
    fixed->setContext(Qt::WidgetShortcut);
    fixed->setWhatsThis(tr("Mark as fixed and checked"));
    connect(fixed, &QShortcut::activated, m_editor, &SquawkEditor::fixAndCheck);
    auto *find = new QShortcut(QKeySequence(QStringLiteral("/")), m_list);
    find->setContext(Qt::WidgetShortcut);
    find->setWhatsThis(tr("Look for words in the list"));
    connect(find, &QShortcut::activated, m_filter, &SquawkFilterBar::focusText);
    (new RowMenu(*m_list))->addBar(m_editor->acts());
}

void SquawksPage::filter()
{
    m_model->setFilter(m_filter->filter());
    if (!m_list->currentIndex().isValid())
        choose(0);
    showCurrent();
    updateWords();
}

void SquawksPage::askToWrite(const QString &ending, const QString &kinds)
{
    const QString name = tr("Squawks %1").arg(toQt(session().today().text())) + ending;
    // What was pressed says what is written, whatever ending was typed.
    const QString file =
        askForNewFile(this, tr("Write the list"), QDir(documentsFolder()).filePath(name), kinds);
    if (!file.isEmpty())
        writeList(file);
}

void SquawksPage::writeList(const QString &file)
{
    const SquawkListing listing{m_model->listed(),
                                packet::inWords(m_model->filter(), *session().records())};
    if (file.endsWith(QStringLiteral(".csv"), Qt::CaseInsensitive))
        exportSquawks(session(), listing, file);
    else
        printSquawks(session(), listing, file);
}

void SquawksPage::choose(int row)
{
    if (row < m_model->rowCount())
        m_list->setCurrentIndex(m_model->index(row, 0));
}

void SquawksPage::followChosen(int before)
{
    const QModelIndex chosen = m_list->currentIndex();
    if (chosen.isValid() && chosen.row() != before)
        m_list->scrollTo(chosen);
}

void SquawksPage::showCurrent()
{
    const QModelIndex current = m_list->currentIndex();
    const Id<Squawk> id =
        current.isValid() ? Id<Squawk>{m_model->recordAt(current.row()).id} : Id<Squawk>{};
    m_editor->show(id);
    m_editorArea->setVisible(bool(id));
    m_editor->showReach(m_model->listed(id));
}

void SquawksPage::updateWords()
{
    const bool isAny = std::ranges::any_of(
        session().records()->squawks, [](const Squawk &squawk) { return !squawk.withdrawn_on; });
    const int shown = m_model->rowCount();
    m_stack->setCurrentWidget(!isAny       ? static_cast<QWidget *>(m_empty)
                              : shown == 0 ? static_cast<QWidget *>(m_noMatch)
                                           : m_list);
    const int urgent = m_model->notForLong();
    const QString count = tr("%n squawks", nullptr, shown);
    m_count->setText(urgent > 0 ? tr("%1; of all, %n soon out of reach", nullptr, urgent).arg(count)
                                : count);
}

/// Whoever goes to a squawk goes on with it, and not with the line for another.
void SquawksPage::showRecord(RecordRef record)
{
    bringUp(record);
    if (m_capture->focusProxy()->hasFocus() && m_model->rowOf(record) >= 0)
        list().setFocus();
}

void SquawksPage::bringUp(RecordRef record)
{
    if (record.type != RecordType::Squawk)
        return;
    if (m_model->rowOf(record) < 0)
        m_filter->setFilter({.standing = readiness::SquawkFilter::Standing::All});
    if (const int row = m_model->rowOf(record); row >= 0) {
        choose(row);
        m_list->scrollTo(m_list->currentIndex(), QAbstractItemView::PositionAtCenter);
        showCurrent();
    }
}

void SquawksPage::startNew()
{
    m_capture->start({});
}

/// Words that are typed straight away are a squawk. In the list their letters would be keys.
QWidget *SquawksPage::firstFocus()
{
    return session().isReadOnly() ? &list() : m_capture;
}

QWidget &SquawksPage::list() const
{
    return m_model->rowCount() > 0 ? static_cast<QWidget &>(*m_list) : *m_capture;
}

Id<Component> SquawksPage::shownPart() const
{
    const Squawk *shown = session().records()->findLive(m_editor->shown());
    return shown ? shown->component_id : Id<Component>{};
}

void SquawksPage::recordsChanged(const ChangeNotice &notice)
{
    const int before = m_list->currentIndex().row();
    m_filter->apply(notice);
    m_model->apply(notice);
    m_editor->apply(notice);
    if (!m_list->currentIndex().isValid())
        choose(0);
    followChosen(before);
    showCurrent();
    updateWords();
}

void SquawksPage::answerChanged()
{
    const int before = m_list->currentIndex().row();
    m_model->applyAnswer();
    followChosen(before);
    showCurrent();
    updateWords();
}

} // namespace lastrivet::ui
