// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/JournalWords.h"

#include "core/stores/MoneyText.h"

#include <cmath>
#include <variant>

namespace lastrivet::print {

namespace {

struct InWords {
    const Wording &words;

    QString operator()(std::monostate) const { return {}; }
    QString operator()(bool value) const { return value ? words.text("yes") : words.text("no"); }
    QString operator()(std::int64_t value) const { return words.number(value); }
    QString operator()(double value) const { return words.number(value); }
    QString operator()(const std::string &value) const { return asIs(value); }
    QString operator()(Moment value) const { return words.date(value); }
    QString operator()(Minutes value) const { return words.hours(value); }
    QString operator()(const Money &value) const
    {
        const int decimals = stores::decimalsOf(value.currency);
        return words.locale().toString(double(value.minor_units) / std::pow(10, decimals), 'f',
                                       decimals);
    }
    QString operator()(const journal::VocabularyWord &value) const
    {
        return words.text(value.word).replace(QLatin1Char('_'), QLatin1Char(' '));
    }
    QString operator()(const Message &value) const { return words.text(value); }
};

/// "component_id" and "found_on" are known to people by what they point at or tell.
QString withoutSuffix(QString name)
{
    for (const auto suffix : {QLatin1String("_ids"), QLatin1String("_id"), QLatin1String("_on")}) {
        if (name.endsWith(suffix))
            name.chop(suffix.size());
    }
    return name.replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString joined(const Wording &words, const std::vector<journal::Value> &values)
{
    QStringList list;
    for (const journal::Value &value : values)
        list << valueIn(words, value);
    return words.listed(list);
}

/// Of a new record, what nobody said is no news.
bool isPlainNo(const journal::Value &value)
{
    return value.parts.size() == 1 && value.parts.front().content == journal::Content{false};
}

QString orNothing(const Wording &words, const journal::Value &value)
{
    const QString text = valueIn(words, value);
    return text.isEmpty() ? words.text("nothing") : text;
}

/// The name of a field within a sentence: in German some begin with a capital, others do not.
QString nameIn(const Wording &words, const Field *field)
{
    if (!field)
        return words.text("Rule profile");
    const QString name = words.text(field->name);
    if (name != QString::fromUtf8(field->name.data(), qsizetype(field->name.size())))
        return name;
    return field->target == RecordType::Component && field->type == FieldType::Ref
               ? words.text("part")
               : withoutSuffix(name);
}

/// The same for a field that is named by type and name, of a list `events.closed_on`.
QString nameIn(const Wording &words, RecordType type, std::string_view name)
{
    const auto point = name.find('.');
    const Field *field = describe(type).find(name.substr(0, point));
    if (!field || point == std::string_view::npos || !field->rows)
        return nameIn(words, field);
    for (const Field &each : field->rows->fields) {
        if (each.name == name.substr(point + 1))
            return QStringLiteral("%1, %2").arg(nameIn(words, field), nameIn(words, &each));
    }
    return nameIn(words, field);
}

QString asTitle(QString name)
{
    name[0] = name[0].toUpper();
    return name;
}

} // namespace

QString titleIn(const Wording &words, const Field *field)
{
    return asTitle(nameIn(words, field));
}

QString titleIn(const Wording &words, RecordType type, std::string_view name)
{
    return asTitle(nameIn(words, type, name));
}

QString valueIn(const Wording &words, const journal::Value &value)
{
    QStringList texts;
    for (const journal::Value::Part &part : value.parts) {
        const QString content = std::visit(InWords{words}, part.content);
        // The name of a record says by itself what it is; so does anything that stands alone.
        const bool isClear = value.parts.size() == 1 || !part.field ||
                             part.field->type == FieldType::Numbers ||
                             std::holds_alternative<Message>(part.content);
        texts << (isClear ? content
                          : words.text("{0}: {1}", {nameIn(words, part.field).toStdString(),
                                                    content.toStdString()}));
    }
    return texts.join(QStringLiteral(", "));
}

QString changeIn(const Wording &words, const journal::FieldAccount &account, RowChange kind)
{
    if (!account.field)
        return words.text("taken from the program anew");
    QStringList said;
    if (!account.removed.empty())
        said << words.text("removed: {0}", {joined(words, account.removed).toStdString()});
    if (!account.added.empty() && kind == RowChange::Insert)
        said << joined(words, account.added);
    else if (!account.added.empty())
        said << words.text("added: {0}", {joined(words, account.added).toStdString()});
    if (account.field->isCollection())
        return said.join(QStringLiteral("\n"));
    if (kind == RowChange::Insert)
        return isPlainNo(account.to) ? QString() : valueIn(words, account.to);
    return QStringLiteral("%1 → %2").arg(orNothing(words, account.from),
                                         orNothing(words, account.to));
}

QString becameIn(const Wording &words, RowChange kind)
{
    switch (kind) {
    case RowChange::Insert:
        return words.text("written down");
    case RowChange::Delete:
        return words.text("taken back");
    case RowChange::Update:
        break;
    }
    return {};
}

QString kindIn(const Wording &words, ChangeKind kind)
{
    switch (kind) {
    case ChangeKind::Change:
        break;
    case ChangeKind::Automatic:
        return words.text("from the watched folder");
    case ChangeKind::Undo:
        return words.text("undone");
    case ChangeKind::Redo:
        return words.text("done again");
    case ChangeKind::Import:
        return words.text("imported");
    case ChangeKind::Merge:
        return words.text("copies merged");
    case ChangeKind::Carried:
        return words.text("from another copy");
    case ChangeKind::Migration:
        return words.text("by the program");
    case ChangeKind::Printed:
        return words.text("printed");
    }
    return {};
}

QString kindIn(const Wording &words, const JournalEntry &row)
{
    const bool isBegunByPerson = row.kind == ChangeKind::Migration && !row.who.empty();
    return isBegunByPerson ? QString() : kindIn(words, row.kind);
}

QStringList marksIn(const Wording &words, bool isPushedAhead, const std::vector<LateDate> &late)
{
    QStringList marks;
    for (const LateDate &date : late) {
        marks << words.text(
            "late: {0} {1}",
            {nameIn(words, date.record.type, date.field).toStdString(), date.day.text()});
    }
    marks.removeDuplicates();
    if (isPushedAhead)
        marks << words.text("the clock had been set back, the time is that of the row before");
    return marks;
}

} // namespace lastrivet::print
