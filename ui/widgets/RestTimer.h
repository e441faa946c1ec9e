// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>

namespace lastrivet::ui {

/// Started with every key, it goes off once the hand rests: what is typed is kept then, as power
/// may fail before the line is left.
class RestTimer final : public QTimer {
public:
    RestTimer()
    {
        constexpr int restMilliseconds = 1500;
        setSingleShot(true);
        setInterval(restMilliseconds);
    }
};

} // namespace lastrivet::ui
