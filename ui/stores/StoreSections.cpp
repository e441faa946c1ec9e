// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stores/StoreSections.h"

#include "core/stores/ExpenseLine.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/parts/SectionForms.h"
#include "ui/shell/Session.h"
#include "ui/stores/StoreActsOffered.h"
#include "ui/stores/StoreTexts.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <tuple>

namespace lastrivet::ui::storeroom {

namespace {

using Ids = std::vector<std::int64_t>;
using Parts = std::unordered_set<std::int64_t>;
using Rows = std::vector<RecordForm::Row>;

QString tr(const char *text)
{
    return QCoreApplication::translate("Section", text);
}

/// The live records in the order of `key`.
template <class Record, class Key> Ids inOrder(const Records &records, Key key)
{
    std::vector<std::pair<std::invoke_result_t<Key, const Record &>, std::int64_t>> found;
    for (const Record &record : records.of<Record>()) {
        if (!record.withdrawn_on)
            found.emplace_back(key(record), record.id.value());
    }
    std::ranges::sort(found);
    Ids ids;
    for (const auto &[order, id] : found)
        ids.push_back(id);
    return ids;
}

Ids lines(const Records &records, const Parts &)
{
    return inOrder<PartLine>(records, [](const PartLine &) { return 0; });
}

/// What expires next stands first, what never does last.
Ids lots(const Records &records, const Parts &)
{
    return inOrder<MaterialLot>(records, [](const MaterialLot &lot) {
        return std::tuple(!lot.expires_on, lot.expires_on ? lot.expires_on->text() : lot.name);
    });
}

Ids tools(const Records &records, const Parts &)
{
    return inOrder<Tool>(
        records, [](const Tool &tool) { return std::tuple(!tool.needs_calibration, tool.name); });
}

Ids expenses(const Records &records, const Parts &)
{
    auto ids = inOrder<Expense>(records, [](const Expense &expense) {
        return expense.spent_on ? expense.spent_on->text() : std::string();
    });
    std::ranges::reverse(ids);
    return ids;
}

std::int64_t newLine(Edit &edit, Id<Component>, const std::string &words)
{
    PartLine line;
    line.name = words;
    line.quantity = 1;
    return edit.put(std::move(line)).value();
}

std::int64_t newLot(Edit &edit, Id<Component>, const std::string &words)
{
    MaterialLot lot;
    lot.name = words;
    return edit.put(std::move(lot)).value();
}

std::int64_t newTool(Edit &edit, Id<Component>, const std::string &words)
{
    Tool tool;
    tool.name = words;
    return edit.put(std::move(tool)).value();
}

QString whyNotExpense(Session &session, const QString &words)
{
    const auto read =
        stores::readExpenseLine(toStd(words), session.records()->project.currency, decimalSign());
    return read ? QString() : inWords(read.reason());
}

std::int64_t newExpense(Edit &edit, Id<Component>, const std::string &words)
{
    Expense expense =
        *stores::readExpenseLine(words, edit.records().project.currency, decimalSign());
    expense.spent_on = edit.today();
    return edit.put(std::move(expense)).value();
}

Rows lineForm()
{
    return {{"name"},        {"part_number"},       {"shipment"},
            {"quantity"},    {"received_quantity"}, {"damaged_quantity"},
            {"received_on"}, {"component_id"},      {"step_id"},
            {"ordered_on"},  {"expected_on"},       {"unit_price", false, tr("Price each")},
            {"currency"},    {"note", true}};
}

Rows lotForm()
{
    return {{"name"},      {"specification"}, {"lot_number"}, {"supplier"},  {"cures"},
            {"opened_on"}, {"expires_on"},    {"storage"},    {"note", true}};
}

Rows toolForm()
{
    return {{"name"}, {"serial_number"}, {"needs_calibration"}, {"note", true}};
}

Rows expenseForm()
{
    return {{"what"},     {"amount"},   {"currency"},  {"spent_on"},
            {"category"}, {"supplier"}, {"note", true}};
}

constexpr std::array lineColumns{
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Counted, packing line"),
                  .isNumber = false,
                  .text = lineName,
                  .isTicked = isCounted,
                  .tick = tickCounted,
                  .act = QT_TRANSLATE_NOOP("Section", "counted")},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Part number"), false, linePartNumber},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Listed"), true, lineListed},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Came"),
                  .isNumber = true,
                  .text = lineReceived,
                  .write = writeReceived,
                  .whyNot = whyNotReceived},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Damaged"),
                  .isNumber = true,
                  .text = lineDamaged,
                  .write = writeDamaged,
                  .whyNot = whyNotDamaged},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Stands"),
                  .isNumber = false,
                  .text = lineStands,
                  .tone = lineTone},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "For"),
                  .isNumber = false,
                  .text = lineFor,
                  .spare = 1},
};
constexpr std::array lotColumns{
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Material"), false, lotName},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Lot"), false, lotNumber},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Good until"), false, lotExpires},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Stands"),
                  .isNumber = false,
                  .text = lotStands,
                  .tone = lotTone},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Used"),
                  .isNumber = false,
                  .text = lotUsed,
                  .spare = 1},
};
constexpr std::array toolColumns{
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Tool"), false, toolName},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Serial number"), false, toolSerial},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Due"), false, toolDue},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Calibration"),
                  .isNumber = false,
                  .text = toolStands,
                  .tone = toolTone},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Certificate"),
                  .isNumber = false,
                  .text = toolCertificate,
                  .spare = 1},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Used"),
                  .isNumber = false,
                  .text = toolOutside,
                  .tone = toolOutsideTone,
                  .spare = 2},
};
constexpr std::array expenseColumns{
    SectionColumn{QT_TRANSLATE_NOOP("Section", "What"), false, expenseWhat},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Day"), false, expenseDay},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Amount"), true, expenseAmount},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Category"),
                  .isNumber = false,
                  .text = expenseCategory,
                  .write = writeCategory},
    SectionColumn{.title = QT_TRANSLATE_NOOP("Section", "Supplier"),
                  .isNumber = false,
                  .text = expenseSupplier,
                  .spare = 1},
    SectionColumn{QT_TRANSLATE_NOOP("Section", "Receipt"), false, expenseReceipt},
};

