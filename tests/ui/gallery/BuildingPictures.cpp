// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/gallery/Gallery.h"

#include "ui/closings/ClosingView.h"
#include "ui/closings/ClosingsPage.h"
#include "ui/closings/FindingRows.h"
#include "ui/closings/VisitBoard.h"
#include "ui/closings/VisitForm.h"
#include "ui/convert/QtText.h"
#include "ui/daylog/EntryEdit.h"
#include "ui/daylog/LogbookForm.h"
#include "ui/photos/PhotoBar.h"
#include "ui/photos/PhotoGrid.h"
#include "ui/photos/PhotosPage.h"
#include "ui/photos/PictureView.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/Page.h"
#include "ui/shell/ProjectView.h"

#include <QRadioButton>

#include <algorithm>

namespace lastrivet::test {

void Gallery::takeParts()
{
    auto &view = *m_window.view();
    const auto records = view.session().records();
    for (const Step &step : records->steps) {
        if (!step.withdrawn_on && !step.after.empty()) {
            view.goTo({RecordType::Step, step.id.value()});
            break;
        }
    }
    press(QStringLiteral("Drawn"));
    take(QStringLiteral("parts-drawn"));
    press(QStringLiteral("Drawn"));
    if (!records->deviations.isEmpty())
        view.goTo({RecordType::Deviation, records->deviations.begin()->id.value()});
    take(QStringLiteral("parts-deviation"));
    for (const Fastener &fastener : records->fasteners) {
        if (fastener.withdrawn_on || !fastener.fitted_on || fastener.torqued_on ||
            !fastener.torque_max)
            continue;
        view.goTo({RecordType::Fastener, fastener.id.value()});
        take(QStringLiteral("parts-fasteners"));
        break;
    }
    for (const Measurement &measurement : records->measurements) {
        if (measurement.what != "Right sender, full")
            continue;
        view.goTo({RecordType::Measurement, measurement.id.value()});
        take(QStringLiteral("parts-measurements"));
        break;
    }
    press(QStringLiteral("The whole aircraft"));
    take(QStringLiteral("parts-whole"));
    if (records->components.isEmpty())
        return;
    view.goTo({RecordType::Component, records->components.begin()->id.value()});
    press(QStringLiteral("Copy…"));
    take(QStringLiteral("parts-copy"));
    press(QStringLiteral("Cancel"));
}

void Gallery::takeBench()
{
    m_window.toggleBench();
    take(QStringLiteral("bench"));
    m_window.toggleBench();
}

void Gallery::takeLog()
{
    m_window.view()->open(ui::PageId::Log);
    auto &line = *m_window.view()->findChild<ui::EntryEdit *>();
    line.setText(QStringLiteral("yesterday 1h31 LF + RF with Irja 45m paid, done 99: primed"));
    take(QStringLiteral("log-typed"));
    line.clear();
    m_window.view()->session().setTimer(RunningTimer{m_window.view()->session().now(), {}, {}, {}});
    m_window.view()->findChild<ui::LogbookForm *>()->start();
    take(QStringLiteral("log-clock"));
    m_window.view()->open(ui::PageId::Today);
    take(QStringLiteral("today-clock"));
    m_window.view()->session().setTimer(std::nullopt);
}

void Gallery::takePhotos()
{
    m_window.view()->open(ui::PageId::Photos);
    auto *page = static_cast<ui::PhotosPage *>(&m_window.view()->page(ui::PageId::Photos));
    auto *bar = page->findChild<ui::PhotoBar *>();
    bar->choose(ui::PhotoBar::Which::Missing);
    take(QStringLiteral("photos-missing"));
    bar->choose(ui::PhotoBar::Which::All);
    bar->chooseOrder(ui::PhotoOrder::ByPart);
    take(QStringLiteral("photos-by-part"));
    for (const Media &media : m_window.view()->session().records()->media) {
        if (media.annotations.empty())
            continue;
        page->showRecord({RecordType::Media, media.id.value()});
        auto *grid = page->findChild<ui::PhotoGrid *>();
        Q_EMIT grid->activated(grid->currentIndex());
        take(QStringLiteral("photos-open"));
        page->findChild<ui::PictureView *>()->marks().choose(0);
        take(QStringLiteral("photos-mark-chosen"));
        break;
    }
}

void Gallery::takeCapture()
{
    m_window.view()->open(ui::PageId::Parts);
    m_window.view()->startSquawk();
    take(QStringLiteral("squawk-capture"));
}

void Gallery::takeClosings()
{
    const auto answer = m_window.view()->session().answer();
    for (std::size_t i = 0; i < Words<readiness::State>::list.size(); ++i) {
        for (const auto &closing : answer->closings) {
            if (closing.state != readiness::State(i) || !closing.begun)
                continue;
            m_window.view()->goTo({RecordType::Closing, closing.id.value()});
            take(QStringLiteral("closing-") + ui::toQt(word(closing.state)));
            break;
        }
    }
}

void Gallery::takeInspection()
{
    m_window.view()->open(ui::PageId::Closings);
    auto *page = m_window.findChild<ui::ClosingsPage *>();
    auto &session = m_window.view()->session();
    page->showVisits();
    IdSet<Closing> picked;
    for (const auto &row : session.answer()->visit_plan)
        picked.push_back(row.closing);
    picked.resize(std::min<std::size_t>(picked.size(), 2));
    std::ranges::sort(picked);
    page->visits().pick(picked);
    take(QStringLiteral("inspection-plan"));
    page->startPacket(picked);
    take(QStringLiteral("inspection-packet"));
    page->startVisit(picked);
    take(QStringLiteral("inspection-ask"));
    for (auto *choice : page->visit().findChildren<QRadioButton *>())
        choice->click();
    page->visit().findings().takeLines(QStringLiteral(
        "1. Chafed wire behind the rib\n2. Drain hole is blocked\n3. Jam nut is loose"));
    take(QStringLiteral("inspection-held"));
    for (const Inspection &visit : session.records()->inspections) {
        page->showInspection(visit.id);
        take(QStringLiteral("inspection-%1").arg(visit.id.value()));
    }
    takeOpening(*page);
}

void Gallery::takeOpening(ui::ClosingsPage &page)
{
    for (const auto &closing : m_window.view()->session().answer()->closings) {
        if (closing.state != readiness::State::Closed)
            continue;
        page.showRecord({RecordType::Closing, closing.id.value()});
        page.view().startClosing();
        take(QStringLiteral("inspection-opening"));
        return;
    }
}

} // namespace lastrivet::test
