// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Finder.h"

#include "core/readiness/Names.h"
#include "core/records/Description.h"
#include "core/records/Designation.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/ProjectView.h"
#include "ui/shell/Theme.h"
#include "ui/widgets/Overlay.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/RowListView.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int widest = 620;
constexpr std::size_t mostRecords = 12;
constexpr std::size_t mostOfKind = 12;
constexpr int fewestOfKind = 4;
// Pages and commands have no record; these ids tell them apart from records of type project.
constexpr std::int64_t firstPage = -1;
constexpr std::int64_t firstCommand = -1000;

/// The title of the closing of a record that every closing has in the same words; empty for others.
QString closingOf(RecordRef record, const Records &records)
{
    const auto titleFor = [&records](const auto *line) {
        const Closing *closing = line ? records.find(line->closing_id) : nullptr;
        return closing ? toQt(closing->title) : QString();
    };
    switch (record.type) {
    case RecordType::Check:
        return titleFor(records.find(Id<Check>{record.id}));
    case RecordType::HoldPoint:
        return titleFor(records.find(Id<HoldPoint>{record.id}));
    default:
        return {};
    }
}

/// The part that a part lies in, since both wings have a third rib.
QString partAround(RecordRef record, const Records &records)
{
    const bool isPart = record.type == RecordType::Component;
    const Component *part = isPart ? records.find(Id<Component>{record.id}) : nullptr;
    return part ? partName(records, part->parent_id) : QString();
}

ListRow rowOf(RecordRef record, const Records &records)
{
    ListRow row{record, inWords(readiness::named(records, record))};
    row.detail = closingOf(record, records) + partAround(record, records);
    row.figure = recordsTitle(record.type);
    row.icon = pageList()[std::size_t(pageFor(record.type))].icon;
    return row;
}

ListRow rowOf(const SearchHit &hit, const Records &records)
{
    ListRow row = rowOf(hit.record, records);
    // The row has one line for it, and a note may have several.
    const QString snippet =
        toQt(hit.snippet).split(QLatin1Char('\n'), Qt::SkipEmptyParts).join(QStringLiteral(" · "));
    const bool isFree = row.detail.isEmpty() || hit.record.type == RecordType::Component;
    if (isFree && !row.title.contains(snippet))
        row.detail = snippet;
    return row;
}

/// The newest live records of a type, the last one first.
std::vector<std::int64_t> newestOf(RecordType type, const Records &records)
{
    const auto &description = describe(type);
    const AnyTable &table = records.table(type);
    std::vector<std::int64_t> ids;
    for (const void *record = table.nextAny(0); record;
         record = table.nextAny(idOf(description, record))) {
        if (!isWithdrawn(description, record))
            ids.push_back(idOf(description, record));
    }
    std::reverse(ids.begin(), ids.end());
    ids.resize(std::min(ids.size(), mostOfKind));
    return ids;
}

/// The parts whose code is the first of the words, and whose name begins with the others.
std::vector<RecordRef> partsBegun(const QString &words, const Records &records)
{
    std::vector<RecordRef> found;
    for (const Component &part : records.components) {
        const QString code = toQt(part.code) + QLatin1Char(' ');
        const bool isCode = code.size() > 1 && words.startsWith(code, Qt::CaseInsensitive);
        if (isCode && !part.withdrawn_on &&
            toQt(part.name).startsWith(words.mid(code.size()), Qt::CaseInsensitive))
            found.push_back({RecordType::Component, part.id.value()});
    }
    return found;
}

/// The record with that code or number, typed alone or behind its kind ("squawk 12"): it is what is
/// meant, however many others begin with the same characters.
std::vector<RecordRef> called(const QString &words, const Records &records)
{
    const QStringList typed = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    std::vector<RecordRef> found = partsBegun(typed.join(QLatin1Char(' ')), records);
    if (typed.isEmpty() || typed.size() > 2)
        return found;
    const auto isSame = [](const QString &one, const QString &other) {
        return one.compare(other, Qt::CaseInsensitive) == 0;
    };
    const auto look = [&](RecordType type, const auto &table, auto name) {
        const std::string_view kind = noun(type);
        if (typed.size() == 2 && !isSame(typed.front(), toQt(kind)) &&
            !isSame(typed.front(), inWords({kind, {}})))
            return;
        for (const auto &record : table) {
            if (!record.withdrawn_on && isSame(toQt(record.*name), typed.back()))
                found.push_back({type, record.id.value()});
        }
    };
    look(RecordType::Component, records.components, &Component::code);
    look(RecordType::Squawk, records.squawks, &Squawk::number);
    look(RecordType::Deviation, records.deviations, &Deviation::number);
    look(RecordType::Bulletin, records.bulletins, &Bulletin::number);
    return found;
}

