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

/// The hours of a snapshot, and what follows from them; each part is null until it is worked out.
struct HoursAnswer {
    Snapshot records;
    Moment as_of;
    ForecastWish wish;
    std::shared_ptr<const hours::Account> account;
    std::shared_ptr<const forecast::Outlook> outlook;
    std::shared_ptr<const forecast::LookBack> look_back;
};

/// Works out the hours and the forecast on a worker, one part after the other, and signals when
/// each is there. After a change the old answer stays until the new one has every part that it had.
class HoursCalculation final : public QObject {
    Q_OBJECT

public:
    enum class Extent { Forecast, Everything };

    /// Either only the forecast, or also the account of the hours, the cone and the look back.
    HoursCalculation(Session &session, Extent extent, QObject *parent = nullptr);

    const HoursAnswer &answer() const { return m_answer; }
    /// Works it out for the records, the day and the wish that are now; does nothing when that is
    /// what the answer is about.
    void refresh();
    /// The look back takes longest, so it is worked out only while it is shown.
    void wantLookBack(bool isWanted);
    /// True until every piece that is wanted is there.
    bool isRunning() const { return m_isRunning; }

Q_SIGNALS:
    void changed();

private:
    /// The next piece that is missing; empty when all is there.
    std::function<void()> nextPiece(const std::shared_ptr<HoursAnswer> &answer) const;
    /// True when `next` has every part that the shown answer has.
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
