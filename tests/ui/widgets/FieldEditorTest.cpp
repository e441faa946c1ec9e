// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/FieldEditor.h"

#include "tests/ui/support/Workshop.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordForm.h"

#include <QLineEdit>
#include <QLocale>
#include <QTest>

#include <catch2/catch.hpp>

#include <string_view>

namespace lastrivet::ui {

TEST_CASE("What is no whole number is called that, and two readings of one are both said")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    QString complained;
    Id<PartLine> line;
    Id<Fastener> bolt;
    REQUIRE(session->change(QStringLiteral("Bolts"), [&](Edit &edit) {
        PartLine listed;
        listed.name = "Bolts";
        listed.quantity = 4;
        line = edit.put(listed);
        Fastener fitted;
        fitted.component_id = workshop.bay;
        fitted.place = "Hinge";
        bolt = edit.put(fitted);
    }));
    const auto type = [&](RecordType of, std::int64_t id, const char *field, const char *text) {
        RecordForm form(*session, of, {{std::string_view(field)}});
        QObject::connect(session.get(), &Session::complained, &form,
                         [&](const QString &sentence) { complained = sentence; });
        form.show(id);
        test::picture(form, 300, 100, "record-form-number");
        auto *number = form.findChild<QLineEdit *>();
        number->selectAll();
        QTest::keyClicks(number, QString::fromUtf8(text));
        form.settle();
    };
    type(RecordType::PartLine, line.value(), "quantity", "2.5");
    CHECK(complained == QStringLiteral("“2.5” is no whole number."));
    CHECK(session->records()->find(line)->quantity == 4);
    const QLocale before;
    QLocale::setDefault(QLocale(QStringLiteral("de_DE")));
    type(RecordType::Fastener, bolt.value(), "torque_max", "1.250");
    CHECK(complained ==
          QStringLiteral("“1.250” may be 1250 or 1,250; write 1250 when that is meant."));
    type(RecordType::PartLine, line.value(), "unit_price", "1,789 EUR");
    CHECK(complained == QStringLiteral("“1,789 EUR” has more decimals than EUR has."));
    type(RecordType::PartLine, line.value(), "unit_price", "1.789 EUR");
    QLocale::setDefault(before);
    CHECK(session->records()->find(line)->unit_price == 178900);
    CHECK_FALSE(session->records()->find(bolt)->torque_max.has_value());
}

TEST_CASE("A lot that is marked with a month is good to its last day, which the field then shows")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    Id<MaterialLot> sealant;
    REQUIRE(session->change(QStringLiteral("Sealant"), [&](Edit &edit) {
        MaterialLot lot;
        lot.name = "Sealant";
        sealant = edit.put(lot);
    }));
    QString complained;
    QString shown;
    const auto type = [&](const char *text) {
        RecordForm form(*session, RecordType::MaterialLot, {{std::string_view("expires_on")}});
        QObject::connect(session.get(), &Session::complained, &form,
                         [&](const QString &sentence) { complained = sentence; });
        form.show(sealant.value());
        test::picture(form, 300, 100, "record-form-expiry");
        auto *line = form.findChild<QLineEdit *>();
        line->setText(QString::fromUtf8(text));
        line->setModified(true);
        form.settle();
        form.show(sealant.value());
        shown = line->text();
        const auto day = session->records()->find(sealant)->expires_on;
        return day ? day->text() : std::string();
    };
    CHECK(type("03/2027") == "2027-03-31");
    CHECK(shown == dateText(*Moment::parse("2027-03-31")));
    CHECK(type("FEB 2028") == "2028-02-29");
    CHECK(type("2027-04") == "2027-04-30");
    CHECK(type("Mar 27") == "2027-04-30");
    CHECK(complained == QStringLiteral("“Mar 27” does not say for certain which year is meant; "
                                       "write a day as 2026-03-14, or a month as 03/2027."));
    CHECK(type("03/27") == "2027-04-30");
    CHECK(complained == QStringLiteral("“03/27” is no day; write it as 2026-03-14, or a month as "
                                       "03/2027, which is read as its last day."));
    CHECK(type("15 Mar 2027") == "2027-03-15");
}

