// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/support/Workshop.h"
#include "ui/shell/Session.h"

#include <catch2/catch.hpp>

#include <QStringList>
#include <QTest>

#include <memory>

namespace lastrivet::test {

/// A page of the workshop while somebody else has the project open for writing, and what the
/// session complains of.
template <class Page> struct ReadOnlyPage {
    ReadOnlyPage()
    {
        REQUIRE(session->isReadOnly());
        QObject::connect(session.get(), &ui::Session::complained, &page,
                         [this](const QString &words) { complaints.append(words); });
        page.resize(1100, 680);
        page.show();
        REQUIRE(QTest::qWaitForWindowExposed(&page));
    }

    Workshop workshop;
    std::unique_ptr<ui::Session> writer = workshop.session();
    std::unique_ptr<ui::Session> session = workshop.session();
    QStringList complaints;
    Page page{*session};
};

} // namespace lastrivet::test
