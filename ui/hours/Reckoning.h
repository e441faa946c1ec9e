// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/Cone.h"
#include "core/forecast/LookBack.h"
#include "core/hours/Account.h"
#include "core/project/Project.h"
#include "ui/hours/ForecastWish.h"

#include <QObject>

#include <functional>
#include <memory>
#include <optional>

namespace lastrivet::ui {

class Session;

/// The hours of a snapshot, and what follows from them; each is there when it was worked out.
struct HoursAnswer {
    Snapshot records;
    Moment as_of;
    ForecastWish wish;
    std::shared_ptr<const hours::Account> account;
    std::shared_ptr<const forecast::Outlook> outlook;
    std::shared_ptr<const forecast::LookBack> look_back;
};

/// Adds up the hours and draws the forecast on a worker, one piece after another, and says each
/// time that one is there. After a change the answer stays as it was until the new one has every
/// piece that it had.
class Reckoning final : public QObject {
    Q_OBJECT

public:
    enum class Extent { Forecast, Everything };

    /// Only the forecast, or the account of the hours, the cone and the look back besides.
    Reckoning(Session &session, Extent extent, QObject *parent = nullptr);

    const HoursAnswer &answer() const { return m_answer; }
    /// Works it out for the records, the day and the wish that are now; does nothing when that is
    /// what the answer is about.
    void refresh();
    /// The look back costs most; it is worked out while it is looked at.
    void wantLookBack(bool isWanted);
    /// True until every piece that is wanted is there.
    bool isRunning() const { return m_isRunning; }

Q_SIGNALS:
    void changed();

private:
    /// The next piece that is missing; empty when all is there.
    std::function<void()> nextPiece(const std::shared_ptr<HoursAnswer> &answer) const;
    /// True when nothing that is shown would go for it.
    bool canReplace(const HoursAnswer &next) const;
    void workOn();

    Session &m_session;
    Extent m_extent;
    HoursAnswer m_answer;
    /// What is being worked out, with the pieces that are done.
    std::shared_ptr<HoursAnswer> m_next;
    bool m_isRunning = false;
    bool m_wantsLookBack = false;
};

} // namespace lastrivet::ui
