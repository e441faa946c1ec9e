// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <atomic>
#include <stop_token>

namespace lastrivet::ui {

/// The progress of long work: written by its worker, read by the window, which may cancel it.
class Progress {
public:
    explicit Progress(QString title)
        : m_title(std::move(title))
    {
    }

    const QString &title() const { return m_title; }

    /// Called by the worker; false when it should stop and leave nothing half done.
    bool report(qint64 done, qint64 total)
    {
        m_done = done;
        m_total = total;
        return !isCancelled();
    }
    /// The same request to stop that `report` returns, for workers that take a token.
    std::stop_token stopToken() const { return m_stop.get_token(); }
    /// Marks work whose result will be put on record: leaving the project warns of it first.
    void markAsBringing() { m_isBringing = true; }
    bool isBringing() const { return m_isBringing; }
    bool isCancelled() const { return m_stop.stop_requested(); }
    /// Called by the worker when its result is stored: from then on it is too late to cancel.
    void noteKept() { m_isKept = true; }
    bool isKept() const { return m_isKept; }
    void cancel() { m_stop.request_stop(); }
    qint64 done() const { return m_done; }
    /// 0 while it is not known.
    qint64 total() const { return m_total; }

private:
    const QString m_title;
    std::atomic<qint64> m_done = 0;
    std::atomic<qint64> m_total = 0;
    std::stop_source m_stop;
    std::atomic<bool> m_isKept = false;
    /// Used by the window's thread only.
    bool m_isBringing = false;
};

} // namespace lastrivet::ui
