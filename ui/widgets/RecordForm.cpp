// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RecordForm.h"

#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/FieldEditor.h"
#include "ui/widgets/RecordNames.h"

#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// Letters of a line that can still be read.
constexpr int leastLine = 16;
constexpr int roomBehindLabel = 12;

} // namespace

RecordForm::RecordForm(Session &session, RecordType type, const std::vector<Row> &rows,
                       QWidget *parent)
    : Unfinished(parent)
    , m_session(session)
    , m_type(type)
{
    auto *layout = new QFormLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    // The labels hold the room between: rows that wrap are chosen by Qt without it, and the fields
    // beside the longest label would reach beyond the form.
    layout->setHorizontalSpacing(0);
    layout->setVerticalSpacing(6);
    layout->setRowWrapPolicy(QFormLayout::WrapLongRows);
    layout->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    layout->setLabelAlignment(Qt::AlignLeft);
    for (const Row &row : rows)
        addRow(layout, row);
    setEnabled(false);
}

void RecordForm::addRow(QFormLayout *layout, const Row &row)
{
    const auto &description = describe(m_type);
    const Field *field = description.find(row.field);
    auto *editor = makeFieldEditor(m_session, *field, description.defaults, row.isLong, this);
    const QString title = row.label.isEmpty() ? fieldTitle(*field) : row.label;
    auto *label = new QLabel(title, this);
    label->setBuddy(editor);
    label->setMargin(4);
    label->setContentsMargins(0, 0, roomBehindLabel, 0);
    QWidget *input = editor->focusProxy() ? editor->focusProxy() : editor;
    input->setAccessibleName(title);
    // Where there is no room for this beside the longest label, the line goes below its own.
    if (qobject_cast<QLineEdit *>(input))
        input->setMinimumWidth(fontMetrics().averageCharWidth() * leastLine);
    layout->addRow(label, editor);
    m_lines.push_back({field, editor});
    connect(
        editor, &FieldEditor::committed, this,
        [this, line = m_lines.back()](const FieldEditor::Assign &assign) { commit(line, assign); });
    connect(editor, &FieldEditor::refused, &m_session,
            qOverload<const QString &>(&Session::complain));
}

void RecordForm::commit(const Line &line, const std::function<bool(void *)> &assign)
{
    if (m_id == 0)
        return;
    const RecordRef record{m_type, m_id};
    const QString name = shortName(*m_session.records(), record);
    const QString label = tr("%1: %2 changed").arg(name, fieldWords(*line.field));
    bool isAssigned = true;
    QString wrong;
    const auto outcome = m_session.attempt(label, [&](Edit &edit) {
        const auto changed = describe(record.type).copy(edit.existing(record));
        isAssigned = assign(changed.get());
        if (isAssigned && m_follow)
            m_follow(edit, line.field->name, changed.get());
        if (isAssigned && m_check)
            wrong = m_check(changed.get());
        if (isAssigned && wrong.isEmpty())
            wrong = whyAhead(*line.field, changed.get());
        if (isAssigned && wrong.isEmpty())
            edit.putAny(record.type, changed.get());
    });
    if (!isAssigned)
        wrong = tr("%1 cannot be empty.").arg(fieldTitle(*line.field));
    if (!wrong.isEmpty())
        m_session.complain(wrong);
    if (wrong.isEmpty() && outcome == Session::Outcome::Made)
        return;
    const void *known = m_session.records()->find(record.type, record.id);
    const void *kept = known ? known : describe(m_type).defaults;
    if (known && wrong.isEmpty() && outcome == Session::Outcome::NotSaved)
        line.editor->holdOn(kept);
    else
        line.editor->takeBack(kept);
}

QString RecordForm::whyAhead(const Field &field, const void *record) const
{
    if (std::ranges::find(m_happened, field.name) == m_happened.end())
        return {};
    const Scalar value = field.value(record);
    const auto *day = std::get_if<Moment>(&value);
    return day && after(*day, m_session.now())
               ? tr("%1 lies ahead: only what has happened is recorded.").arg(dateText(*day))
               : QString();
}

