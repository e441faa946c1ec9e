// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/FindingRows.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/Marks.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QVBoxLayout>

namespace lastrivet::ui {

FindingRows::FindingRows(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_layout(new QVBoxLayout(this))
{
    m_layout->setContentsMargins(0, 0, 0, 0);
    m_layout->setSpacing(Theme::space);
}

void FindingRows::start(std::vector<Id<Component>> parts)
{
    m_parts = std::move(parts);
    m_rows.clear();
    clearLayout(*m_layout);
    addRow();
}

void FindingRows::addRow()
{
    const int number = int(m_rows.size()) + 1;
    Row row{new QComboBox(this), new QLineEdit(this), new QComboBox(this)};
    for (const auto id : m_parts) {
        if (const Component *part = m_session.records()->find(id))
            row.part->addItem(toQt(part->name), qlonglong(id.value()));
    }
    row.part->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    row.part->setMinimumContentsLength(12);
    row.title->setPlaceholderText(tr("what was found"));
    for (std::size_t i = 0; i < Words<Severity>::list.size(); ++i)
        row.severity->addItem(m_session.theme().icon(severityIcon(Severity(i))),
                              severityWord(Severity(i)));
    row.severity->setCurrentIndex(int(Severity::Workmanship));
    row.part->setAccessibleName(tr("Part of finding %1").arg(number));
    row.title->setAccessibleName(tr("Finding %1").arg(number));
    row.severity->setAccessibleName(tr("Severity of finding %1").arg(number));
    auto *line = new QHBoxLayout;
    line->addWidget(row.part, 2);
    line->addWidget(row.title, 4);
    line->addWidget(row.severity, 1);
    m_layout->addLayout(line);
    m_rows.push_back(row);
    connect(row.title, &QLineEdit::textEdited, this, [this, number] {
        if (number == int(m_rows.size()))
            addRow();
    });
}

std::vector<acts::Finding> FindingRows::findings() const
{
    std::vector<acts::Finding> found;
    for (const Row &row : m_rows) {
        const std::string title = toStd(row.title->text());
        if (title.empty())
            continue;
        acts::Finding finding;
        finding.title = title;
        finding.component_id = Id<Component>{row.part->currentData().toLongLong()};
        finding.severity = Severity(row.severity->currentIndex());
        finding.number = std::to_string(found.size() + 1);
        found.push_back(std::move(finding));
    }
    return found;
}

} // namespace lastrivet::ui
