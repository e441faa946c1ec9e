// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/RowStore.h"

#include "core/base/Error.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/IntakeWords.h"

#include <QTimer>

#include <algorithm>
#include <utility>

namespace lastrivet::ui {

namespace {

/// Rows are stored between two looks at keyboard and mouse: so many are quick enough.
constexpr std::size_t rowsAtOnce = 25;

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
    for (const evidence::Batch &batch : m_waiting)
        evidence::discard(m_folder, batch);
}

void RowStore::add(const std::vector<evidence::Batch> &batches)
{
    for (const evidence::Batch &batch : batches) {
        for (std::size_t first = 0; first < batch.size(); first += rowsAtOnce) {
            const auto end = std::min(batch.size(), first + rowsAtOnce);
            m_waiting.emplace_back(batch.begin() + std::ptrdiff_t(first),
                                   batch.begin() + std::ptrdiff_t(end));
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
        const evidence::Batch batch = std::move(m_waiting.front());
        m_waiting.pop_front();
        try {
            m_report.append(evidence::store(m_session.project(), batch, m_kind, intakeLabel));
        } catch (const std::exception &thrown) {
            fault = inWords(messageOf(thrown));
            giveUp(batch);
        }
    }
    if (m_waiting.empty())
        end(fault);
    else
        QTimer::singleShot(0, this, &RowStore::storeNext);
}

/// A row may be on record although its change ended with a fault: its file stays.
void RowStore::giveUp(const evidence::Batch &failed)
{
    evidence::Batch left = failed;
    const auto records = m_session.project().records();
    std::erase_if(left, [&](const evidence::PreparedFile &file) {
        return std::ranges::any_of(records->media, [&](const Media &media) {
            return !media.withdrawn_on && media.sha256 == file.media.sha256;
        });
    });
    evidence::discard(m_folder, left);
    for (const evidence::Batch &batch : std::exchange(m_waiting, {}))
        evidence::discard(m_folder, batch);
}

void RowStore::end(const QString &fault)
{
    m_isStoring = false;
    const evidence::IntakeReport report = std::exchange(m_report, {});
    Q_EMIT ended(report, fault);
}

} // namespace lastrivet::ui
