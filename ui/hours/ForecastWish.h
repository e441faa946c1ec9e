// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/Forecast.h"

#include <optional>

namespace lastrivet::ui {

class Session;

/// What a person chose for the forecast of this project at this computer.
struct ForecastWish {
    /// Parts that are left out, with everything below.
    IdSet<Component> without;
    /// In place of the log's own pace.
    std::optional<int> hours_per_week;

    /// What was kept; parts that are gone by now are left away. Nothing when it could not be read,
    /// which is said.
    static std::optional<ForecastWish> kept(Session &session);
    void keep(Session &session) const;
    forecast::Options options() const;

    friend bool operator==(const ForecastWish &, const ForecastWish &) = default;
};

} // namespace lastrivet::ui