/// Whether the typed words seem to mean the row's record: its name begins with them, or, since
/// names of parts often begin with their side, any word in the name of a part does.
bool beginsName(const QString &words, const ListRow &row)
{
    return row.record.id > 0 &&
           (row.title.startsWith(words, Qt::CaseInsensitive) ||
            (row.record.type == RecordType::Component &&
             row.title.contains(QLatin1Char(' ') + words, Qt::CaseInsensitive)));
}

} // namespace

Finder::Finder(const Theme &theme, QWidget *parent)
    : QFrame(parent)
    , m_list(new RowListView(theme, tr("Found"), this))
    , m_line(new QLineEdit(this))
{
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    m_line->setPlaceholderText(tr("Find a record, a page, a command"));
    m_line->setAccessibleName(tr("Find"));
    m_line->installEventFilter(this);
    m_list->setFocusPolicy(Qt::NoFocus);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(8, 8, 8, 8);
    layout->addWidget(m_line);
    layout->addWidget(m_list);
    connect(m_line, &QLineEdit::textChanged, this, &Finder::find);
    connect(m_list, &RowListView::chosen, this, [this] { choose(m_list->currentIndex().row()); });
    keepPlaced(*this, [this] { place(); });
    hide();
}

void Finder::open(ProjectView &view, std::vector<Command> commands)
{
    m_view = &view;
    m_commands = std::move(commands);
    if (isHidden())
        m_before = window()->focusWidget();
    m_line->clear();
    find();
    show();
    raise();
    m_line->setFocus();
}

bool Finder::fits(const QString &words) const
{
    const auto wanted = m_line->text().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    return !wanted.isEmpty() && std::ranges::all_of(wanted, [&](const QString &word) {
        return words.contains(word, Qt::CaseInsensitive);
    });
}

void Finder::addPages(std::vector<ListRow> &rows) const
{
    for (const PageDescription &page : pageList()) {
        if (!fits(page.name()) && !m_line->text().isEmpty())
            continue;
        ListRow row{{RecordType::Project, firstPage - std::int64_t(page.id)}, page.name()};
        row.figure = tr("page, Ctrl+%1").arg(page.key());
        row.icon = page.icon;
        rows.push_back(std::move(row));
    }
}

void Finder::addCommands(std::vector<ListRow> &rows) const
{
    for (std::size_t i = 0; i < m_commands.size(); ++i) {
        const Command &command = m_commands[i];
        if (!fits(command.menu + QLatin1Char(' ') + command.words))
            continue;
        ListRow row{{RecordType::Project, firstCommand - std::int64_t(i)}, command.words};
        row.figure = command.keys.isEmpty() ? command.menu : command.keys;
        row.icon = QStringLiteral("actions/edit");
        rows.push_back(std::move(row));
    }
}

/// Where the person was last, while nothing is typed yet.
void Finder::addVisited(std::vector<ListRow> &rows) const
{
    if (!m_line->text().isEmpty())
        return;
    const auto records = m_view->session().records();
    for (const RecordRef &visited : m_view->visited()) {
        if (!records->find(visited.type, visited.id))
            continue;
        rows.push_back(rowOf(visited, *records));
    }
}

void Finder::addRecords(std::vector<ListRow> &rows) const
{
    const QString words = m_line->text().trimmed();
    if (words.isEmpty())
        return;
    Session &session = m_view->session();
    auto hits =
        session.read([&] { return session.project().search(toStd(words), mostRecords + 1); });
    if (!hits) {
        rows.push_back(
            {{RecordType::Project, 0}, tr("The records could not be searched just now.")});
        return;
    }
    const bool areMore = hits->size() > mostRecords;
    if (areMore)
        hits->pop_back();
    const auto records = session.records();
    const auto first = called(words, *records);
    for (const RecordRef &record : first)
        rows.push_back(rowOf({record, {}, {}}, *records));
    for (const SearchHit &hit : *hits) {
        if (std::ranges::find(first, hit.record) == first.end())
            rows.push_back(rowOf(hit, *records));
    }
    if (areMore)
        rows.push_back({{RecordType::Project, 0},
                        tr("More records have these words; one more word finds fewer.")});
}

