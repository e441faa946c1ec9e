// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/RowStore.h"

#include "core/base/Error.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/IntakeWords.h"

#include <QScopeGuard>
#include <QTimer>

#include <algorithm>
#include <utility>

namespace lastrivet::ui {

namespace {

/// Rows are stored between two looks at keyboard and mouse: so many are quick enough.
constexpr std::size_t rowsAtOnce = 25;

/// As the journal would name one change that takes all of it in.
std::string actLabel(const std::vector<evidence::Batch> &batches)
{
    std::size_t count = 0;
    bool onlyPhotos = true;
    for (const evidence::Batch &batch : batches) {
        for (const evidence::PreparedFile &file : batch) {
            if (file.outcome != evidence::PreparedFile::Outcome::Copied)
                continue;
            ++count;
            onlyPhotos = onlyPhotos && file.media.kind == MediaKind::Photo;
        }
    }
    return intakeLabel(count, onlyPhotos);
}

} // namespace

RowStore::RowStore(Session &session, ChangeKind kind, QObject *parent)
    : QObject(parent)
    , m_session(session)
    , m_kind(kind)
    , m_folder(session.project().folder())
{
}

RowStore::~RowStore()
{
    for (const Waiting &left : m_waiting)
        evidence::discard(m_folder, left.batch);
}

void RowStore::add(const std::vector<evidence::Batch> &batches, const BegunAct &begun)
{
    const BegunAct act = begun.row ? begun : BegunAct{0, actLabel(batches)};
    bool goesOn = false;
    for (const evidence::Batch &batch : batches) {
        for (std::size_t first = 0; first < batch.size(); first += rowsAtOnce) {
            const auto end = std::min(batch.size(), first + rowsAtOnce);
            m_waiting.push_back({evidence::Batch(batch.begin() + std::ptrdiff_t(first),
                                                 batch.begin() + std::ptrdiff_t(end)),
                                 act, std::exchange(goesOn, true)});
        }
    }
    if (!std::exchange(m_isStoring, true))
        storeNext();
}

void RowStore::finish()
{
    while (m_isStoring)
        storeNext();
}

/// Stores one batch and lets the window live before the next.
void RowStore::storeNext()
{
    if (!m_isStoring)
        return;
    QString fault;
    if (!m_waiting.empty()) {
        const Waiting next = std::move(m_waiting.front());
        m_waiting.pop_front();
        try {
            m_report.append(store(next));
        } catch (const std::exception &thrown) {
            fault = inWords(messageOf(thrown));
            giveUp(next.batch);
        }
    }
    if (m_waiting.empty())
        end(fault);
    else
        QTimer::singleShot(0, this, &RowStore::storeNext);
}

/// Undo takes the rows of one act back together, if nothing else was changed in between.
evidence::IntakeReport RowStore::store(const Waiting &next)
{
    Project &project = m_session.project();
    const auto before = project.undoRow();
    if (!next.goesOn) {
        m_row = next.act.row;
        m_begun = m_row != 0 && m_row == before ? next.act.label : std::string();
    }
    project.goOnWith(m_kind == ChangeKind::Change ? m_row : 0, next.act.label);
    const auto apart = qScopeGuard([&] { project.goOnWith(0, {}); });
    auto report = evidence::store(project, next.batch, m_kind, intakeLabel);
    if (project.undoRow() != before)
        m_row = project.undoRow();
    return report;
}

bool RowStore::isUndoable() const
{
    return m_kind == ChangeKind::Change && m_row != 0 && m_session.project().undoRow() == m_row;
}

/// A row may be on record although its change ended with a fault: then its file stays.
void RowStore::giveUp(const evidence::Batch &failed)
{
    evidence::discard(m_folder, failed);
    for (const Waiting &waiting : std::exchange(m_waiting, {}))
        evidence::discard(m_folder, waiting.batch);
}

void RowStore::end(const QString &fault)
{
    m_isStoring = false;
    const evidence::IntakeReport report = std::exchange(m_report, {});
    Q_EMIT ended(report, fault);
}

} // namespace lastrivet::ui
