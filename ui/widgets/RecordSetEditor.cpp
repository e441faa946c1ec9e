// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RecordSetEditor.h"

#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordLine.h"
#include "ui/widgets/RecordNames.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

RecordSetEditor::RecordSetEditor(Session &session, const Field &field, QWidget *parent)
    : FieldEditor(parent)
    , m_session(session)
    , m_field(field)
    , m_names(new QVBoxLayout)
    , m_line(new RecordLine(session, *field.target, this))
{
    m_names->setSpacing(0);
    m_line->setPlaceholderText(tr("add one more"));
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    layout->addLayout(m_names);
    layout->addWidget(m_line);
    setFocusProxy(m_line);
    connect(m_line, &RecordLine::chosenByPerson, this, [this](qint64 id) { add(id); });
}

RecordSetEditor::~RecordSetEditor()
{
    m_line->disconnect(this);
}

bool RecordSetEditor::isBeingTyped() const
{
    return m_line->isBeingTyped();
}

QString RecordSetEditor::typed() const
{
    return m_line->text();
}

void RecordSetEditor::typeAgain(const QString &words)
{
    m_line->typeAgain(words);
}

void RecordSetEditor::settle()
{
    m_line->settle();
}

void RecordSetEditor::show(const void *record)
{
    m_ids.clear();
    for (std::size_t i = 0; i < m_field.size(record); ++i)
        m_ids.push_back(std::get<std::int64_t>(m_field.item(record, i)));
    m_line->setChosen(0);
    fill();
}

void RecordSetEditor::fill()
{
    while (QLayoutItem *item = m_names->takeAt(0)) {
        // Deleted only when its own button has returned; until then the next name stands there.
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    for (const std::int64_t id : m_ids) {
        auto *row = new QWidget(this);
        auto *name = new QLabel(shortName(*m_session.records(), {*m_field.target, id}), row);
        name->setWordWrap(true);
        auto *button = flatButton(tr("Remove"), row);
        button->setAccessibleName(tr("Remove %1").arg(name->text()));
        auto *layout = new QHBoxLayout(row);
        layout->setContentsMargins(6, 0, 0, 0);
        layout->addWidget(name, 1);
        layout->addWidget(button);
        m_names->addWidget(row);
        connect(button, &QPushButton::clicked, this, [this, id] { remove(id); });
    }
}

void RecordSetEditor::add(std::int64_t id)
{
    if (id == 0 || std::ranges::find(m_ids, id) != m_ids.end())
        return;
    auto ids = m_ids;
    ids.push_back(id);
    commit(std::move(ids));
}

void RecordSetEditor::remove(std::int64_t id)
{
    auto ids = m_ids;
    std::erase(ids, id);
    commit(std::move(ids));
}

void RecordSetEditor::commit(std::vector<std::int64_t> ids)
{
    std::ranges::sort(ids);
    Q_EMIT committed([&field = m_field, ids = std::move(ids)](void *record) {
        field.clear(record);
        return std::ranges::all_of(ids,
                                   [&](std::int64_t id) { return field.add(record, Scalar{id}); });
    });
}

} // namespace lastrivet::ui
