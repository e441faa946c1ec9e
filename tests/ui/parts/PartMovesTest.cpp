// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/PartActs.h"
#include "tests/ui/parts/PartsWindow.h"
#include "tests/ui/support/ModelWatch.h"
#include "ui/parts/PartTreeModel.h"

#include <QMimeData>
#include <QTreeView>

#include <catch2/catch.hpp>

#include <algorithm>
#include <memory>
#include <random>
#include <vector>

namespace lastrivet::test {

TEST_CASE("A drop moves the part as a change that can be undone")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::PartTreeModel model(*session);
    ModelWatch watch(model);
    QObject::connect(session.get(), &ui::Session::changed, &model,
                     [&](const ChangeNotice &notice) { model.apply(notice); });
    const std::unique_ptr<QMimeData> data(model.mimeData({model.indexOf(workshop.rudder)}));
    model.dropMimeData(data.get(), Qt::MoveAction, -1, -1, model.indexOf(workshop.wing));
    CHECK(session->records()->find(workshop.rudder)->parent_id == workshop.wing);
    CHECK(model.parent(model.indexOf(workshop.rudder)) == model.indexOf(workshop.wing));
    // Into itself: refused, and the tree is as it was.
    const std::unique_ptr<QMimeData> wing(model.mimeData({model.indexOf(workshop.wing)}));
    model.dropMimeData(wing.get(), Qt::MoveAction, -1, -1, model.indexOf(workshop.rudder));
    CHECK_FALSE(session->records()->find(workshop.wing)->parent_id);
    session->undo();
    CHECK_FALSE(model.indexOf(workshop.rudder).parent().isValid());
    watch.check();
}

TEST_CASE("Several parts that are dropped move together")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::PartTreeModel model(*session);
    ModelWatch watch(model);
    QObject::connect(session.get(), &ui::Session::changed, &model,
                     [&](const ChangeNotice &notice) { model.apply(notice); });
    const std::unique_ptr<QMimeData> data(
        model.mimeData({model.indexOf(workshop.rudder), model.indexOf(workshop.aileron)}));
    model.dropMimeData(data.get(), Qt::MoveAction, 0, 0, model.indexOf(workshop.wing));
    CHECK(acts::partsInside(*session->records(), workshop.wing) ==
          std::vector<Id<Component>>{workshop.aileron, workshop.rudder, workshop.bay});
    CHECK(session->project().undoLabel() == "2 parts moved to LW Left wing");
    watch.check();
}

namespace {

/// What the view is at while somebody drags.
struct Dragging : QTreeView {
    using QTreeView::setState;
    static constexpr State state = DraggingState;
};

} // namespace

TEST_CASE("A part that is dropped into a closed one is in sight there")
{
    PartsWindow window;
    QTreeView &tree = window.tree();
    QAbstractItemModel &model = *tree.model();
    const auto indexOf = [&](Id<Component> part) {
        const auto found =
            model.match(model.index(0, 0), ui::PartTreeModel::IdRole, qlonglong(part.value()), 1,
                        Qt::MatchFlags(Qt::MatchExactly) | Qt::MatchRecursive);
        REQUIRE_FALSE(found.isEmpty());
        return found.front();
    };
    window.show({RecordType::Component, window.workshop.rudder.value()});
    tree.collapse(indexOf(window.workshop.wing));
    const std::unique_ptr<QMimeData> data(model.mimeData({indexOf(window.workshop.rudder)}));
    (tree.*&Dragging::setState)(Dragging::state);
    model.dropMimeData(data.get(), Qt::MoveAction, -1, -1, indexOf(window.workshop.wing));
    CHECK(window.records()->find(window.workshop.rudder)->parent_id == window.workshop.wing);
    CHECK(tree.isExpanded(indexOf(window.workshop.wing)));
    CHECK(tree.currentIndex() == indexOf(window.workshop.rudder));
}

TEST_CASE("The tree keeps pace with sixty random moves, additions and withdrawals")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::PartTreeModel model(*session);
    ModelWatch watch(model);
    QObject::connect(session.get(), &ui::Session::changed, &model,
                     [&](const ChangeNotice &notice) { model.apply(notice); });
    std::mt19937 random(7);
    std::vector<Id<Component>> parts{workshop.rudder, workshop.aileron};
    for (int i = 0; i < 60; ++i) {
        const auto some = parts[random() % parts.size()];
        const auto other = parts[random() % parts.size()];
        const int act = int(random() % 5);
        session->change(QStringLiteral("Something"), [&](Edit &edit) {
            if (act == 0)
                parts.push_back(
                    acts::addPart(edit, Component{.parent_id = some, .name = "New"}, 1));
            else
                acts::movePart(edit, some, act == 1 ? Id<Component>{} : other, random() % 3);
        });
        if (act == 4)
            session->undo();
        std::erase_if(parts,
                      [&](Id<Component> part) { return !session->records()->findLive(part); });
    }
    for (const Component &part : session->records()->components) {
        INFO(part.id.value());
        const auto expected = acts::partsInside(*session->records(), part.parent_id);
        const QModelIndex index = model.indexOf(part.id);
        REQUIRE(index.isValid());
        CHECK(expected[std::size_t(index.row())] == part.id);
        CHECK(model.partAt(index.parent()) == part.parent_id);
    }
    watch.check();
}

} // namespace lastrivet::test