constexpr PartSection theLines{.title = QT_TRANSLATE_NOOP("Section", "Packing lists"),
                               .type = RecordType::PartLine,
                               .columns = lineColumns,
                               .collect = lines,
                               .addPrompt = QT_TRANSLATE_NOOP("Section", "New packing line"),
                               .add = newLine,
                               .form = lineForm,
                               .acts = lineActs,
                               .attach = attachToLine,
                               .check = sections::whyNotCounted,
                               .follow = sections::countWhatIsTyped};
constexpr PartSection theLots{.title = QT_TRANSLATE_NOOP("Section", "Materials"),
                              .type = RecordType::MaterialLot,
                              .columns = lotColumns,
                              .collect = lots,
                              .addPrompt = QT_TRANSLATE_NOOP("Section", "New lot: the material"),
                              .add = newLot,
                              .form = lotForm,
                              .acts = lotActs,
                              .attach = attachToLot};
constexpr PartSection theTools{.title = QT_TRANSLATE_NOOP("Section", "Tools"),
                               .type = RecordType::Tool,
                               .columns = toolColumns,
                               .collect = tools,
                               .addPrompt = QT_TRANSLATE_NOOP("Section", "New tool"),
                               .add = newTool,
                               .form = toolForm,
                               .acts = toolActs,
                               .attach = attachToTool};
constexpr PartSection theExpenses{
    .title = QT_TRANSLATE_NOOP("Section", "Expenses"),
    .type = RecordType::Expense,
    .columns = expenseColumns,
    .collect = expenses,
    .addPrompt = QT_TRANSLATE_NOOP("Section", "New expense: 34.90 hardware: bolts and nuts"),
    .add = newExpense,
    .form = expenseForm,
    .acts = expenseActs,
    .attach = attachToExpense,
    .whyNotAdd = whyNotExpense};

} // namespace

const PartSection &lineSection()
{
    return theLines;
}

const PartSection &lotSection()
{
    return theLots;
}

const PartSection &toolSection()
{
    return theTools;
}

const PartSection &expenseSection()
{
    return theExpenses;
}

} // namespace lastrivet::ui::storeroom
