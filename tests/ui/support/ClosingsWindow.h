// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/support/Workshop.h"
#include "ui/closings/ClosingsPage.h"

#include <memory>
#include <string_view>

namespace lastrivet::test {

/// The page of closings in a window of its own.
struct ClosingsWindow {
    Workshop workshop;
    std::unique_ptr<ui::Session> session = workshop.session();
    ui::ClosingsPage page{*session};

    void open(Id<Closing> closing, std::string_view name)
    {
        page.showRecord({RecordType::Closing, closing.value()});
        picture(page, 1110, 700, name);
    }
};

} // namespace lastrivet::test
