// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/NewClosingForm.h"

#include "core/project/acts/ClosingUp.h"
#include "core/project/acts/PartActs.h"
#include "core/records/PartPlace.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QCheckBox>
#include <QComboBox>
#include <QCompleter>
#include <QLineEdit>
#include <QListWidget>

#include <algorithm>
#include <map>

namespace lastrivet::ui {

namespace {

constexpr int listHeight = 110;
/// Between a part's code and its name.
const auto codeEnd = QStringLiteral("  ");

std::vector<const Component *> childrenOf(const Records &records, Id<Component> parent)
{
    std::vector<const Component *> children;
    for (const Id<Component> part : acts::partsInside(records, parent))
        children.push_back(records.find(part));
    return children;
}

/// The live parts by the part that they lie in, in their order there.
using PartsByParent = std::map<Id<Component>, std::vector<const Component *>>;

PartsByParent partsByParent(const Records &records)
{
    PartsByParent inside;
    for (const Component &part : records.components) {
        if (!part.withdrawn_on)
            inside[part.parent_id].push_back(&part);
    }
    for (auto &[parent, parts] : inside)
        std::ranges::sort(parts, {}, [](const Component *part) { return partPlace(*part); });
    return inside;
}

QString indented(const Component &part, int depth)
{
    const QString name =
        part.code.empty() ? toQt(part.name) : toQt(part.code) + codeEnd + toQt(part.name);
    return QString(3 * depth, QLatin1Char(' ')) + name;
}

/// By its line in the list, or by the code or the name in it; what is typed is not indented.
bool isCalled(const QString &line, const QString &typed)
{
    const QString whole = line.trimmed();
    return whole.compare(typed, Qt::CaseInsensitive) == 0 ||
           whole.startsWith(typed + codeEnd, Qt::CaseInsensitive) ||
           whole.endsWith(codeEnd + typed, Qt::CaseInsensitive);
}

void addInner(QComboBox &list, const PartsByParent &inside, Id<Component> parent, int depth)
{
    const auto parts = inside.find(parent);
    if (parts == inside.end())
        return;
    for (const Component *part : parts->second) {
        list.addItem(indented(*part, depth), qlonglong(part->id.value()));
        addInner(list, inside, part->id, depth + 1);
    }
}

void addCheckable(QListWidget &list, const QString &words, qint64 data, bool isChecked)
{
    auto *item = new QListWidgetItem(words, &list);
    item->setFlags(item->flags() | Qt::ItemIsUserCheckable);
    item->setCheckState(isChecked ? Qt::Checked : Qt::Unchecked);
    item->setData(Qt::UserRole, data);
}

/// Among thousands of parts one is found by any letters of its line.
void makeTyped(QComboBox &parts)
{
    parts.setEditable(true);
    parts.setInsertPolicy(QComboBox::NoInsert);
    parts.completer()->setFilterMode(Qt::MatchContains);
    parts.completer()->setCompletionMode(QCompleter::PopupCompletion);
}

Id<Component> addPart(Edit &edit, const QString &name)
{
    Component part;
    part.name = toStd(name);
    part.kind = ComponentKind::Assembly;
    return edit.put(std::move(part));
}

} // namespace

NewClosingForm::NewClosingForm(Session &session, QWidget *parent)
    : ActForm(tr("Make the closing"), parent)
    , m_session(session)
    , m_part(new QComboBox(this))
    , m_title(new QLineEdit(this))
    , m_encloses(new QListWidget(this))
    , m_method(new QLineEdit(this))
    , m_madeBy(new QComboBox(this))
    , m_permanent(new QCheckBox(tr("opening it again would mean drilling, cutting, or breaking "
                                   "glue or fabric"),
                                this))
    , m_aircraft(new QCheckBox(tr("this is the end of the whole aircraft, before the final "
                                  "inspection and first flight"),
                               this))
    , m_lists(new QListWidget(this))
{
    makeTyped(*m_part);
    m_part->lineEdit()->setPlaceholderText(tr("of the tree, or a new one"));
    setTitle(tr("A closing is the act after which a region can no longer be seen or reached."));
    m_madeBy->addItems({tr("the builder"), tr("an earlier builder"), tr("the factory")});
    m_encloses->setMaximumHeight(listHeight);
    m_encloses->setProperty("checkLines", true);
    m_lists->setProperty("checkLines", true);
    m_lists->setMaximumHeight(listHeight);
    addField(tr("Part"), m_part);
    addField(tr("Title"), m_title);
    addField(tr("Hides"), m_encloses);
    addField(tr("How"), m_method);
    addField(tr("Closed by"), m_madeBy);
    addWide(m_permanent);
    addWide(m_aircraft);
    addField(tr("Inspector's lists"), m_lists);
    m_method->setPlaceholderText(tr("riveted, bonded, covered …"));
    connect(m_part, &QComboBox::currentTextChanged, this, &NewClosingForm::fillEnclosed);
    // The next part may have the same name.
    connect(m_part, &QComboBox::currentIndexChanged, this, &NewClosingForm::fillEnclosed);
    connect(m_encloses, &QListWidget::itemChanged, this, &NewClosingForm::fillLists);
    connect(m_lists, &QListWidget::itemChanged, this, &NewClosingForm::noteTick);
}

void NewClosingForm::start(Id<Component> part)
{
    m_unticked.clear();
    fillParts();
    m_part->setCurrentIndex(std::max(0, m_part->findData(qlonglong(part.value()))));
    // Undo is about what is on record from here on, not about the words of an earlier form.
    m_title->setText({});
    m_method->setText({});
    m_madeBy->setCurrentIndex(0);
    m_permanent->setChecked(true);
    m_aircraft->setChecked(false);
    fillEnclosed();
    hint({});
    noteFields();
    m_part->setFocus();
    m_part->lineEdit()->selectAll();
}

void NewClosingForm::fillParts()
{
    const QSignalBlocker quiet(m_part);
    m_part->clear();
    const auto records = m_session.records();
    addInner(*m_part, partsByParent(*records), {}, 0);
}

std::vector<Id<Component>> NewClosingForm::partsCalled(const QString &typed) const
{
    std::vector<Id<Component>> parts;
    for (int row = 0; row < m_part->count() && !typed.isEmpty(); ++row) {
        if (isCalled(m_part->itemText(row), typed))
            parts.emplace_back(m_part->itemData(row).toLongLong());
    }
    return parts;
}

Id<Component> NewClosingForm::part() const
{
    // Two parts may have the same name: the one that was chosen counts.
    const int chosen = m_part->currentIndex();
    if (chosen >= 0 && m_part->itemText(chosen) == m_part->currentText())
        return Id<Component>{m_part->itemData(chosen).toLongLong()};
    const auto parts = partsCalled(m_part->currentText().trimmed());
    return parts.size() == 1 ? parts.front() : Id<Component>{};
}

QString NewClosingForm::newPart() const
{
    return part() ? QString() : m_part->currentText().trimmed();
}

void NewClosingForm::fillEnclosed()
{
    const auto records = m_session.records();
    {
        const QSignalBlocker quiet(m_encloses);
        m_encloses->clear();
        // A part that is not there yet hides itself.
        if (const Component *itself = records->find(part())) {
            const auto inside = childrenOf(*records, part());
            const QString name = indented(*itself, 0);
            addCheckable(*m_encloses, inside.empty() ? name : tr("%1, all of it").arg(name),
                         itself->id.value(), inside.empty());
            for (const Component *inner : inside)
                addCheckable(*m_encloses, indented(*inner, 0), inner->id.value(), true);
        }
        tellNewPart();
    }
    fillLists();
}

/// A name that was mistyped makes a part; whoever types it sees that before.
void NewClosingForm::tellNewPart()
{
    const QString name = newPart();
    if (name.isEmpty() || !partsCalled(name).empty())
        return;
    auto *line = new QListWidgetItem(tr("“%1” will be a new part").arg(name), m_encloses);
    line->setFlags(Qt::NoItemFlags);
}

void NewClosingForm::fillLists()
{
    const auto records = m_session.records();
    const auto &profile = m_session.project().profile();
    const QSignalBlocker quiet(m_lists);
    m_lists->clear();
    for (const auto *list : acts::fittingChecklists(*records, profile, typed())) {
        const qint64 place = list - profile.checklists.data();
        addCheckable(*m_lists,
                     tr("%1 (%n lines)", nullptr, int(list->items.size())).arg(toQt(list->title)),
                     place, !m_unticked.contains(place));
    }
}

void NewClosingForm::takeUpRules()
{
    const bool wasBegun = isBegun();
    m_unticked.clear();
    fillLists();
    // Nobody began it by lists that came on their own.
    if (!wasBegun)
        noteFields();
}

void NewClosingForm::noteTick(const QListWidgetItem *list)
{
    const qint64 place = list->data(Qt::UserRole).toLongLong();
    if (list->checkState() == Qt::Checked)
        m_unticked.erase(place);
    else
        m_unticked.insert(place);
}

Closing NewClosingForm::typed() const
{
    Closing closing;
    closing.component_id = part();
    closing.title = toStd(m_title->text());
    closing.method = toStd(m_method->text());
    closing.permanent = m_permanent->isChecked();
    closing.made_by = MadeBy(m_madeBy->currentIndex());
    closing.scope = m_aircraft->isChecked() ? ClosingScope::Aircraft : ClosingScope::Region;
    for (int row = 0; row < m_encloses->count(); ++row) {
        const auto *item = m_encloses->item(row);
        if (item->checkState() == Qt::Checked)
            closing.encloses.emplace_back(item->data(Qt::UserRole).toLongLong());
    }
    std::ranges::sort(closing.encloses);
    return closing;
}

bool NewClosingForm::perform()
{
    const Closing closing = typed();
    if ((!closing.component_id && newPart().isEmpty()) || closing.title.empty()) {
        hint(tr("It needs a part, and a title such as “Left wing, upper skin”."));
        m_title->setFocus();
        return false;
    }
    if (!closing.component_id && !partsCalled(newPart()).empty()) {
        hint(tr("Several parts are called “%1”: choose one from the list.").arg(newPart()));
        m_part->setFocus();
        return false;
    }
    if (closing.component_id && closing.scope == ClosingScope::Region && closing.encloses.empty()) {
        hint(tr("It hides nothing yet: tick what can no longer be reached behind it."));
        m_encloses->setFocus();
        return false;
    }
    return make(closing);
}

bool NewClosingForm::make(Closing closing)
{
    std::vector<const Profile::Checklist *> lists;
    const auto &profile = m_session.project().profile();
    for (int row = 0; row < m_lists->count(); ++row) {
        const auto *item = m_lists->item(row);
        if (item->checkState() == Qt::Checked)
            lists.push_back(&profile.checklists[item->data(Qt::UserRole).toULongLong()]);
    }
    Id<Closing> id;
    const bool isMade =
        m_session.change(tr("New closing: %1").arg(toQt(closing.title)), [&](Edit &edit) {
            if (!closing.component_id)
                closing.component_id = addPart(edit, newPart());
            id = acts::addClosing(edit, closing, lists);
        });
    if (isMade)
        Q_EMIT made(id);
    return isMade;
}

} // namespace lastrivet::ui