/// The newest records of a kind that is typed by its name, as "deviation", since their own texts
/// need not contain it; further words are searched for in their names.
void Finder::addKinds(std::vector<ListRow> &rows) const
{
    const auto words = m_line->text().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    if (words.isEmpty() || words.front().size() < fewestOfKind)
        return;
    const auto records = m_view->session().records();
    for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i) {
        const auto type = RecordType(i);
        if (!recordsTitle(type).startsWith(words.front(), Qt::CaseInsensitive))
            continue;
        for (const std::int64_t id : newestOf(type, *records)) {
            ListRow row = rowOf(RecordRef{type, id}, *records);
            const bool isThere = std::ranges::any_of(
                rows, [&](const ListRow &other) { return other.record == row.record; });
            const bool isMeant =
                std::all_of(words.begin() + 1, words.end(), [&row](const QString &word) {
                    return row.title.contains(word, Qt::CaseInsensitive);
                });
            if (isMeant && !isThere)
                rows.push_back(std::move(row));
        }
    }
}

void Finder::find()
{
    std::vector<ListRow> rows;
    addVisited(rows);
    addPages(rows);
    std::vector<ListRow> records;
    addRecords(records);
    const bool isName = std::ranges::any_of(
        records, [this](const ListRow &row) { return beginsName(m_line->text().trimmed(), row); });
    if (!isName)
        addCommands(rows);
    rows.insert(rows.end(), records.begin(), records.end());
    if (isName)
        addCommands(rows);
    addKinds(rows);
    if (rows.empty())
        rows.push_back({{RecordType::Project, 0}, tr("Nothing has all of these words.")});
    m_list->setRows(std::move(rows));
    point(0);
    place();
}

void Finder::place()
{
    const QSize room = parentWidget()->size();
    setFixedWidth(std::min(widest, room.width() - 32));
    setFixedHeight(std::min(m_line->sizeHint().height() + m_list->sizeHint().height() + 32,
                            room.height() - 80));
    move((room.width() - width()) / 2, 48);
}

/// The focus stays in the line, so that the line tells a screen reader which row Enter would
/// choose.
void Finder::point(int row)
{
    const QModelIndex index = m_list->model()->index(row, 0);
    m_list->setCurrentIndex(index);
    m_line->setAccessibleDescription(index.data(Qt::AccessibleTextRole).toString());
}

int Finder::rowsOfPage() const
{
    const int height = m_list->visualRect(m_list->model()->index(0, 0)).height();
    return std::max(1, height > 0 ? m_list->viewport()->height() / height - 1 : 1);
}

void Finder::choose(int row)
{
    if (row < 0)
        return;
    const RecordRef record = m_list->rows().row(row).record;
    if (record.id == 0)
        return;
    ProjectView *view = m_view;
    giveFocusBack();
    hide();
    if (record.id > 0) {
        view->goTo(record);
    } else if (record.id <= firstCommand) {
        // A copy, since one of the commands opens this finder again and replaces them.
        const auto act = m_commands[std::size_t(firstCommand - record.id)].act;
        act();
    } else {
        view->open(PageId(firstPage - record.id));
    }
}

/// Gives the focus back, since a command may be about what is selected there.
void Finder::giveFocusBack()
{
    if (m_before && m_before->isVisible())
        m_before->setFocus();
    else
        m_view->focusPage();
}

bool Finder::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::FocusOut && isVisible()) {
        hide();
        return false;
    }
    if (event->type() != QEvent::KeyPress)
        return QFrame::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent *>(event)->key();
    const int row = m_list->currentIndex().row();
    // The Tab key would lead away, to what lies below the finder.
    const int step = key == Qt::Key_Down || key == Qt::Key_Tab     ? 1
                     : key == Qt::Key_Up || key == Qt::Key_Backtab ? -1
                     : key == Qt::Key_PageDown                     ? rowsOfPage()
                     : key == Qt::Key_PageUp                       ? -rowsOfPage()
                                                                   : 0;
    if (step != 0) {
        point(std::clamp(row + step, 0, std::max(0, m_list->rows().rowCount() - 1)));
    } else if (key == Qt::Key_Return || key == Qt::Key_Enter) {
        choose(row);
    } else if (key == Qt::Key_Escape) {
        giveFocusBack();
        hide();
    } else {
        return false;
    }
    return true;
}

} // namespace lastrivet::ui
