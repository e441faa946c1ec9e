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
#include "ui/shell/RecordsPage.h"
#include "ui/squawks/SquawksPage.h"
#include "ui/stores/StoresPage.h"
#include "ui/today/TodayPage.h"
#include "ui/workshop/WorkshopPage.h"

#include <QCoreApplication>

#include <array>

namespace lastrivet::ui {

namespace {

template <class AnyPage> Page *make(Session &session, QWidget *parent)
{
    return new AnyPage(session, parent);
}

/// A page that lists records of some types without more.
template <RecordType... types> Page *makeRecords(Session &session, QWidget *parent)
{
    return new RecordsPage(session, {types...}, parent);
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
    using enum RecordType;
    static const std::array<PageDescription, 11> list{{
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
         QStringLiteral("pages/certificate"),
         make<CertificatePage>},
        {PageId::Journal, QT_TRANSLATE_NOOP("Page", "Journal"), QStringLiteral("pages/journal"),
         make<JournalPage>},
        {PageId::Workshop, QT_TRANSLATE_NOOP("Page", "Workshop"),
         QStringLiteral("pages/workshop"), make<WorkshopPage>},
    }};
    return list;
}

PageId pageFor(RecordType type)
{
    switch (type) {
    case RecordType::Project:
    case RecordType::CreditTask:
    case RecordType::Equipment:
    case RecordType::Weighing:
    case RecordType::LoadingCase:
    case RecordType::Envelope:
    case RecordType::CertificateDocument:
    case RecordType::Flight:
        return PageId::Certificate;
    case RecordType::Person:
        return PageId::Hours;
    case RecordType::WorkSession:
        return PageId::Log;
    case RecordType::Closing:
    case RecordType::HoldPoint:
    case RecordType::Check:
    case RecordType::Inspection:
    case RecordType::SignOff:
        return PageId::Closings;
    case RecordType::Squawk:
        return PageId::Squawks;
    case RecordType::Media:
        return PageId::Photos;
    case RecordType::Tool:
    case RecordType::PartLine:
    case RecordType::MaterialLot:
    case RecordType::MaterialUse:
    case RecordType::Expense:
        return PageId::Stores;
    case RecordType::Component:
    case RecordType::Step:
    case RecordType::Deviation:
    case RecordType::Bulletin:
    case RecordType::Fastener:
    case RecordType::Measurement:
        return PageId::Parts;
    }
    return PageId::Today;
}

} // namespace lastrivet::ui
