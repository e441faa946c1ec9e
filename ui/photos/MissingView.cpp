// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/MissingView.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/RowListView.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <initializer_list>

namespace lastrivet::ui {

MissingView::MissingView(Session &session, QWidget *parent)
    : QScrollArea(parent)
    , m_session(session)
    , m_nothing(new QLabel(this))
    , m_closingsHeading(new QLabel(this))
    , m_closings(nullptr)
    , m_partsHeading(new QLabel(this))
    , m_parts(nullptr)
    , m_unassigned(new QPushButton(this))
{
    build();
}

void MissingView::build()
{
    setWidgetResizable(true);
    setAccessibleName(tr("What is missing"));
    setFocusPolicy(Qt::NoFocus);
    auto *all = new QWidget(this);
    auto *layout = new QVBoxLayout(all);
    layout->setContentsMargins(0, 8, 8, 8);
    m_nothing->setWordWrap(true);
    m_nothing->setText(tr("No open closing and no part that will be hidden lacks photographs on "
                          "record."));
    layout->addWidget(m_nothing);
    m_closings = addList(layout, m_closingsHeading, tr("Closings that lack photographs"));
    layout->addSpacing(12);
    m_parts = addList(layout, m_partsHeading, tr("Parts that lack photographs"));
    layout->addSpacing(12);
    layout->addWidget(m_unassigned, 0, Qt::AlignLeft);
    layout->addStretch(1);
    setWidget(all);
    connect(m_unassigned, &QPushButton::clicked, this, &MissingView::unassignedWanted);
}

RowListView *MissingView::addList(QVBoxLayout *layout, QLabel *heading, const QString &name)
{
    heading->setFont(m_session.theme().font(1));
    heading->setWordWrap(true);
    auto *list = new RowListView(m_session.theme(), name, this);
    layout->addWidget(heading);
    layout->addWidget(list);
    connect(list, &RowListView::chosen, this, [this](RecordRef record) { m_session.goTo(record); });
    connect(list, &RowListView::acted, this, &MissingView::takeInWanted);
    return list;
}

QString MissingView::actionWords() const
{
    return m_session.isReadOnly() ? QString() : tr("Take photos in");
}

QString MissingView::reasons(const readiness::MissingPictures::OfClosing &lacking) const
{
    const int wanted = int(m_session.project().profile().interior_photos);
    const QString have = lacking.have == 0
                             ? tr("no photograph of the inside")
                             : tr("%n photographs of the inside", nullptr, int(lacking.have));
    QStringList said;
    for (const auto rule : lacking.rules)
        said << (rule == readiness::Rule::TooFewPhotos
                     ? tr("%1, %2 are asked for").arg(have).arg(wanted)
                     : tr("work was done after the latest photograph"));
    return said.join(QStringLiteral("; "));
}

std::vector<ListRow> MissingView::closingRows(const readiness::MissingPictures &missing) const
{
    const auto records = m_session.records();
    std::vector<ListRow> rows;
    // An answer of an older snapshot may name closings and parts that are gone by now.
    for (const auto &lacking : missing.closings) {
        if (const Closing *closing = records->findLive(lacking.closing))
            rows.push_back({.record = {RecordType::Closing, lacking.closing.value()},
                            .title = toQt(closing->title),
                            .detail = reasons(lacking),
                            .action = actionWords()});
    }
    return rows;
}

std::vector<ListRow> MissingView::partRows(const readiness::MissingPictures &missing) const
{
    const auto records = m_session.records();
    std::vector<ListRow> rows;
    for (const Id<Component> id : missing.parts) {
        if (const Component *part = records->findLive(id))
            rows.push_back({.record = {RecordType::Component, id.value()},
                            .title = partName(*records, id),
                            .detail = partName(*records, part->parent_id),
                            .action = actionWords()});
    }
    return rows;
}

void MissingView::show(const readiness::MissingPictures &missing)
{
    auto closings = closingRows(missing);
    auto parts = partRows(missing);
    m_closingsHeading->setText(
        tr("%n closings lack photographs of the open structure", nullptr, int(closings.size())));
    m_partsHeading->setText(tr("%n parts were worked on, will be hidden, and have no photograph "
                               "of the inside",
                               nullptr, int(parts.size())));
    m_closingsHeading->setVisible(!closings.empty());
    m_closings->setVisible(!closings.empty());
    m_partsHeading->setVisible(!parts.empty());
    m_parts->setVisible(!parts.empty());
    m_nothing->setVisible(closings.empty() && parts.empty());
    m_closings->setRows(std::move(closings));
    m_parts->setRows(std::move(parts));
    m_unassigned->setText(tr("Show %n photos that belong to no part and no closing", nullptr,
                             int(missing.unassigned.size())));
    m_unassigned->setVisible(!missing.unassigned.empty());
}

QWidget *MissingView::firstFocus()
{
    for (QWidget *place : std::initializer_list<QWidget *>{m_closings, m_parts, m_unassigned}) {
        if (!place->isHidden())
            return place;
    }
    return this;
}

} // namespace lastrivet::ui
