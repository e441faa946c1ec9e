// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/BenchPartChooser.h"

#include "core/today/AtPart.h"
#include "ui/bench/BenchRows.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RowListView.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr std::size_t partsOffered = 8;

} // namespace

BenchPartChooser::BenchPartChooser(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_line(new QLineEdit(this))
    , m_list(new RowListView(session.theme(), tr("Parts"), this))
{
    m_line->setPlaceholderText(tr("Code or name of the part"));
    m_line->setAccessibleName(tr("Part"));
    m_line->installEventFilter(this);
    m_list->setTouch();
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(12);
    layout->addWidget(heading(tr("Which part?"), this));
    layout->addWidget(m_line);
    layout->addWidget(m_list);
    layout->addStretch(1);
    connect(m_line, &QLineEdit::textChanged, this, &BenchPartChooser::fill);
    connect(m_line, &QLineEdit::returnPressed, this, [this] {
        if (m_list->rows().rowCount() > 0)
            Q_EMIT chosen(Id<Component>{m_list->rows().row(0).record.id});
    });
    connect(m_list, &RowListView::chosen, this,
            [this](RecordRef part) { Q_EMIT chosen(Id<Component>{part.id}); });
}

void BenchPartChooser::begin()
{
    m_line->clear();
    fill();
    m_line->setFocus();
}

Id<Component> BenchPartChooser::usualPart() const
{
    const auto records = m_session.records();
    const auto timer = m_session.timer();
    if (timer && records->findLive(timer->component_id))
        return timer->component_id;
    const auto last = today::workedOnLast(*records, 1);
    return last.empty() ? Id<Component>{} : last.front();
}

void BenchPartChooser::recordsChanged()
{
    if (isVisible())
        fill();
}

void BenchPartChooser::fill()
{
    const auto records = m_session.records();
    const auto timer = m_session.timer();
    std::vector<Id<Component>> parts;
    if (m_line->text().trimmed().isEmpty()) {
        parts = today::workedOnLast(*records, partsOffered);
        // A young project has little work; its first parts fill the list up.
        for (const Component &part : records->components) {
            if (parts.size() >= partsOffered)
                break;
            if (!part.withdrawn_on && std::ranges::find(parts, part.id) == parts.end())
                parts.push_back(part.id);
        }
    } else {
        parts = m_session.partFinder().matches(toStd(m_line->text()), partsOffered);
    }
    m_list->setRows(benchPartRows(parts, *records, timer ? timer->component_id : Id<Component>{}));
}

bool BenchPartChooser::eventFilter(QObject *watched, QEvent *event)
{
    const bool isDown =
        event->type() == QEvent::KeyPress && static_cast<QKeyEvent *>(event)->key() == Qt::Key_Down;
    if (watched == m_line && isDown) {
        m_list->setFocus(Qt::TabFocusReason);
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void BenchPartChooser::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT left();
    else
        QWidget::keyPressEvent(event);
}

} // namespace lastrivet::ui
