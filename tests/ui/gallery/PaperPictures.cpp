// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/gallery/Gallery.h"

#include "tests/ui/gallery/StoresPictures.h"
#include "ui/certificate/CertificatePage.h"
#include "ui/certificate/CrossCheckView.h"
#include "ui/certificate/MajorPortionView.h"
#include "ui/certificate/PapersView.h"
#include "ui/convert/QtText.h"
#include "ui/hours/HoursPage.h"
#include "ui/prints/PrintForm.h"
#include "ui/rules/RulesDraft.h"
#include "ui/rules/RulesView.h"
#include "ui/shell/MainWindow.h"
#include "ui/shell/Page.h"
#include "ui/shell/ProjectView.h"
#include "ui/workshop/TopicView.h"
#include "ui/workshop/WorkshopPage.h"

#include <QDir>
#include <QLineEdit>
#include <QListWidget>

namespace lastrivet::test {

void Gallery::takeHours()
{
    m_window.view()->open(ui::PageId::Hours);
    auto &page = static_cast<ui::HoursPage &>(m_window.view()->page(ui::PageId::Hours));
    for (int view = 0; view < ui::hoursViewCount; ++view) {
        page.choose(ui::HoursView(view));
        take(QStringLiteral("hours-%1").arg(view));
    }
}

void Gallery::takeStores()
{
    test::takeStores(*m_window.view(), [this](const QString &name, QWidget *over) {
        take(name, over ? *over : m_window);
    });
}

void Gallery::takeWorkshop()
{
    auto &view = *m_window.view();
    view.open(ui::PageId::Workshop);
    auto &page = view.page(ui::PageId::Workshop);
    auto *topics = page.findChild<QListWidget *>();
    for (int row = 0; row < topics->count(); ++row) {
        topics->setCurrentRow(row);
        take(QStringLiteral("workshop-%1").arg(row));
    }
    page.findChild<QLineEdit *>()->setText(QStringLiteral("military"));
    take(QStringLiteral("workshop-found"));
    page.findChild<QLineEdit *>()->clear();
    topics->setCurrentRow(0);
    static_cast<ui::WorkshopPage &>(page).topic(0).ownLimitWanted(
        QStringLiteral("torque 8-36 tension"), QStringLiteral("in-lb"));
    take(QStringLiteral("workshop-own-limit"));
}

void Gallery::takeCertificate()
{
    auto &view = *m_window.view();
    view.open(ui::PageId::Certificate);
    auto &page = static_cast<ui::CertificatePage &>(view.page(ui::PageId::Certificate));
    for (const CertificateDocument &document : view.session().records()->certificate_documents)
        page.showRecord({RecordType::CertificateDocument, document.id.value()});
    take(QStringLiteral("certificate-document"));
    page.open(page.crossCheck());
    take(QStringLiteral("certificate-facts"));
    page.open(page.majorPortion());
    take(QStringLiteral("certificate-portion"));
    page.open(page.rules());
    take(QStringLiteral("certificate-rules"));
    Profile wrong = page.rules().draft().profile();
    wrong.documents.emplace_back();
    page.rules().draft().begin(wrong);
    press(QStringLiteral("Show it"));
    take(QStringLiteral("certificate-rules-wrong"));
    page.open(page.papers());
}

void Gallery::takeWeighing()
{
    auto &view = *m_window.view();
    for (const RecordType type :
         {RecordType::Weighing, RecordType::Equipment, RecordType::Envelope, RecordType::Flight}) {
        view.goTo({type, 0});
        take(QStringLiteral("certificate-") + ui::toQt(word(type)));
    }
}

void Gallery::takePrints()
{
    m_window.view()->putCaptureAway();
    for (int kind = 0; kind < ui::printKindCount; ++kind) {
        m_window.printForm().open(m_window.view()->session(), ui::PrintKind(kind));
        take(QStringLiteral("print-%1").arg(kind));
    }
    m_window.printForm().hide();
}

void Gallery::makePapers()
{
    for (const ui::PrintKind kind : {ui::PrintKind::MajorPortion, ui::PrintKind::FinalFile}) {
        ui::PrintWish wish;
        wish.kind = kind;
        wish.choices = ui::usualChoices();
        wish.file = QDir(m_folder).filePath(QStringLiteral("paper-%1.pdf").arg(int(kind)));
        ui::carryOut(m_window.view()->session(), wish);
    }
}

} // namespace lastrivet::test
