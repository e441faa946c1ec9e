// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Minutes.h"
#include "core/base/Moment.h"
#include "core/base/Tongue.h"
#include "core/base/VisibleText.h"

#include <QLocale>
#include <QString>
#include <QStringList>

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lastrivet::print {

/// The language of a document, chosen apart from the screen's: sentences, dates and numbers.
class Wording {
public:
    /// Answers the pattern in the language, or the pattern itself where it has none.
    using Translate = std::function<QString(std::string_view pattern)>;

    Wording() = default;
    explicit Wording(QLocale locale, Translate translate = {});

    /// How a date is written, in the place of what `date(Moment)` says of it.
    using Dates = std::function<QString(Moment moment)>;
    void setDates(Dates dates) { m_dates = std::move(dates); }

    const QLocale &locale() const { return m_locale; }
    /// Says the sentences of the core; it must not outlive this.
    Tongue tongue() const;
    /// Arguments that are moments are written as dates.
    QString text(const Message &message) const;
    QString text(std::string_view pattern, const std::vector<std::string> &arguments = {}) const;
    /// "14 Mar 2026", with "09:30" behind it where the time is known.
    QString date(Moment moment) const;
    /// The day alone, for tables where the time of day says nothing.
    QString day(const std::optional<Moment> &moment, bool isApproximate = false) const;
    /// As `date`; empty for none; "about" before an approximate one.
    QString date(const std::optional<Moment> &moment, bool isApproximate = false) const;
    QString number(double value) const;
    QString number(std::int64_t value) const;
    /// A count to be put into a text, written as `number` writes it in a table.
    std::string count(std::size_t value) const;
    /// "53 h 30", and "1,053 h 30" as other numbers are written.
    QString hours(Minutes minutes) const;
    /// A time to wait for: "14 d", "2 d 6 h", but "36 h 00" below two days.
    QString span(Minutes minutes) const;
    /// First letter in upper case, for a sentence that stands alone.
    QString sentence(const Message &message) const;
    /// Several pieces in one line; French has a gap before what parts them.
    QString listed(const QStringList &pieces) const;

private:
    QLocale m_locale{QLocale::English, QLocale::UnitedStates};
    Translate m_translate;
    Dates m_dates;
};

/// A text of the records as it is.
inline QString asIs(const std::string &text)
{
    return QString::fromStdString(visibleText(text));
}

} // namespace lastrivet::print
