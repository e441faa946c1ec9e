// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/gallery/StoresPictures.h"

#include "ui/convert/QtText.h"
#include "ui/lists/ListDialog.h"
#include "ui/shell/PageList.h"
#include "ui/shell/ProjectView.h"
#include "ui/stores/DeliveryBoard.h"
#include "ui/stores/MaterialBoard.h"
#include "ui/stores/StoresPage.h"
#include "ui/stores/ToolBoard.h"

namespace lastrivet::test {

namespace {

void takeDeliveries(ui::StoresPage &page, const Records &records, const TakePicture &take)
{
    for (const PartLine &line : records.part_lines) {
        if (line.withdrawn_on || line.received_quantity >= line.quantity)
            continue;
        page.showRecord({RecordType::PartLine, line.id.value()});
        page.deliveries().chooseShipment(ui::toQt(line.shipment));
        take(QStringLiteral("stores-packing-list"), nullptr);
        page.deliveries().startClaim();
        take(QStringLiteral("stores-claim"), nullptr);
        return;
    }
}

void takeMaterials(ui::StoresPage &page, const Records &records, const TakePicture &take)
{
    page.showBoard(RecordType::MaterialLot);
    take(QStringLiteral("stores-materials"), nullptr);
    if (records.material_uses.isEmpty())
        return;
    const auto last = records.material_uses.greatestId();
    page.showRecord({RecordType::MaterialUse, last});
    take(QStringLiteral("stores-lot"), nullptr);
    page.materials().startUse();
    take(QStringLiteral("stores-use"), nullptr);
}

void takeTools(ui::StoresPage &page, const Records &records, const TakePicture &take)
{
    if (records.tools.isEmpty())
        return;
    page.showRecord({RecordType::Tool, records.tools.begin()->id.value()});
    take(QStringLiteral("stores-tools"), nullptr);
    page.tools().startCalibration();
    take(QStringLiteral("stores-calibration"), nullptr);
}

void takeList(ui::ProjectView &view, ui::StoresPage &page, const TakePicture &take)
{
    ui::ListDialog list(view.session(), &page);
    list.setType(RecordType::PartLine);
    list.setShipment(QStringLiteral("Crate 4"));
    list.setText(QStringLiteral("Item;Part no;Qty;Price\nRib 7;M2-R7;2;\"41,50\"\n"
                                "Bolt;AN4-7A;12;1,95 USD\nPlate;M2-P1;-1;\n"));
    list.show();
    take(QStringLiteral("stores-list"), &list);
}

} // namespace

void takeStores(ui::ProjectView &view, const TakePicture &take)
{
    view.open(ui::PageId::Stores);
    auto &page = static_cast<ui::StoresPage &>(view.page(ui::PageId::Stores));
    const auto records = view.session().records();
    takeDeliveries(page, *records, take);
    takeMaterials(page, *records, take);
    takeTools(page, *records, take);
    page.showBoard(RecordType::Expense);
    take(QStringLiteral("stores-expenses"), nullptr);
    takeList(view, page, take);
}

} // namespace lastrivet::test