TEST_CASE("A weight of equipment may be typed with its unit, and in another it is asked about")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    Id<Equipment> battery;
    REQUIRE(session->change(QStringLiteral("A battery"), [&](Edit &edit) {
        Equipment item;
        item.name = "Battery";
        item.weight_unit = WeightUnit::Pounds;
        item.arm_unit = ArmUnit::Inches;
        battery = edit.put(item);
    }));
    QString complained;
    const auto type = [&](const char *field, const char *text) {
        RecordForm form(*session, RecordType::Equipment, {{std::string_view(field)}});
        QObject::connect(session.get(), &Session::complained, &form,
                         [&](const QString &sentence) { complained = sentence; });
        form.show(battery.value());
        test::picture(form, 300, 100, "record-form-weight");
        auto *line = form.findChild<QLineEdit *>();
        line->setText(QString::fromUtf8(text));
        line->setModified(true);
        form.settle();
        return *session->records()->find(battery);
    };
    CHECK(type("weight", "9,7 lb").weight == 9.7);
    CHECK(type("weight", "4,4 kg").weight == 9.7);
    CHECK(complained == QStringLiteral("“4,4 kg” is not in lb: write it in lb, or choose the other "
                                       "unit first."));
    CHECK(type("arm", "48 1/2").arm == 48.5);
    CHECK(type("arm", "68.9\"").arm == 68.9);
}

TEST_CASE("A currency is typed by its code, name or sign, and the amount stays what it is")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    Id<Expense> paid;
    REQUIRE(session->change(QStringLiteral("Paid"), [&](Edit &edit) {
        Expense expense;
        expense.what = "Freight";
        expense.spent_on = edit.today();
        expense.amount = 10000;
        expense.currency = "CAD";
        paid = edit.put(expense);
    }));
    QString complained;
    const auto type = [&](const char *text) {
        RecordForm form(*session, RecordType::Expense, {{std::string_view("currency")}});
        QObject::connect(session.get(), &Session::complained, &form,
                         [&](const QString &sentence) { complained = sentence; });
        form.show(paid.value());
        test::picture(form, 300, 100, "record-form-currency");
        auto *line = form.findChild<QLineEdit *>();
        line->setText(QString::fromUtf8(text));
        line->setModified(true);
        form.settle();
        return *session->records()->find(paid);
    };
    CHECK(type("Euro").currency == "EUR");
    CHECK(type("chf").currency == "CHF");
    CHECK(type("€").amount == 10000);
    CHECK(type("jpy").amount == 100);
    CHECK(type("CAD").amount == 10000);
    CHECK(type("money").currency == "CAD");
    CHECK(complained == QStringLiteral("“money” is no currency; write its code, like EUR."));
    REQUIRE(session->change(QStringLiteral("Cents"), [&](Edit &edit) {
        edit.update(paid, [](Expense &expense) { expense.amount = 10050; });
    }));
    CHECK(type("JPY").currency == "CAD");
    CHECK(complained == QStringLiteral("The amount has more decimals than JPY."));
}

TEST_CASE("A time in a field may be typed as it is shown there")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    Id<WorkSession> evening;
    REQUIRE(session->change(QStringLiteral("An evening"), [&](Edit &edit) {
        WorkSession worked;
        worked.component_id = workshop.bay;
        worked.began = Moment::parse("2026-03-12T08:15");
        worked.minutes = Minutes{60};
        evening = edit.put(worked);
    }));
    const auto type = [&](const QString &text) {
        RecordForm form(*session, RecordType::WorkSession, {{std::string_view("began")}});
        form.show(evening.value());
        test::picture(form, 300, 100, "record-form-moment");
        auto *line = form.findChild<QLineEdit *>();
        line->selectAll();
        QTest::keyClicks(line, text);
        form.settle();
        return session->records()->find(evening)->began;
    };
    CHECK(type(dateText(*Moment::parse("2026-03-12T09:45"))) == Moment::parse("2026-03-12T09:45"));
    CHECK(type(QStringLiteral("2026-03-12 7:30")) == Moment::parse("2026-03-12T07:30"));
    CHECK(type(QStringLiteral("yesterday 19:00")) == Moment::parse("2026-03-13T19:00"));
    CHECK(type(QStringLiteral("yesterday")) == Moment::parse("2026-03-13"));
}

} // namespace lastrivet::ui