void RecordForm::show(std::int64_t id)
{
    if (id != m_id)
        settle();
    // Saving may have made the page call this already.
    const bool isOther = id != m_id;
    if (isOther)
        setAside();
    m_id = id;
    refresh(isOther);
    if (isOther)
        takeUp();
}

const void *RecordForm::shownRecord() const
{
    return m_id ? m_session.records()->find(m_type, m_id) : nullptr;
}

bool RecordForm::isBeingTyped() const
{
    return shownRecord() && std::ranges::any_of(m_lines, [](const Line &line) {
               return line.editor->isBeingTyped();
           });
}

/// What could not be saved is shown again with its record.
void RecordForm::setAside()
{
    if (!shownRecord())
        return;
    for (const Line &line : m_lines) {
        if (line.editor->isBeingTyped())
            m_waiting[m_id][line.editor] = line.editor->typed();
    }
}

void RecordForm::takeUp()
{
    const auto waiting = m_waiting.extract(m_id);
    if (waiting.empty() || !shownRecord())
        return;
    for (const auto &[editor, words] : waiting.mapped())
        editor->typeAgain(words);
}

bool RecordForm::isBegun() const
{
    return !m_waiting.empty() || isBeingTyped();
}

QStringList RecordForm::contents() const
{
    QStringList all;
    for (const auto &[id, typed] : m_waiting) {
        all.append(QString::number(id));
        for (const auto &[editor, words] : typed)
            all.append(words);
    }
    if (!isBeingTyped())
        return all;
    all.append(QString::number(m_id));
    for (const Line &line : m_lines) {
        if (line.editor->isBeingTyped())
            all.append(line.editor->typed());
    }
    return all;
}

QString RecordForm::heldBackWords() const
{
    return tr("What was typed here is not on record, as it could not be kept. Leave the field once "
              "more when that is possible, or do the same once more to leave without it.");
}

void RecordForm::takeKeyboard()
{
    if (!isBeingTyped() && !m_waiting.empty()) {
        const std::int64_t id = m_waiting.begin()->first;
        m_session.goTo({m_type, id});
        // Such a record may be shown on a page with a form of its own.
        if (m_id != id)
            return;
    }
    const auto typed =
        std::ranges::find_if(m_lines, [](const Line &line) { return line.editor->isBeingTyped(); });
    if (typed != m_lines.end())
        typed->editor->setFocus();
    Unfinished::takeKeyboard();
}

void RecordForm::refresh(bool isOther)
{
    const void *record = shownRecord();
    setEnabled(record && !m_session.isReadOnly());
    const void *shown = record ? record : describe(m_type).defaults;
    for (const Line &line : m_lines) {
        if (isOther || !line.editor->isBeingTyped())
            line.editor->show(shown);
    }
}

void RecordForm::apply(const ChangeNotice &notice)
{
    std::erase_if(m_waiting, [&](const auto &waiting) {
        const void *known = notice.after->find(m_type, waiting.first);
        return !known || isWithdrawn(describe(m_type), known);
    });
    if (m_id == 0)
        return;
    // Records that it names may go by another name now.
    const auto isShown = [this](RecordRef touched) {
        return touched == RecordRef{m_type, m_id} ||
               std::ranges::any_of(m_lines, [touched](const Line &line) {
                   return line.field->target == touched.type;
               });
    };
    if (std::ranges::any_of(notice.touched, isShown))
        refresh(false);
}

void RecordForm::settle()
{
    for (const Line &line : m_lines)
        line.editor->settle();
}

void RecordForm::edit(std::string_view field)
{
    const auto line = std::ranges::find_if(
        m_lines, [&](const Line &known) { return known.field->name == field; });
    if (line != m_lines.end())
        line->editor->setFocus(Qt::ShortcutFocusReason);
}

void RecordForm::hideEvent(QHideEvent *event)
{
    settle();
    Unfinished::hideEvent(event);
}

} // namespace lastrivet::ui
