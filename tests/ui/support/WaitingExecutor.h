// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/Executor.h"

#include <QObject>
#include <QPointer>

#include <deque>
#include <functional>
#include <utility>

namespace lastrivet::test {

/// Does nothing until it is told to: first the work, then, unless its context is gone by then, what
/// follows from it.
class WaitingExecutor final : public ui::Executor {
public:
    void run(QObject *context, std::function<void()> work, std::function<void()> done) override
    {
        m_pieces.push_back({context, std::move(work), std::move(done)});
    }
    /// The work of the oldest piece alone.
    void work() { m_pieces.front().work(); }
    /// The oldest piece has been worked at and is done with.
    void finish()
    {
        const Piece piece = std::move(m_pieces.front());
        m_pieces.pop_front();
        if (piece.context)
            piece.done();
    }
    /// The newest piece is worked at and done with before all others.
    void overtake()
    {
        const Piece piece = std::move(m_pieces.back());
        m_pieces.pop_back();
        piece.work();
        if (piece.context)
            piece.done();
    }

private:
    struct Piece {
        QPointer<QObject> context;
        std::function<void()> work;
        std::function<void()> done;
    };

    std::deque<Piece> m_pieces;
};

} // namespace lastrivet::test
