// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/AirframePicture.h"

#include "tests/ui/support/ModelWatch.h"
#include "tests/ui/support/Workshop.h"
#include "ui/convert/QtText.h"

#include <QAccessible>
#include <QPainter>
#include <QSignalSpy>
#include <QTest>
#include <QtSvg/QSvgRenderer>

#include <algorithm>
#include <set>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

namespace {

using airframe::AircraftKind;
using airframe::Zone;

constexpr AircraftKind kinds[] = {AircraftKind::HighWing, AircraftKind::LowWing,
                                  AircraftKind::Biplane, AircraftKind::Canard};

std::vector<ZoneRow> rowsOf(AircraftKind kind)
{
    std::vector<ZoneRow> rows;
    const auto drawn = airframe::zonesDrawn(kind);
    for (std::size_t i = 0; i < Words<Zone>::list.size(); ++i) {
        if (!drawn.contains(Zone(i)))
            continue;
        airframe::ZoneStanding standing;
        standing.zone = Zone(i);
        standing.part = Id<Component>{std::int64_t(100 + i)};
        rows.push_back({standing, toQt(word(Zone(i))), QStringLiteral("not begun")});
    }
    return rows;
}

int rowOf(const AirframePicture &picture, Zone zone)
{
    return picture.zones().rowOf(zone);
}

/// A point that only the zone covers, on the widget.
QPoint pointIn(const AirframePicture &picture, Zone zone)
{
    const QModelIndex index = picture.zones().index(rowOf(picture, zone));
    const QRect place = picture.visualRect(index);
    for (int y = place.top() + 2; y < place.bottom(); ++y) {
        for (int x = place.left() + 2; x < place.right(); ++x) {
            if (picture.indexAt({x, y}) == index)
                return {x, y};
        }
    }
    return {};
}

} // namespace

TEST_CASE("Each drawing has exactly the zones of its kind")
{
    for (const auto kind : kinds) {
        INFO(word(kind));
        std::set<Zone> shapes;
        const AirframeDrawing drawing(kind);
        for (const auto &shape : drawing.shapes())
            shapes.insert(shape.zone);
        for (std::size_t i = 0; i < Words<Zone>::list.size(); ++i) {
            INFO(word(Zone(i)));
            CHECK(shapes.contains(Zone(i)) == airframe::zonesDrawn(kind).contains(Zone(i)));
        }
        CHECK_FALSE(AirframeDrawing(kind).lines().isEmpty());
    }
}

TEST_CASE("The drawings are read as Qt's own reader of SVG reads them")
{
    for (const auto kind : kinds) {
        const AirframeDrawing drawing(kind);
        QSvgRenderer renderer(AirframeDrawing::file(kind));
        REQUIRE(renderer.isValid());
        CHECK(QSizeF(renderer.defaultSize()) == drawing.size());
        std::set<Zone> seen;
        for (const auto &shape : drawing.shapes()) {
            QString id = toQt(word(shape.zone));
            if (!renderer.elementExists(id) || !seen.insert(shape.zone).second)
                id += QLatin1String("_side");
            INFO(word(kind) << ' ' << id.toStdString());
            REQUIRE(renderer.elementExists(id));
            // Its bounds take in half of the outline.
            const QRectF bounds = renderer.boundsOnElement(id).adjusted(1, 1, -1, -1);
            const QRectF ours = shape.path.boundingRect();
            CHECK(std::abs(bounds.left() - ours.left()) < 1.6);
            CHECK(std::abs(bounds.right() - ours.right()) < 1.6);
            CHECK(std::abs(bounds.top() - ours.top()) < 1.6);
            CHECK(std::abs(bounds.bottom() - ours.bottom()) < 1.6);
        }
    }
}

TEST_CASE("Arrow keys walk through every zone, and Enter goes to its part")
{
    for (const auto kind : kinds) {
        AirframePicture picture(test::theme());
        picture.show(kind, rowsOf(kind));
        test::picture(picture, 360, picture.heightForWidth(360),
                      "airframe-" + std::string(word(kind)));
        QSignalSpy chosen(&picture, &AirframePicture::chosen);
        picture.setFocus();
        QTest::keyClick(&picture, Qt::Key_Home);
        std::set<int> visited;
        for (int i = 0; i < picture.zones().rowCount(); ++i) {
            visited.insert(picture.currentIndex().row());
            QTest::keyClick(&picture, Qt::Key_Return);
            QTest::keyClick(&picture, Qt::Key_Right);
        }
        CHECK(int(visited.size()) == picture.zones().rowCount());
        CHECK(chosen.size() == picture.zones().rowCount());
    }
}

TEST_CASE("A click goes to the part of the zone under the mouse, and the mouse says what it is")
{
    AirframePicture picture(test::theme());
    picture.show(AircraftKind::LowWing, rowsOf(AircraftKind::LowWing));
    test::picture(picture, 400, picture.heightForWidth(400), "airframe-click");
    QSignalSpy chosen(&picture, &AirframePicture::chosen);
    QSignalSpy lookedAt(&picture, &AirframePicture::lookedAt);
    for (const auto zone : {Zone::LeftWing, Zone::RightTank, Zone::LeftAileron, Zone::Rudder,
                            Zone::Cockpit, Zone::NoseWheel}) {
        INFO(word(zone));
        const QPoint point = pointIn(picture, zone);
        REQUIRE_FALSE(point.isNull());
        QTest::mouseMove(picture.viewport(), point);
        QTest::mouseClick(picture.viewport(), Qt::LeftButton, {}, point);
        REQUIRE(chosen.size() == 1);
        CHECK(chosen.takeFirst().front().value<RecordRef>().id == 100 + std::int64_t(zone));
    }
    CHECK_FALSE(lookedAt.isEmpty());
    // The left wing is at the left, seen from above with the nose up.
    CHECK(pointIn(picture, Zone::LeftWing).x() < pointIn(picture, Zone::RightWing).x());
    QTest::mouseClick(picture.viewport(), Qt::LeftButton, {}, QPoint(2, 2));
    CHECK(chosen.isEmpty());
}

TEST_CASE("Screen readers hear each zone with its state")
{
    AirframePicture picture(test::theme());
    picture.show(AircraftKind::Biplane, rowsOf(AircraftKind::Biplane));
    picture.show(AircraftKind::Biplane, rowsOf(AircraftKind::Biplane));
    test::ModelWatch watch(*const_cast<ZoneModel *>(&picture.zones()));
    auto *interface = QAccessible::queryAccessibleInterface(&picture);
    REQUIRE(interface);
    CHECK_FALSE(interface->text(QAccessible::Name).isEmpty());
    const auto zone = picture.zones().index(rowOf(picture, Zone::LowerLeftWing));
    CHECK(zone.data(Qt::AccessibleTextRole).toString() ==
          QStringLiteral("lower_left_wing, not begun"));
    // Another drawing has other zones.
    picture.show(AircraftKind::Canard, rowsOf(AircraftKind::Canard));
    CHECK(rowOf(picture, Zone::LowerLeftWing) == -1);
    watch.check();
}

} // namespace lastrivet::ui
