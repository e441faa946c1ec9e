// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"

#include <QString>

#include <cstddef>
#include <span>

class QWidget;

namespace lastrivet::ui {

class Page;
class Session;

/// The pages, in the order of the rail; Ctrl+1 opens the first, Ctrl+0 the tenth, and Ctrl+T the
/// tables of the workshop.
enum class PageId {
    Today,
    Parts,
    Log,
    Squawks,
    Closings,
    Photos,
    Stores,
    Hours,
    Certificate,
    Journal,
    Workshop,
};

inline constexpr std::size_t pageCount = std::size_t(PageId::Workshop) + 1;

/// What the window knows of a page before it is made.
struct PageDescription {
    PageId id;
    /// In English; translated in the context "Page".
    const char *title;
    /// Of resources/icons.
    QString icon;
    Page *(*make)(Session &session, QWidget *parent);

    QString name() const;
    /// The key that opens the page together with Ctrl.
    QChar key() const;
};

/// Every page, in the order of `PageId`.
std::span<const PageDescription> pageList();

/// The page that shows records of a type.
PageId pageFor(RecordType type);

} // namespace lastrivet::ui
