// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Minutes.h"
#include "core/base/SortedIds.h"
#include "core/base/WordSet.h"
#include "core/records/Description.h"

#include <array>
#include <cmath>
#include <concepts>
#include <string>
#include <type_traits>
#include <vector>

// Makes the `Field` of a struct member from its type. Included only where records are described.
// Their fields stand in a std::array: on plain arrays of them g++ 12 fails when it optimises.
namespace lastrivet {

template <class Row> const RowDescription &describeRow();

namespace detail {

/// How a member of this type is read as a `Scalar` and set from one.
template <class Type> struct Access;

template <class Type> struct MemberOf;
template <class Owner_, class Type_> struct MemberOf<Type_ Owner_::*> {
    using Owner = Owner_;
    using Type = Type_;
};

template <> struct Access<std::string> {
    static constexpr FieldType type = FieldType::Text;
    static Scalar value(const std::string &text)
    {
        return text.empty() ? Scalar{} : Scalar{std::string_view(text)};
    }
    static bool assign(std::string &text, const Scalar &value)
    {
        const auto *given = std::get_if<std::string_view>(&value);
        if (!given && !isNull(value))
            return false;
        text = given ? *given : std::string_view{};
        return true;
    }
};

template <> struct Access<bool> {
    static constexpr FieldType type = FieldType::Bool;
    static Scalar value(bool flag) { return flag; }
    static bool assign(bool &flag, const Scalar &value)
    {
        const auto *given = std::get_if<bool>(&value);
        if (given)
            flag = *given;
        return given;
    }
};

template <> struct Access<std::int64_t> {
    static constexpr FieldType type = FieldType::Int;
    static Scalar value(std::int64_t number) { return number; }
    static bool assign(std::int64_t &number, const Scalar &value)
    {
        const auto *given = std::get_if<std::int64_t>(&value);
        if (!given || *given > largestId || *given < -largestId)
            return false;
        number = *given;
        return true;
    }
};

template <> struct Access<Minutes> {
    static constexpr FieldType type = FieldType::Int;
    static Scalar value(Minutes minutes) { return minutes.count(); }
    static bool assign(Minutes &minutes, const Scalar &value)
    {
        std::int64_t count = 0;
        if (!Access<std::int64_t>::assign(count, value))
            return false;
        minutes = Minutes{count};
        return true;
    }
};

template <> struct Access<double> {
    static constexpr FieldType type = FieldType::Real;
    static Scalar value(double number) { return number; }
    static bool assign(double &number, const Scalar &value)
    {
        if (const auto *whole = std::get_if<std::int64_t>(&value))
            number = double(*whole);
        else if (const auto *given = std::get_if<double>(&value); given && std::isfinite(*given))
            number = *given;
        else
            return false;
        return true;
    }
};

template <> struct Access<Moment> {
    static constexpr FieldType type = FieldType::Moment;
    static Scalar value(Moment moment) { return moment; }
    static bool assign(Moment &moment, const Scalar &value)
    {
        const auto *given = std::get_if<Moment>(&value);
        if (given)
            moment = *given;
        return given;
    }
};

template <class Record> struct Access<Id<Record>> {
    static constexpr FieldType type = FieldType::Ref;
    static constexpr RecordType target = Record::type;
    static Scalar value(Id<Record> id) { return id ? Scalar{id.value()} : Scalar{}; }
    static bool assign(Id<Record> &id, const Scalar &value)
    {
        if (isNull(value)) {
            id = {};
            return true;
        }
        const auto *given = std::get_if<std::int64_t>(&value);
        if (!given || *given < 1 || *given > largestId)
            return false;
        id = Id<Record>{*given};
        return true;
    }
};

template <class Word>
requires std::is_enum_v<Word>
struct Access<Word> {
    static constexpr FieldType type =
        std::is_same_v<Word, RecordType> ? FieldType::Record : FieldType::Enum;
    static Scalar value(Word given) { return word(given); }
    static bool assign(Word &stored, const Scalar &value)
    {
        const auto *text = std::get_if<std::string_view>(&value);
        const auto given = text ? parseWord<Word>(*text) : std::nullopt;
        if (given)
            stored = *given;
        return given.has_value();
    }
};

template <class Type> struct Access<std::optional<Type>> {
    static constexpr FieldType type = Access<Type>::type;
    static Scalar value(const std::optional<Type> &stored)
    {
        return stored ? Access<Type>::value(*stored) : Scalar{};
    }
    static bool assign(std::optional<Type> &stored, const Scalar &value)
    {
        if (isNull(value)) {
            stored.reset();
            return true;
        }
        if constexpr (std::is_same_v<Type, Moment>) {
            const auto *given = std::get_if<Moment>(&value);
            if (given)
                stored = *given;
            return given;
        } else {
            Type inner{};
            if (!Access<Type>::assign(inner, value))
                return false;
            stored = inner;
            return true;
        }
    }
};

template <class Type> struct WordsOf {
    static constexpr std::span<const std::string_view> words{};
};
template <class Type>
requires std::is_enum_v<Type>
struct WordsOf<Type> {
    static constexpr std::span<const std::string_view> words{Words<Type>::list};
};
template <class Type> struct WordsOf<std::optional<Type>> : WordsOf<Type> {
};

template <auto Member, class Of = MemberOf<decltype(Member)>> auto &at(const void *record)
{
    return static_cast<const typename Of::Owner *>(record)->*Member;
}
template <auto Member, class Of = MemberOf<decltype(Member)>> auto &at(void *record)
{
    return static_cast<typename Of::Owner *>(record)->*Member;
}

} // namespace detail

/// A scalar field. `required` fields may not be null.
template <auto Member> Field field(std::string_view name, bool required = false)
{
    using Type = typename detail::MemberOf<decltype(Member)>::Type;
    using Access = detail::Access<Type>;
    Field made{name, Access::type, required};
    made.words = detail::WordsOf<Type>::words;
    if constexpr (Access::type == FieldType::Ref)
        made.target = Access::target;
    made.value = [](const void *record) { return Access::value(detail::at<Member>(record)); };
    made.assign = [](void *record, const Scalar &value) {
        return Access::assign(detail::at<Member>(record), value);
    };
    return made;
}

/// The record's own id.
template <auto Member> Field idField()
{
    Field made = field<Member>("id", true);
    made.type = FieldType::Id;
    made.target.reset();
    return made;
}

/// A whole number that is an id of the record type that the row's `subject` names.
template <auto Member> Field subjectIdField(std::string_view name)
{
    Field made = field<Member>(name, true);
    made.type = FieldType::Ref;
    return made;
}

/// A set of ids, kept in ascending order.
template <auto Member> Field refsField(std::string_view name, bool required = false)
{
    using Item = typename detail::MemberOf<decltype(Member)>::Type::value_type;
    Field made{name, FieldType::Refs, required};
    made.target = detail::Access<Item>::target;
    made.size = [](const void *record) { return detail::at<Member>(record).size(); };
    made.item = [](const void *record, std::size_t index) {
        return detail::Access<Item>::value(detail::at<Member>(record)[index]);
    };
    made.add = [](void *record, const Scalar &value) {
        Item id;
        if (isNull(value) || !detail::Access<Item>::assign(id, value))
            return false;
        insertSorted(detail::at<Member>(record), id);
        return true;
    };
    made.clear = [](void *record) { detail::at<Member>(record).clear(); };
    return made;
}

/// A set of words, in the order of their vocabulary.
template <auto Member, class Word> Field setField(std::string_view name, bool required)
{
    Field made{name, FieldType::Set, required};
    made.words = detail::WordsOf<Word>::words;
    made.size = [](const void *record) {
        std::size_t count = 0;
        for (std::size_t i = 0; i < Words<Word>::list.size(); ++i)
            count += detail::at<Member>(record).contains(Word(i));
        return count;
    };
    made.item = [](const void *record, std::size_t index) -> Scalar {
        for (std::size_t i = 0; i < Words<Word>::list.size(); ++i) {
            if (detail::at<Member>(record).contains(Word(i)) && index-- == 0)
                return Words<Word>::list[i];
        }
        return {};
    };
    made.add = [](void *record, const Scalar &value) {
        Word given{};
        if (!detail::Access<Word>::assign(given, value))
            return false;
        detail::at<Member>(record).insert(given);
        return true;
    };
    made.clear = [](void *record) { detail::at<Member>(record).clear(); };
    return made;
}

/// Ordered finite numbers.
template <auto Member> Field numbersField(std::string_view name)
{
    Field made{name, FieldType::Numbers, true};
    made.size = [](const void *record) { return detail::at<Member>(record).size(); };
    made.item = [](const void *record, std::size_t index) -> Scalar {
        return detail::at<Member>(record)[index];
    };
    made.add = [](void *record, const Scalar &value) {
        double number = 0;
        if (!detail::Access<double>::assign(number, value))
            return false;
        detail::at<Member>(record).push_back(number);
        return true;
    };
    made.clear = [](void *record) { detail::at<Member>(record).clear(); };
    return made;
}

/// Ordered rows.
template <auto Member> Field listField(std::string_view name)
{
    using Row = typename detail::MemberOf<decltype(Member)>::Type::value_type;
    Field made{name, FieldType::List};
    made.rows = &describeRow<Row>();
    made.size = [](const void *record) { return detail::at<Member>(record).size(); };
    made.row = [](const void *record, std::size_t index) -> const void * {
        return &detail::at<Member>(record)[index];
    };
    made.addRow = [](void *record) -> void * { return &detail::at<Member>(record).emplace_back(); };
    made.clear = [](void *record) { detail::at<Member>(record).clear(); };
    return made;
}

/// The description of a record struct from its fields.
template <class Record> RecordDescription describeRecord(std::span<const Field> fields)
{
    static const Record defaults{};
    return {Record::type,
            fields,
            &defaults,
            [] { return std::shared_ptr<void>(std::make_shared<Record>()); },
            [](const void *record) {
                return std::shared_ptr<void>(
                    std::make_shared<Record>(*static_cast<const Record *>(record)));
            },
            [](const void *a, const void *b) {
                return *static_cast<const Record *>(a) == *static_cast<const Record *>(b);
            }};
}

template <class Row>
RowDescription describeRows(std::string_view name, std::span<const Field> fields)
{
    static const Row defaults{};
    return {name, fields, &defaults};
}

} // namespace lastrivet
