// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/parts/PartsWindow.h"
#include "tests/ui/support/Hands.h"
#include "ui/convert/QtText.h"
#include "ui/parts/MeasurementPlot.h"
#include "ui/parts/PartSection.h"
#include "ui/parts/TorquePanel.h"

#include <QApplication>
#include <QComboBox>
#include <QItemSelectionModel>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QTreeView>

#include <catch2/catch.hpp>

namespace lastrivet::test {

namespace {

/// The page of parts with the bay's fasteners open.
struct HardwareWindow : PartsWindow {
    HardwareWindow()
    {
        QObject::connect(session.get(), &ui::Session::complained, &page,
                         [this](const QString &sentence) { complaint = sentence; });
        session->change(QStringLiteral("Wrench"), [&](Edit &edit) {
            Tool tool;
            tool.name = "Torque wrench";
            wrench = edit.put(tool);
            Fastener first;
            first.component_id = workshop.bay;
            first.place = "Old bolt";
            bolt = edit.put(first);
        });
        show({RecordType::Fastener, bolt.value()});
    }

    Id<Fastener> add(const QString &line)
    {
        enter(QStringLiteral("New: 12 x rear hinge, AN4-7A, 1/4-28, drag 6, split pin"), line);
        return Id<Fastener>{records()->fasteners.greatestId()};
    }
    QString stands(Id<Fastener> id)
    {
        const auto &model = *list().model();
        for (int row = 0; row < model.rowCount(); ++row) {
            const QString place = ui::toQt(records()->find(id)->place);
            if (model.index(row, 0).data().toString().endsWith(place))
                return model.index(row, 1).data().toString();
        }
        return {};
    }
    const Fastener &at(Id<Fastener> id) { return *records()->find(id); }

