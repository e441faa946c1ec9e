// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawksPage.h"

#include "core/entry/SquawkLine.h"
#include "core/project/acts/SquawkActs.h"
#include "ui/convert/QtText.h"
#include "ui/squawks/SquawkDelegate.h"
#include "ui/squawks/SquawkEditor.h"
#include "ui/squawks/SquawkModel.h"
#include "ui/widgets/EmptyPlace.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/PictureLoader.h"
#include "ui/widgets/RecordNames.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
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
    , m_capture(new QLineEdit(this))
    , m_captured(new QLabel(this))
    , m_text(new QLineEdit(this))
    , m_severity(new QComboBox(this))
    , m_all(new QPushButton(this))
    , m_count(new QLabel(this))
    , m_list(new QListView(this))
    , m_empty(new EmptyPlace({}, this))
    , m_stack(new QStackedWidget(this))
    , m_editor(new SquawkEditor(session, *m_loader, this))
{
    build();
    buildKeys();
    choose(0);
    updateWords();
}

void SquawksPage::build()
{
    m_capture->setPlaceholderText(tr("New squawk, as in “left aileron: overdriven rivet at rib 3”"));
    m_capture->setAccessibleName(tr("New squawk"));
    m_capture->setEnabled(!session().isReadOnly());
    m_captured->setWordWrap(true);
    m_captured->hide();
    auto *right = new QScrollArea(this);
    right->setWidgetResizable(true);
    right->setWidget(m_editor);
    right->setFocusPolicy(Qt::NoFocus);
    auto *halves = new QSplitter(this);
    halves->setChildrenCollapsible(false);
    halves->addWidget(buildList());
    halves->addWidget(right);
    halves->setStretchFactor(0, 1);
    halves->setStretchFactor(1, 1);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 8);
    layout->addWidget(m_capture);
    layout->addWidget(m_captured);
    layout->addWidget(halves, 1);
    connect(m_capture, &QLineEdit::returnPressed, this, &SquawksPage::capture);
    connect(m_capture, &QLineEdit::textChanged, this, &SquawksPage::explainCapture);
}

QWidget *SquawksPage::buildList()
{
    m_list->setModel(m_model);
    m_list->setItemDelegate(new SquawkDelegate(theme(), this));
    m_list->setUniformItemSizes(true);
    m_list->setAccessibleName(tr("Squawks"));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_empty->setSentence(tr("Defects that are found will be listed here, those first that will "
                            "soon be out of reach. Write the first one in the line above."));
    m_stack->addWidget(m_list);
    m_stack->addWidget(m_empty);
    auto *left = new QWidget(this);
    auto *layout = new QVBoxLayout(left);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(buildFilter());
    layout->addWidget(m_stack, 1);
    layout->addWidget(m_count);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this] { showCurrent(); });
    connect(m_list, &QListView::activated, this, [this] { m_editor->editTitle(); });
    connect(m_editor, &SquawkEditor::finished, this, [this] { m_list->setFocus(); });
    return left;
}

QWidget *SquawksPage::buildFilter()
{
    m_text->setPlaceholderText(tr("Type to filter"));
    m_text->setAccessibleName(tr("Filter by words"));
    m_text->setClearButtonEnabled(true);
    m_severity->setAccessibleName(tr("Filter by severity"));
    m_severity->addItem(tr("every severity"));
    for (const auto severity :
         {Severity::Airworthiness, Severity::Workmanship, Severity::Cosmetic})
        m_severity->addItem(theme().icon(severityIcon(severity)), severityWord(severity),
                            int(severity));
    m_all->setText(tr("Done ones too"));
    m_all->setCheckable(true);
    auto *line = new QWidget(this);
    auto *layout = new QHBoxLayout(line);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_text, 1);
    layout->addWidget(m_severity);
    layout->addWidget(m_all);
    connect(m_text, &QLineEdit::textChanged, this, &SquawksPage::filter);
    connect(m_severity, &QComboBox::currentIndexChanged, this, &SquawksPage::filter);
    connect(m_all, &QPushButton::toggled, this, &SquawksPage::filter);
    return line;
}

