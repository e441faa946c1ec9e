// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <utility>
#include <variant>

namespace lastrivet {

/// Either a value or the reason why there is none; for normal outcomes, not for machine faults.
/// Whoever calls for one looks at it: a refusal that nobody reads would pass for a change.
template <class Value, class Reason> class [[nodiscard]] Result {
public:
    Result(Value value)
        : m_content(std::in_place_index<0>, std::move(value))
    {
    }
    Result(Reason reason)
        : m_content(std::in_place_index<1>, std::move(reason))
    {
    }

    explicit operator bool() const { return m_content.index() == 0; }
    const Value &operator*() const { return std::get<0>(m_content); }
    Value &operator*() { return std::get<0>(m_content); }
    const Value *operator->() const { return &std::get<0>(m_content); }
    Value *operator->() { return &std::get<0>(m_content); }
    const Reason &reason() const { return std::get<1>(m_content); }

private:
    std::variant<Value, Reason> m_content;
};

} // namespace lastrivet
