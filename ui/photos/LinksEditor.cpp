// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/LinksEditor.h"

#include "core/project/acts/PhotoActs.h"
#include "core/records/Designation.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/photos/ShowsBar.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordLine.h"
#include "ui/widgets/RecordNames.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QStackedWidget>
#include <QStyleOptionButton>
#include <QStylePainter>
#include <QVBoxLayout>

#include <algorithm>
#include <array>
#include <cstddef>
#include <functional>

namespace lastrivet::ui {

namespace {

constexpr std::array assignable{
    RecordType::Component,   RecordType::Squawk,      RecordType::Closing,
    RecordType::Step,        RecordType::WorkSession, RecordType::Deviation,
    RecordType::Inspection,  RecordType::Bulletin,    RecordType::MaterialUse,
    RecordType::MaterialLot, RecordType::Fastener,    RecordType::Measurement};

/// More rows than these would push what can be done with the photos out of sight.
constexpr std::size_t mostRows = 6;

/// A button whose words end in dots where they have no room.
class NarrowButton final : public QPushButton {
public:
    using QPushButton::QPushButton;

protected:
    void paintEvent(QPaintEvent *) override
    {
        QStyleOptionButton option;
        initStyleOption(&option);
        const int room =
            style()->subElementRect(QStyle::SE_PushButtonContents, &option, this).width();
        option.text =
            fontMetrics().elidedText(option.text, Qt::ElideRight, room, Qt::TextShowMnemonic);
        QStylePainter(this).drawControl(QStyle::CE_PushButton, option);
    }
};

/// "squawk: 12 Dent"; what is called by its kind already is not called by it twice.
QString titleOf(const Records &records, RecordRef record)
{
    const QString kind = inWords({noun(record.type), {}});
    const QString name = shortName(records, record);
    return name.startsWith(kind + QLatin1Char(' ')) ? name
                                                    : LinksEditor::tr("%1: %2").arg(kind, name);
}

QPushButton *namedButton(const QString &words, const QString &name, QWidget *parent)
{
    auto *button = flatButton(words, parent);
    button->setAccessibleName(name);
    return button;
}

} // namespace

LinksEditor::LinksEditor(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_rows(new QVBoxLayout)
    , m_kind(new QComboBox(this))
    , m_lines(new QStackedWidget(this))
{
    m_rows->setSpacing(0);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(m_rows);
    layout->addWidget(buildAssign());
}

QWidget *LinksEditor::buildAssign()
{
    m_kind->setAccessibleName(tr("Kind of record"));
    for (const RecordType type : assignable) {
        m_kind->addItem(inWords({noun(type), {}}));
        auto *line = new RecordLine(m_session, type, m_lines);
        line->setPlaceholderText(tr("type a few letters"));
        line->setAccessibleName(tr("Assign to %1").arg(inWords({noun(type), {}})));
        m_lines->addWidget(line);
        connect(line, &RecordLine::chosenByPerson, this, [this, type, line](qint64 id) {
            line->setChosen(0);
            if (id)
                link({type, id});
        });
    }
    m_lines->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(m_kind, &QComboBox::currentIndexChanged, m_lines, &QStackedWidget::setCurrentIndex);
    auto *bar = new QWidget(this);
    auto *layout = new QHBoxLayout(bar);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_kind);
    layout->addWidget(m_lines, 1);
    bar->setVisible(!m_session.isReadOnly());
    return bar;
}

void LinksEditor::show(const std::vector<Id<Media>> &media)
{
    m_isWhole = m_isWhole && media == m_media;
    m_media = media;
    fill();
}

std::vector<LinksEditor::Held> LinksEditor::held() const
{
    const auto records = m_session.records();
    std::vector<Held> links;
    for (const Id<Media> id : m_media) {
        for (const Media::Link &link : records->find(id)->links) {
            const RecordRef record{link.subject, link.id};
            const auto known = std::ranges::find(links, record, &Held::record);
            if (known != links.end())
                ++known->count;
            else if (records->find(link.subject, link.id))
                links.push_back({record, 1});
        }
    }
    return links;
}

void LinksEditor::fill()
{
    while (QLayoutItem *item = m_rows->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    std::vector<Held> links = held();
    // A button in place of one row would save nothing. Who asks for all finds them in this order.
    const bool areMany = links.size() > mostRows + 1;
    if (areMany)
        std::ranges::stable_sort(links, std::ranges::greater{}, &Held::count);
    const std::size_t shown = areMany && !m_isWhole ? mostRows : links.size();
    for (std::size_t i = 0; i < shown; ++i)
        m_rows->addWidget(row(links[i]));
    if (shown == links.size())
        return;
    auto *more = namedButton(tr("%1 more").arg(countText(std::int64_t(links.size() - shown))),
                             tr("Show all that the chosen photos belong to"), this);
    m_rows->addWidget(more, 0, Qt::AlignLeft);
    connect(more, &QPushButton::clicked, this, &LinksEditor::showAll);
}

void LinksEditor::showAll()
{
    m_isWhole = true;
    fill();
    // The keyboard goes on where the button was.
    const QLayoutItem *item = m_rows->itemAt(int(mostRows));
    if (!item)
        return;
    // A layout shows what it gets only later, and what is not shown takes no keyboard.
    item->widget()->show();
    item->widget()->findChild<QPushButton *>()->setFocus();
}

QWidget *LinksEditor::row(const Held &link)
{
    const RecordRef record = link.record;
    const bool isOfAll = link.count == int(m_media.size());
    QString title = titleOf(*m_session.records(), record);
    if (!isOfAll)
        title = tr("%1 (%2 of %3)")
                    .arg(title, countText(std::int64_t(link.count)),
                         countText(std::int64_t(m_media.size())));
    auto *row = new QWidget(this);
    auto *open = new NarrowButton(onButton(title), row);
    open->setProperty("flat", true);
    open->setAccessibleName(tr("Go to %1").arg(title));
    open->setToolTip(title);
    open->setMinimumWidth(40);
    open->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    open->setStyleSheet(QStringLiteral("text-align: left"));
    auto *layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(open, 1);
    connect(open, &QPushButton::clicked, this, [this, record] { m_session.goTo(record); });
    if (m_session.isReadOnly())
        return row;
    if (!isOfAll) {
        QPushButton *all = namedButton(tr("All"), tr("All belong to %1").arg(title), row);
        layout->addWidget(all);
        connect(all, &QPushButton::clicked, this, [this, record] { this->link(record); });
    }
    QPushButton *removal = namedButton(tr("Remove"), tr("Remove %1").arg(title), row);
    layout->addWidget(removal);
    connect(removal, &QPushButton::clicked, this, [this, record] { unlink(record); });
    return row;
}

void LinksEditor::link(RecordRef record)
{
    const QString to = shortName(*m_session.records(), record);
    m_session.change(tr("%1: belongs to %2").arg(nameOf(m_session, m_media), to), [&](Edit &edit) {
        for (const auto media : m_media)
            acts::linkMedia(edit, media, record);
    });
}

void LinksEditor::unlink(RecordRef record)
{
    const QString from = shortName(*m_session.records(), record);
    m_session.change(tr("%1: does not belong to %2").arg(nameOf(m_session, m_media), from),
                     [&](Edit &edit) {
                         for (const auto media : m_media)
                             acts::unlinkMedia(edit, media, record);
                     });
}

void LinksEditor::startAssigning()
{
    m_kind->setCurrentIndex(0);
    m_lines->currentWidget()->setFocus();
}

} // namespace lastrivet::ui