void SquawksPage::buildKeys()
{
    auto *fixed = new QShortcut(QKeySequence(Qt::Key_F), m_list);
    fixed->setContext(Qt::WidgetShortcut);
    connect(fixed, &QShortcut::activated, m_editor, &SquawkEditor::fixAndCheck);
    auto *find = new QShortcut(QKeySequence(QStringLiteral("/")), m_list);
    find->setContext(Qt::WidgetShortcut);
    connect(find, &QShortcut::activated, this, [this] { m_text->setFocus(); });
}

void SquawksPage::explainCapture()
{
    const QString text = m_capture->text().trimmed();
    m_captured->setVisible(!text.isEmpty());
    if (text.isEmpty())
        return;
    const auto records = session().records();
    const Squawk read = entry::readSquawk(toStd(text), entry::PartFinder(*records));
    const QString part = partName(*records, read.component_id);
    m_captured->setText(tr("%1 · %2 · %3 · Enter writes it down")
                            .arg(toQt(read.title), part.isEmpty() ? tr("no part") : part,
                                 severityWord(read.severity)));
}

void SquawksPage::capture()
{
    const QString text = m_capture->text().trimmed();
    if (text.isEmpty())
        return;
    Id<Squawk> added;
    const bool isDone = session().change(tr("Squawk written down: %1").arg(text), [&](Edit &edit) {
        added = acts::addSquawk(
            edit, entry::readSquawk(toStd(text), entry::PartFinder(edit.records())));
    });
    if (!isDone)
        return;
    m_capture->clear();
    showRecord({RecordType::Squawk, added.value()});
}

void SquawksPage::filter()
{
    SquawkModel::Filter wanted{m_text->text().trimmed(), std::nullopt, !m_all->isChecked()};
    if (const QVariant severity = m_severity->currentData(); severity.isValid())
        wanted.severity = Severity(severity.toInt());
    m_model->setFilter(wanted);
    if (!m_list->currentIndex().isValid())
        choose(0);
    showCurrent();
    updateWords();
}

void SquawksPage::choose(int row)
{
    if (row < m_model->rowCount())
        m_list->setCurrentIndex(m_model->index(row, 0));
}

void SquawksPage::showCurrent()
{
    const QModelIndex current = m_list->currentIndex();
    m_editor->show(current.isValid() ? Id<Squawk>{m_model->recordAt(current.row()).id}
                                     : Id<Squawk>{});
}

void SquawksPage::updateWords()
{
    const bool isAny = std::ranges::any_of(session().records()->squawks, [](const Squawk &squawk) {
        return !squawk.withdrawn_on;
    });
    m_stack->setCurrentWidget(isAny ? static_cast<QWidget *>(m_list) : m_empty);
    const int shown = m_model->rowCount();
    const int urgent = m_model->notForLong();
    QString words = m_all->isChecked() ? tr("%n squawks", nullptr, shown)
                                       : tr("%n squawks to be dealt with", nullptr, shown);
    if (urgent > 0)
        words += tr("; %n of them soon out of reach", nullptr, urgent);
    m_count->setText(words);
}

void SquawksPage::showRecord(RecordRef record)
{
    if (record.type != RecordType::Squawk)
        return;
    if (m_model->rowOf(record) < 0) {
        m_text->clear();
        m_severity->setCurrentIndex(0);
        m_all->setChecked(true);
    }
    if (const int row = m_model->rowOf(record); row >= 0) {
        choose(row);
        m_list->scrollTo(m_list->currentIndex(), QAbstractItemView::PositionAtCenter);
        showCurrent();
    }
}

void SquawksPage::startNew()
{
    m_capture->setFocus();
    m_capture->selectAll();
}

QWidget *SquawksPage::firstFocus()
{
    return m_model->rowCount() > 0 ? static_cast<QWidget *>(m_list) : m_capture;
}

void SquawksPage::recordsChanged(const ChangeNotice &notice)
{
    m_model->apply(notice);
    m_editor->apply(notice);
    if (!m_list->currentIndex().isValid())
        choose(0);
    showCurrent();
    updateWords();
}

void SquawksPage::answerChanged()
{
    m_model->applyAnswer();
    updateWords();
}

} // namespace lastrivet::ui
