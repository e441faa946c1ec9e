// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/LinesEditor.h"

#include "ui/widgets/Density.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/TallRows.h"
#include "ui/widgets/UnkeptHold.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QVBoxLayout>
#include <QVariant>

namespace lastrivet::ui {

namespace {

constexpr const char *recordProperty = "record";

/// While something is typed, what stood in the cell cannot be read beside it.
class WholeCell final : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    /// What is typed stays while its record changes, and does not go to another record.
    void setEditorData(QWidget *editor, const QModelIndex &index) const override
    {
        const auto *model = qobject_cast<const LinesModel *>(index.model());
        const QVariant record = model ? qlonglong(model->record()) : 0LL;
        if (isTypedIn(*editor) && editor->property(recordProperty) == record)
            return;
        editor->setProperty(recordProperty, record);
        QStyledItemDelegate::setEditorData(editor, index);
    }

    void updateEditorGeometry(QWidget *editor, const QStyleOptionViewItem &option,
                              const QModelIndex &) const override
    {
        editor->setGeometry(option.rect);
    }
};

/// From a cell that is typed, the Tab key leads to the next that can be, past those worked out.
class TypedTable final : public QTableView {
public:
    using QTableView::QTableView;

protected:
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override
    {
        const QModelIndex from = currentIndex();
        if ((action != MoveNext && action != MovePrevious) || !from.isValid())
            return QTableView::moveCursor(action, modifiers);
        const int columns = model()->columnCount();
        const int cells = model()->rowCount() * columns;
        const int step = action == MoveNext ? 1 : -1;
        for (int cell = from.row() * columns + from.column() + step; cell >= 0 && cell < cells;
             cell += step) {
            const QModelIndex next = model()->index(cell / columns, cell % columns);
            if (next.flags().testFlag(Qt::ItemIsEditable))
                return next;
        }
        return QTableView::moveCursor(action, modifiers);
    }
};

} // namespace

LinesEditor::LinesEditor(const QString &title, std::vector<LinesColumn> columns, QWidget *parent)
    : Unfinished(parent)
    , m_model(new LinesModel(columns, this))
    , m_view(new TypedTable(this))
    , m_remove(new QPushButton(tr("Take the line out"), this))
    , m_begun(new QLabel(this))
{
    buildView(columns);
    m_view->setAccessibleName(title);
    m_remove->setProperty("flat", true);
    auto *head = new QHBoxLayout;
    head->addWidget(heading(title, this), 1);
    head->addWidget(m_remove);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addLayout(head);
    layout->addWidget(m_view);
    layout->addWidget(m_begun);
    // As they stand: behind the table, Enter there would take out what was just typed.
    setTabOrder(m_remove, m_view);
    m_begun->setWordWrap(true);
    m_begun->hide();
    auto *key = new QShortcut(QKeySequence::Delete, m_view);
    key->setContext(Qt::WidgetShortcut);
    key->setWhatsThis(tr("Take the chosen line away"));
    connect(key, &QShortcut::activated, this, &LinesEditor::remove);
    connect(m_remove, &QPushButton::clicked, this, &LinesEditor::remove);
    connect(m_model, &LinesModel::rowsInserted, this, [this] { fit(); });
    connect(m_model, &LinesModel::rowsRemoved, this, [this] { fit(); });
    connect(m_model, &LinesModel::dataChanged, this, &LinesEditor::tellBegun);
    connect(m_view->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this] { fit(); });
    fit();
}

void LinesEditor::buildView(const std::vector<LinesColumn> &columns)
{
    m_view->setModel(m_model);
    m_view->setItemDelegate(new WholeCell(m_view));
    m_view->setShowGrid(true);
    m_view->setTabKeyNavigation(false);
    // Not by a click on the chosen cell: while Qt waits for its second one, keys go nowhere.
    m_view->setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::DoubleClicked |
                            QAbstractItemView::EditKeyPressed);
    m_view->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_view->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_view->verticalHeader()->hide();
    m_view->verticalHeader()->setDefaultSectionSize(rowHeight());
    m_view->horizontalHeader()->setHighlightSections(false);
    m_view->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    giveWordsRoom(columns);
}

/// Words get what the numbers leave.
void LinesEditor::giveWordsRoom(const std::vector<LinesColumn> &columns)
{
    constexpr std::size_t fewColumns = 3;
    constexpr int leastOfFew = 84;
    constexpr int leastOfMany = 64;
    constexpr int usual = 80;
    if (columns.empty() || columns.front().isNumber)
        return;
    const bool isMany = columns.size() > fewColumns;
    m_view->horizontalHeader()->setMinimumSectionSize(isMany ? leastOfMany : leastOfFew);
    // With less the area around scrolls.
    if (isMany)
        m_view->setMinimumWidth(int(columns.size()) * usual);
    for (std::size_t i = 1; i < columns.size(); ++i) {
        if (columns[i].isNumber)
            m_view->horizontalHeader()->setSectionResizeMode(int(i), QHeaderView::ResizeToContents);
    }
}

void LinesEditor::setLines(std::int64_t record, std::vector<QStringList> lines)
{
    m_model->setLines(record, std::move(lines));
    fit();
}

void LinesEditor::setEditable(bool isEditable)
{
    m_model->setEditable(isEditable);
    m_remove->setVisible(isEditable);
    fit();
}

void LinesEditor::fit()
{
    m_view->setFixedHeight(m_view->horizontalHeader()->sizeHint().height() +
                           m_model->rowCount() * rowHeight() + 2 * m_view->frameWidth() + 2);
    // The last one is the empty one.
    const int row = m_view->currentIndex().row();
    const int begun = int(m_model->begunLines().size());
    m_remove->setEnabled(row >= 0 && row < int(m_model->lines().size()) + begun);
    tellBegun();
}

/// A number that was not typed is none, and no zero.
void LinesEditor::tellBegun()
{
    QStringList lines;
    int number = int(m_model->lines().size());
    for (const LinesModel::Begun &begun : m_model->begunLines()) {
        ++number;
        const QString name = begun.name.isEmpty() ? tr("line %1").arg(number) : begun.name;
        lines.append(
            begun.missing.isEmpty()
                ? name
                : tr("%1 (missing: %2)").arg(name, begun.missing.join(QStringLiteral("; "))));
    }
    const QString words =
        lines.isEmpty()
            ? QString()
            : tr("Not on record, and counted nowhere: %1.").arg(lines.join(QStringLiteral(", ")));
    if (words == m_begun->text())
        return;
    m_begun->setText(words);
    m_begun->setVisible(!words.isEmpty());
    Q_EMIT begunChanged();
}

QString LinesEditor::heldBackWords() const
{
    return hasBegunLines() ? tr("A line that is typed here lacks something, and is not on record. "
                                "Type what is missing, take the line out, or do the same once more "
                                "to leave without it.")
                           : UnkeptHold::unkeptSentence();
}

void LinesEditor::takeKeyboard()
{
    const std::int64_t record = m_model->unkeptRecord();
    if (record != 0)
        Q_EMIT recordWanted(record);
    if (const QModelIndex cell = m_model->unkeptCell(); cell.isValid())
        m_view->setCurrentIndex(cell);
    m_view->setFocus();
    Unfinished::takeKeyboard();
}

void LinesEditor::remove()
{
    const int row = m_view->currentIndex().row();
    if (row >= 0 && row < int(m_model->lines().size()))
        Q_EMIT removeWanted(row);
    else if (row >= 0)
        m_model->takeOutBegun(row);
}

} // namespace lastrivet::ui
