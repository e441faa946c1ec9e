// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/PageList.h"

#include "ui/certificate/CertificatePage.h"
#include "ui/closings/ClosingsPage.h"
#include "ui/daylog/LogPage.h"
#include "ui/hours/HoursPage.h"
#include "ui/journal/JournalPage.h"
#include "ui/parts/PartsPage.h"
#include "ui/photos/PhotosPage.h"
#include "ui/squawks/SquawksPage.h"
#include "ui/stores/StoresPage.h"
#include "ui/today/TodayPage.h"
#include "ui/workshop/WorkshopPage.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <vector>

namespace lastrivet::ui {

namespace {

template <class AnyPage> Page *make(Session &session, QWidget *parent)
{
    return new AnyPage(session, parent);
}

} // namespace

QString PageDescription::name() const
{
    return QCoreApplication::translate("Page", title);
}

QChar PageDescription::key() const
{
    if (id == PageId::Workshop)
        return QLatin1Char('T');
    return QLatin1Char(char('0' + (int(id) + 1) % 10));
}

std::span<const PageDescription> pageList()
{
    static const std::array<PageDescription, pageCount> list{{
        {PageId::Today, QT_TRANSLATE_NOOP("Page", "Today"), QStringLiteral("pages/today"),
         make<TodayPage>},
        {PageId::Parts, QT_TRANSLATE_NOOP("Page", "Parts"), QStringLiteral("pages/parts"),
         make<PartsPage>},
        {PageId::Log, QT_TRANSLATE_NOOP("Page", "Log"), QStringLiteral("pages/log"), make<LogPage>},
        {PageId::Squawks, QT_TRANSLATE_NOOP("Page", "Squawks"), QStringLiteral("pages/squawks"),
         make<SquawksPage>},
        {PageId::Closings, QT_TRANSLATE_NOOP("Page", "Closings"), QStringLiteral("pages/closings"),
         make<ClosingsPage>},
        {PageId::Photos, QT_TRANSLATE_NOOP("Page", "Photos"), QStringLiteral("pages/photos"),
         make<PhotosPage>},
        {PageId::Stores, QT_TRANSLATE_NOOP("Page", "Stores"), QStringLiteral("pages/stores"),
         make<StoresPage>},
        {PageId::Hours, QT_TRANSLATE_NOOP("Page", "Hours"), QStringLiteral("pages/hours"),
         make<HoursPage>},
        {PageId::Certificate, QT_TRANSLATE_NOOP("Page", "Certificate"),
         QStringLiteral("pages/certificate"), make<CertificatePage>},
        {PageId::Journal, QT_TRANSLATE_NOOP("Page", "Journal"), QStringLiteral("pages/journal"),
         make<JournalPage>},
        {PageId::Workshop, QT_TRANSLATE_NOOP("Page", "Workshop"), QStringLiteral("pages/workshop"),
         make<WorkshopPage>},
    }};
    return list;
}

PageId pageFor(RecordType type)
{
    using enum RecordType;
    struct Shown {
        PageId page;
        std::vector<RecordType> types;
    };
    static const std::array shown{
        Shown{PageId::Parts, {Component, Step, Deviation, Bulletin, Fastener, Measurement}},
        Shown{PageId::Log, {WorkSession}},
        Shown{PageId::Squawks, {Squawk}},
        Shown{PageId::Closings, {Closing, HoldPoint, Check, Inspection, SignOff}},
        Shown{PageId::Photos, {Media}},
        Shown{PageId::Stores, {Tool, PartLine, MaterialLot, MaterialUse, Expense}},
        Shown{PageId::Hours, {Person}},
        Shown{PageId::Certificate,
              {Project, CreditTask, Equipment, Weighing, LoadingCase, Envelope, CertificateDocument,
               Flight}},
    };
    for (const Shown &each : shown) {
        if (std::ranges::find(each.types, type) != each.types.end())
            return each.page;
    }
    return PageId::Today;
}

} // namespace lastrivet::ui
