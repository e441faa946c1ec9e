// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/FindingRows.h"

#include "core/entry/FindingLines.h"
#include "ui/closings/ClosingWords.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RecordNames.h"

#include <QBoxLayout>
#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <set>

namespace lastrivet::ui {

FindingRows::FindingRows(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_layout(new QVBoxLayout)
    , m_paste(flatButton(tr("Paste the lines of the sheet"), this))
{
    m_paste->setToolTip(tr("One finding a line, with or without its number; “part: what was found” "
                           "names the part."));
    connect(m_paste, &QPushButton::clicked, this, &FindingRows::pasteClipboard);
    m_layout->setSpacing(Theme::space);
    auto *whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addLayout(m_layout);
    whole->addWidget(m_paste, 0, Qt::AlignLeft);
}

void FindingRows::start(std::vector<Id<Component>> parts)
{
    m_parts = std::move(parts);
    m_rows.clear();
    clearLayout(*m_layout);
    addRow();
}

FindingRows::Row FindingRows::makeRow(int number)
{
    Row row{new QLineEdit(this), new QComboBox(this), new QLineEdit(this), new QComboBox(this),
            new QComboBox(this)};
    row.number->setText(QString::number(number));
    row.number->setMaximumWidth(44);
    for (const auto id : m_parts)
        row.part->addItem(partName(*m_session.records(), id), qlonglong(id.value()));
    makeNarrow(*row.part, 12);
    row.title->setPlaceholderText(tr("what was found"));
    row.title->installEventFilter(this);
    for (std::size_t i = 0; i < Words<Severity>::list.size(); ++i)
        row.severity->addItem(m_session.theme().icon(severityIcon(Severity(i))),
                              severityWord(Severity(i)));
    row.severity->setCurrentIndex(int(Severity::Workmanship));
    makeNarrow(*row.severity, 10);
    // In the order of `Verifying`.
    row.verifying->addItems({tr("inspector, on site"), tr("inspector, by photo"),
                             roleWords(SignerRole::Adviser), roleWords(SignerRole::Builder)});
    row.verifying->setCurrentIndex(int(m_usual));
    makeNarrow(*row.verifying, 13);
    return row;
}

void FindingRows::nameRow(const Row &row, int number) const
{
    row.number->setAccessibleName(tr("Number of finding %1 on the sheet").arg(number));
    row.part->setAccessibleName(tr("Part of finding %1").arg(number));
    row.title->setAccessibleName(tr("Finding %1").arg(number));
    row.severity->setAccessibleName(tr("Severity of finding %1").arg(number));
    row.verifying->setAccessibleName(tr("Who may verify finding %1").arg(number));
    row.verifying->setToolTip(tr("Who may verify the correction"));
}

void FindingRows::addRow()
{
    const int number = int(m_rows.size()) + 1;
    const Row row = makeRow(number);
    nameRow(row, number);
    auto *what = new QHBoxLayout;
    what->addWidget(row.number);
    what->addWidget(row.part, 2);
    what->addWidget(row.title, 5);
    auto *weight = new QHBoxLayout;
    weight->addWidget(row.severity, 1);
    weight->addWidget(row.verifying, 1);
    auto *line = new QBoxLayout(direction());
    line->addLayout(what, 7);
    line->addLayout(weight, 2);
    m_layout->addLayout(line);
    m_rows.push_back(row);
    setTabOrder(row.verifying, m_paste);
    connect(row.title, &QLineEdit::textChanged, this, [this, number](const QString &text) {
        if (text.isEmpty())
            forgetDay(m_rows[std::size_t(number) - 1]);
        else if (number == int(m_rows.size()))
            addRow();
    });
}

/// In a narrow form what was found has the width of a line, and how grave it is stands below.
QBoxLayout::Direction FindingRows::direction() const
{
    constexpr int oneLineFrom = 760;
    return width() < oneLineFrom ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight;
}

void FindingRows::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    for (int i = 0; i < m_layout->count(); ++i) {
        if (auto *line = qobject_cast<QBoxLayout *>(m_layout->itemAt(i)->layout()))
            line->setDirection(direction());
    }
}

void FindingRows::forgetDay(Row &row)
{
    row.found_on.reset();
    row.title->setToolTip({});
}

void FindingRows::setUsual(acts::Verifying verifying)
{
    m_usual = verifying;
    for (const Row &row : m_rows) {
        if (row.title->text().isEmpty())
            row.verifying->setCurrentIndex(int(verifying));
    }
}

void FindingRows::choosePart(QComboBox &box, Id<Component> part, const QString &name)
{
    if (!part)
        return;
    if (box.findData(qlonglong(part.value())) < 0)
        box.addItem(name, qlonglong(part.value()));
    box.setCurrentIndex(box.findData(qlonglong(part.value())));
}

void FindingRows::takeLines(const QString &text)
{
    const auto records = m_session.records();
    for (const auto &finding :
         entry::readFindings(toStd(text), m_session.partFinder(), m_session.today())) {
        auto row = std::ranges::find_if(
            m_rows, [](const Row &candidate) { return candidate.title->text().isEmpty(); });
        const std::size_t at = std::size_t(row - m_rows.begin());
        if (!finding.number.empty())
            row->number->setText(toQt(finding.number));
        choosePart(*row->part, finding.part, partName(*records, finding.part));
        row->severity->setCurrentIndex(int(finding.severity));
        row->found_on = finding.found_on;
        if (finding.found_on)
            row->title->setToolTip(tr("found on %1").arg(dayText(*finding.found_on)));
        // Adds the next row, which moves this one.
        m_rows[at].title->setText(toQt(finding.title));
    }
}

void FindingRows::pasteClipboard()
{
    takeLines(QGuiApplication::clipboard()->text());
}

bool FindingRows::eventFilter(QObject *watched, QEvent *event)
{
    const bool isPaste = event->type() == QEvent::KeyPress &&
                         static_cast<QKeyEvent *>(event)->matches(QKeySequence::Paste);
    if (!isPaste || !QGuiApplication::clipboard()->text().trimmed().contains(QLatin1Char('\n')))
        return QWidget::eventFilter(watched, event);
    pasteClipboard();
    return true;
}

std::vector<acts::Finding> FindingRows::findings() const
{
    std::vector<acts::Finding> found;
    for (const Row &row : m_rows) {
        const std::string title = toStd(row.title->text());
        if (title.empty())
            continue;
        acts::Finding finding;
        finding.title = title;
        finding.component_id = Id<Component>{row.part->currentData().toLongLong()};
        finding.severity = Severity(row.severity->currentIndex());
        finding.number = toStd(row.number->text());
        finding.verifying = acts::Verifying(row.verifying->currentIndex());
        if (finding.verifying == acts::Verifying::InspectorByPhoto)
            finding.note = toStd(tr("A photograph of the correction is enough for the inspector."));
        finding.found_on = row.found_on;
        found.push_back(std::move(finding));
    }
    return found;
}

QString FindingRows::whyNot() const
{
    std::set<std::string> numbers;
    for (const auto &finding : findings()) {
        if (finding.number.empty())
            return tr("“%1” needs its number on the sheet.").arg(toQt(finding.title));
        if (!numbers.insert(finding.number).second)
            return tr("Two findings have the number %1.").arg(toQt(finding.number));
    }
    return {};
}

} // namespace lastrivet::ui