    Id<Fastener> bolt;
    Id<Tool> wrench;
    QString complaint;
};

} // namespace

TEST_CASE("Twelve bolts are one line, which goes from fitted to sealed with one key each")
{
    HardwareWindow window;
    const auto hinge =
        window.add(QStringLiteral("12 x rear hinge, AN4-7A, 1/4-28, drag 6, split pin"));
    CHECK(window.at(hinge).quantity == 12);
    CHECK(window.at(hinge).component_id == window.workshop.bay);
    CHECK(window.at(hinge).torque_max == 70.0);
    window.show({RecordType::Fastener, hinge.value()});
    QTreeView &list = window.list();
    list.setFocus();
    QTest::keyClick(&list, Qt::Key_F);
    CHECK(window.at(hinge).fitted_on == window.session->today());
    CHECK(window.stands(hinge) == QStringLiteral("finger-tight"));
    CHECK(window.button(QStringLiteral("1 finger-tight")).isVisible());

    QTest::keyClick(&list, Qt::Key_T);
    const QString torque = QStringLiteral("Torque on the wrench, 56 to 76 in-lb");
    window.enter(torque, QStringLiteral("hard"));
    CHECK(window.complaint == QStringLiteral("“hard” is no torque; write it as 20 in-lb, "
                                             "2 ft-lb or 2.3 N·m."));
    CHECK_FALSE(window.at(hinge).torqued_on.has_value());
    window.enter(QStringLiteral("With"), QStringLiteral("Torque wr"));
    window.enter(torque, QStringLiteral("70"));
    CHECK(window.at(hinge).torque_value == 70.0);
    CHECK(window.at(hinge).tool_id == window.wrench);
    CHECK(window.stands(hinge) == QStringLiteral("to lock"));
    list.setFocus();
    QTest::keyClick(&list, Qt::Key_L);
    CHECK(window.stands(hinge) == QStringLiteral("to seal"));
    QTest::keyClick(&list, Qt::Key_S);
    CHECK(window.stands(hinge) == QStringLiteral("done"));
    CHECK(window.at(hinge).marked_on == window.session->today());
    // Keys act once: what has its day keeps it.
    window.session->undo();
    CHECK(window.stands(hinge) == QStringLiteral("to seal"));
}

TEST_CASE("A torque outside of the limits is said when it is written down")
{
    HardwareWindow window;
    const auto hinge =
        window.add(QStringLiteral("12 x rear hinge, AN4-7A, 1/4-28, drag 6, split pin"));
    window.show({RecordType::Fastener, hinge.value()});
    window.list().setFocus();
    QTest::keyClick(&window.list(), Qt::Key_T);
    window.enter(QStringLiteral("Torque on the wrench, 56 to 76 in-lb"), QStringLiteral("76"));
    CHECK(window.session->project().undoLabel() == "rear hinge: torqued");
    window.list().setFocus();
    QTest::keyClick(&window.list(), Qt::Key_T);
    window.enter(QStringLiteral("Torque on the wrench, 56 to 76 in-lb"), QStringLiteral("77"));
    CHECK(window.session->project().undoLabel() == "rear hinge: torqued outside its limits");
}

TEST_CASE("A torque that is typed with another unit is written down in the fastener's own")
{
    HardwareWindow window;
    const auto hinge =
        window.add(QStringLiteral("12 x rear hinge, AN4-7A, 1/4-28, drag 6, split pin"));
    window.show({RecordType::Fastener, hinge.value()});
    const QString torque = QStringLiteral("Torque on the wrench, 56 to 76 in-lb");
    window.list().setFocus();
    QTest::keyClick(&window.list(), Qt::Key_T);
    window.enter(torque, QStringLiteral("5 ft-lb"));
    CHECK(window.at(hinge).torque_value == 60.0);
    CHECK(window.session->project().undoLabel() == "rear hinge: torqued");
    window.list().setFocus();
    QTest::keyClick(&window.list(), Qt::Key_T);
    window.enter(torque, QStringLiteral("70 in-lb"));
    CHECK(window.at(hinge).torque_value == 70.0);
}

TEST_CASE("Bolts that an undo took away while their torque was asked for are told, not torqued")
{
    HardwareWindow window;
    const auto hinge = window.add(QStringLiteral("hinge, 10-32"));
    window.show({RecordType::Fastener, hinge.value()});
    window.list().setFocus();
    QTest::keyClick(&window.list(), Qt::Key_T);
    window.session->undo();
    REQUIRE_FALSE(window.records()->find(hinge));
    for (QLineEdit *line : window.page.findChildren<QLineEdit *>()) {
        if (!line->accessibleName().startsWith(QStringLiteral("Torque on the wrench")) ||
            !line->isVisible())
            continue;
        QTest::keyClicks(line, QStringLiteral("22"));
        QTest::keyClick(line, Qt::Key_Return);
        CHECK(window.complaint == QStringLiteral("What this is about is no longer on record."));
    }
}

TEST_CASE("The last wrench is offered for the next bolts, and several go by one key")
{
    HardwareWindow window;
    const auto one = window.add(QStringLiteral("hinge one, 10-32"));
    const auto two = window.add(QStringLiteral("hinge two, 10-32"));
    window.session->change(QStringLiteral("Torqued"), [&](Edit &edit) {
        edit.update(window.bolt, [&](Fastener &bolt) {
            bolt.fitted_on = bolt.torqued_on = Moment::parse("2026-03-01");
            bolt.torque_value = 22;
            bolt.tool_id = window.wrench;
        });
    });
    window.list().selectAll();
    window.list().setFocus();
    QTest::keyClick(&window.list(), Qt::Key_F);
    CHECK(window.at(one).fitted_on == window.session->today());
    CHECK(window.at(two).fitted_on == window.session->today());
    CHECK(window.at(window.bolt).fitted_on == Moment::parse("2026-03-01"));
    window.show({RecordType::Fastener, one.value()});
    window.list().setFocus();
    QTest::keyClick(&window.list(), Qt::Key_T);
    CHECK(window.field(QStringLiteral("With")).text() == QStringLiteral("Torque wrench"));
}

TEST_CASE("A question about several bolts says which they are, whatever is chosen meanwhile")
{
    HardwareWindow window;
    const auto one = window.add(QStringLiteral("hinge one, 10-32"));
    const auto two = window.add(QStringLiteral("hinge two, 10-32"));
    window.show({RecordType::Fastener, one.value()});
    QTreeView &list = window.list();
    const auto row = [&](const QString &place) {
        for (int i = 0; i < list.model()->rowCount(); ++i) {
            if (list.model()->index(i, 0).data().toString().contains(place))
                return list.model()->index(i, 0);
        }
        return QModelIndex();
    };
    const auto chooseBoth = [&] {
        list.setCurrentIndex(row(QStringLiteral("hinge one")));
        list.selectionModel()->select(row(QStringLiteral("hinge two")),
                                      QItemSelectionModel::Select | QItemSelectionModel::Rows);
        list.setFocus();
    };
    chooseBoth();
    QTest::keyClick(&list, Qt::Key_T);
    CHECK(says(window.page, QStringLiteral("hinge one")));
    CHECK(says(window.page, QStringLiteral("hinge two")));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    chooseBoth();
    QTest::keyClick(&list, Qt::Key_Delete);
    CHECK(says(window.page, QStringLiteral("It is about: ")));
    CHECK(says(window.page, QStringLiteral("hinge two")));
    CHECK(window.at(two).place == "hinge two");
}

TEST_CASE("Wrong lines and limits of fasteners are refused in one sentence each")
{
    HardwareWindow window;
    const auto before = window.records()->fasteners.size();
    window.add(QStringLiteral("hinge, M6"));
    CHECK(window.complaint.contains(QStringLiteral("no thread “M6”")));
    window.add(QStringLiteral("hinge, 10-32, drag 30"));
    CHECK(
        window.complaint.contains(QStringLiteral("A drag of 30 in-lb is more than the 25 in-lb")));
    CHECK(window.records()->fasteners.size() == before);

    const auto hinge = window.add(QStringLiteral("hinge, 10-32"));
    window.show({RecordType::Fastener, hinge.value()});
    window.enter(QStringLiteral("Torque drag"), QStringLiteral("26"));
    CHECK(
        window.complaint.contains(QStringLiteral("A drag of 26 in-lb is more than the 25 in-lb")));
    CHECK_FALSE(window.at(hinge).torque_drag.has_value());
}

TEST_CASE("The table proposes limits with its source, and the wrench is set through its extension")
{
    HardwareWindow window;
    window.session->change(QStringLiteral("Thread"), [&](Edit &edit) {
        edit.update(window.bolt, [](Fastener &bolt) {
            bolt.thread = "1/4-28";
            bolt.torque_drag = 6;
        });
    });
    window.show({RecordType::Fastener, window.bolt.value()});
    auto &panel = *window.page.findChild<ui::TorquePanel *>();
    CHECK(says(panel, QStringLiteral("1/4-28: 50 to 70 in-lb, and never above 100 in-lb.")));
    CHECK(says(panel, QStringLiteral("With the drag of 6 added: 56 to 76 in-lb.")));
    CHECK(says(panel, QStringLiteral("AC 43.13-1B")));
    press(panel, QStringLiteral("Take these limits"));
    CHECK(window.at(window.bolt).torque_min == 50.0);
    CHECK(window.at(window.bolt).torque_max == 70.0);
    CHECK(window.at(window.bolt).torque_drag == 6.0);
    CHECK_FALSE(button(panel, QStringLiteral("Take these limits")));
    type(panel, QStringLiteral("Lever of the wrench"), QStringLiteral("10"));
    type(panel, QStringLiteral("Extension"), QStringLiteral("4"));
    // T x L / (L + E): 56 x 10 / 14 and 76 x 10 / 14.
    CHECK(says(panel, QStringLiteral("Set the wrench to 40 to 54.29 in-lb.")));
    type(panel, QStringLiteral("Extension"), QStringLiteral("-10"));
    CHECK(says(panel, QStringLiteral("must be shorter than the lever")));
    // With their units, which may differ; one alone without tells nothing.
    type(panel, QStringLiteral("Lever of the wrench"), QStringLiteral("25.4 cm"));
    CHECK(says(panel, QStringLiteral("Lever and extension in the same unit")));
    type(panel, QStringLiteral("Extension"), QStringLiteral("4 in"));
    CHECK(says(panel, QStringLiteral("Set the wrench to 40 to 54.29 in-lb.")));
}

TEST_CASE("The project's own limit of a thread stands in the table's place beside a fastener too")
{
    HardwareWindow window;
    const auto keep = [&](std::optional<double> least) {
        const std::vector<workshop::OwnLimit> own{
            {workshop::torqueSubject("1/4-28", "tension"), least, 55, "in-lb", "Drawing 12-3"}};
        REQUIRE(
            window.session->keepLocalState(workshop::ownLimitsKey, workshop::ownLimitsText(own)));
    };
    const auto hinge = window.add(QStringLiteral("hinge, 1/4-28, drag 6"));
    keep(45);
    window.show({RecordType::Fastener, window.bolt.value()});
    window.show({RecordType::Fastener, hinge.value()});
    auto &panel = *window.page.findChild<ui::TorquePanel *>();
    CHECK(says(panel, QStringLiteral("1/4-28: 45 to 55 in-lb, the project's own limit.")));
    CHECK(says(panel, QStringLiteral("With the drag of 6 added: 51 to 61 in-lb.")));
    CHECK(says(panel, QStringLiteral("Drawing 12-3")));
    press(panel, QStringLiteral("Take these limits"));
    CHECK(window.at(hinge).torque_min == 45.0);
    CHECK(window.at(hinge).torque_max == 55.0);
    // A new one has them from the start.
    const auto strap = window.add(QStringLiteral("strap, 1/4-28"));
    CHECK(window.at(strap).torque_min == 45.0);
    CHECK(window.at(strap).torque_max == 55.0);
    keep({});
    window.show({RecordType::Fastener, window.bolt.value()});
    window.show({RecordType::Fastener, hinge.value()});
    CHECK(says(panel, QStringLiteral("1/4-28: 50 to 55 in-lb.")));
    CHECK(says(panel,
               QStringLiteral("The project's own limit: at most 55\u00a0in-lb, from Drawing")));
    // It is written down on another page.
    keep(40);
    window.page.hide();
    window.page.show();
    CHECK(says(panel, QStringLiteral("1/4-28: 40 to 55 in-lb, the project's own limit.")));
}

TEST_CASE("What is measured again is drawn against its limits")
{
    HardwareWindow window;
    Id<Measurement> sender;
    window.session->change(QStringLiteral("Sender"), [&](Edit &edit) {
        Measurement made;
        made.component_id = window.workshop.bay;
        made.what = "Sender, full";
        made.unit = "ohm";
        made.minimum = 28;
        made.maximum = 36;
        made.value = 88;
        made.measured_on = Moment::parse("2026-03-10");
        sender = edit.put(made);
    });
    window.show({RecordType::Measurement, sender.value()});
    auto &plot = *window.page.findChild<ui::MeasurementPlot *>();
    CHECK_FALSE(plot.isVisible());
    CHECK(window.list().model()->index(0, 3).data().toString() ==
          QStringLiteral("outside its limits"));
    QTest::mouseClick(&window.button(QStringLiteral("Measure again…")), Qt::LeftButton);
    window.enter(QStringLiteral("Value, ohm"), QStringLiteral("31 ohm"));
    REQUIRE(window.records()->measurements.size() == 2);
    CHECK(window.list().model()->index(0, 3).data().toString() ==
          QStringLiteral("outside, measured again"));
    CHECK(plot.isVisible());
    CHECK(plot.accessibleDescription().contains(QStringLiteral("88 ohm")));
    CHECK(plot.accessibleDescription().contains(QStringLiteral("31 ohm")));

    window.enter(QStringLiteral("New: span of the stabiliser, 2740-2746 mm"),
                 QStringLiteral("Wall, > 1.4 mm"));
    const Measurement &wall =
        *window.records()->find(Id<Measurement>{window.records()->measurements.greatestId()});
    CHECK(wall.what == "Wall");
    CHECK(wall.minimum == 1.4);
    CHECK(wall.unit == "mm");
}

} // namespace lastrivet::test
