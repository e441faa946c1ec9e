// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/closings/CloseForm.h"
#include "ui/closings/HoldPointForm.h"
#include "ui/closings/NewClosingForm.h"
#include "ui/closings/ReasonForm.h"
#include "ui/closings/SignOffForm.h"

#include <QLineEdit>

#include <catch2/catch.hpp>

#include <functional>
#include <memory>

// A form is used for one record after the other: Ctrl+Z in it must not bring words back that were
// typed about another one.
namespace lastrivet::ui {

namespace {

struct Forms {
    test::Workshop workshop;
    std::unique_ptr<Session> session = workshop.session();

    const Closing &closing() const { return *session->records()->find(workshop.wingClosing); }
    const HoldPoint &point() const
    {
        const auto records = session->records();
        return *records->find(
            test::Workshop::point(*records, workshop.wingClosing, HoldPointKind::PreCover));
    }
};

void checkAfresh(QWidget &form, const QString &name, const std::function<void()> &start)
{
    start();
    test::picture(form, 600, 500, "form-afresh");
    QLineEdit &line = test::field(form, name);
    line.insert(QStringLiteral("about another one"));
    REQUIRE(line.isUndoAvailable());
    start();
    CHECK(line.text().isEmpty());
    CHECK_FALSE(line.isUndoAvailable());
}

} // namespace

TEST_CASE("Undo brings no words of an earlier reason, signature, closing or hold point back")
{
    Forms forms;
    const auto &session = forms.session;
    ReasonForm reason(*session);
    checkAfresh(reason, QStringLiteral("Reason"), [&] { reason.startWaiving(forms.point()); });
    SignOffForm signature(*session);
    checkAfresh(signature, QStringLiteral("Remarks"), [&] { signature.startFor(forms.point()); });
    CloseForm closing(*session);
    checkAfresh(closing, QStringLiteral("Reason"), [&] { closing.startClosing(forms.closing()); });
    HoldPointForm point(*session);
    checkAfresh(point, QStringLiteral("Source"), [&] { point.start(forms.workshop.wingClosing); });
    NewClosingForm made(*session);
    checkAfresh(made, QStringLiteral("Title"), [&] { made.start(forms.workshop.wing); });
    checkAfresh(made, QStringLiteral("How"), [&] { made.start(forms.workshop.wing); });
}

} // namespace lastrivet::ui
