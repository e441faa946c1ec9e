// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RowListModel.h"

#include "tests/ui/support/ModelWatch.h"
#include "ui/widgets/Marks.h"

#include <QSignalSpy>

#include <catch2/catch.hpp>

#include <random>

namespace lastrivet::ui {

namespace {

ListRow row(std::int64_t id, const QString &title = {})
{
    return {{RecordType::Step, id}, title};
}

std::vector<std::int64_t> ids(const RowListModel &model)
{
    std::vector<std::int64_t> found;
    for (int i = 0; i < model.rowCount(); ++i)
        found.push_back(model.row(i).record.id);
    return found;
}

} // namespace

TEST_CASE("New rows are told as removals, moves, insertions and changes")
{
    RowListModel model;
    test::ModelWatch watch(model);
    model.setRows({row(1), row(2), row(3)});
    QSignalSpy removed(&model, &QAbstractItemModel::rowsRemoved);
    QSignalSpy inserted(&model, &QAbstractItemModel::rowsInserted);
    QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    model.setRows({row(1, QStringLiteral("new")), row(3), row(4)});
    CHECK(ids(model) == std::vector<std::int64_t>{1, 3, 4});
    CHECK(removed.count() == 1);
    CHECK(inserted.count() == 1);
    CHECK(changed.count() == 1);
    watch.check();
}

TEST_CASE("A row is read aloud with what it has, without pauses for what it has not")
{
    RowListModel model;
    model.setRows({row(1, QStringLiteral("Skin")), row(2, QStringLiteral("Rib"))});
    auto rib = model.row(1);
    rib.figure = QStringLiteral("2 h 00");
    model.setRows({model.row(0), rib});
    CHECK(model.index(0).data(Qt::AccessibleTextRole).toString() == QStringLiteral("Skin"));
    CHECK(model.index(1).data(Qt::AccessibleTextRole).toString() == QStringLiteral("Rib, 2 h 00"));
}

TEST_CASE("Any rows become any others, in their order")
{
    std::mt19937 random(7);
    RowListModel model;
    test::ModelWatch watch(model);
    for (int round = 0; round < 100; ++round) {
        std::vector<std::int64_t> wanted;
        for (std::int64_t id = 1; id < 12; ++id) {
            if (random() % 2 == 0)
                wanted.push_back(id);
        }
        std::shuffle(wanted.begin(), wanted.end(), random);
        std::vector<ListRow> rows;
        for (const auto id : wanted)
            rows.push_back(row(id));
        model.setRows(std::move(rows));
        REQUIRE(ids(model) == wanted);
    }
    watch.check();
}

TEST_CASE("What a row says by a shape, a screen reader says in words")
{
    RowListModel model;
    ListRow closing = row(1, QStringLiteral("Left wing, upper skin"));
    closing.state = readiness::State::ReadyToSign;
    ListRow squawk = row(2, QStringLiteral("Chafed wire"));
    squawk.severity = Severity::Airworthiness;
    squawk.detail = QStringLiteral("open");
    model.setRows({closing, squawk});
    const auto words = [&](int at) {
        return model.index(at).data(Qt::AccessibleTextRole).toString();
    };
    CHECK(words(0) ==
          QStringLiteral("Left wing, upper skin, ") + stateWords(readiness::State::ReadyToSign));
    CHECK(words(1) == QStringLiteral("Chafed wire, airworthiness, open"));
}

} // namespace lastrivet::ui
