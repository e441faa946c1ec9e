// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/certificate/PaperModel.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace lastrivet::ui {

namespace {

using certificate::Paper;
using certificate::PaperState;

struct ColumnOf {
    const char *head;
    QString (*text)(const Records &records, const Paper &paper);
};

const CertificateDocument *recordOf(const Records &records, const Paper &paper)
{
    return records.find(paper.record);
}

constexpr std::array columns{
    ColumnOf{QT_TRANSLATE_NOOP("PaperModel", "Document"),
             [](const Records &, const Paper &paper) { return listLine(paper.title); }},
    ColumnOf{QT_TRANSLATE_NOOP("PaperModel", "Needed"),
             [](const Records &, const Paper &paper) {
                 return paper.need ? asSentence(certificate::inWords(*paper.need)) : QString();
             }},
    ColumnOf{QT_TRANSLATE_NOOP("PaperModel", "State"),
             [](const Records &records, const Paper &paper) {
                 return asSentence(certificate::inWords(paper, records));
             }},
    ColumnOf{QT_TRANSLATE_NOOP("PaperModel", "Number"),
             [](const Records &records, const Paper &paper) {
                 const auto *document = recordOf(records, paper);
                 return document ? toQt(document->number) : QString();
             }},
    ColumnOf{QT_TRANSLATE_NOOP("PaperModel", "Scans"),
             [](const Records &records, const Paper &paper) {
                 const auto *document = recordOf(records, paper);
                 return document && !document->media_ids.empty()
                            ? QString::number(document->media_ids.size())
                            : QString();
             }},
};

QString iconOf(PaperState state)
{
    constexpr std::array names{"papers/missing", "papers/asked", "papers/here", "papers/expired"};
    return QString::fromLatin1(names[std::size_t(state)]);
}

QColor colourOf(const Paper &paper, const Colours &colours)
{
    switch (paper.state) {
    case PaperState::Here:
        return colours.clear;
    case PaperState::Asked:
        return colours.waits;
    case PaperState::Expired:
        return colours.closedEarly;
    case PaperState::Missing:
        break;
    }
    return paper.need == Need::Required ? colours.hold : colours.notBegun;
}

} // namespace

PaperModel::PaperModel(Session &session, QObject *parent)
    : QAbstractTableModel(parent)
    , m_session(session)
{
    refresh();
}

void PaperModel::refresh()
{
    auto papers =
        certificate::papers(*m_session.records(), m_session.project().profile(), m_session.today());
    const auto sameKey = [](const Paper &a, const Paper &b) { return a.key == b.key; };
    if (!std::ranges::equal(papers, m_papers, sameKey)) {
        beginResetModel();
        m_papers = std::move(papers);
        endResetModel();
        return;
    }
    m_papers = std::move(papers);
    if (!m_papers.empty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

int PaperModel::rowOf(std::string_view key) const
{
    const auto found = std::ranges::find(m_papers, key, &Paper::key);
    return found == m_papers.end() ? -1 : int(found - m_papers.begin());
}

int PaperModel::rowOf(Id<CertificateDocument> record) const
{
    const auto *document = m_session.records()->find(record);
    return document ? rowOf(document->key) : -1;
}

int PaperModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_papers.size());
}

int PaperModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(columns.size());
}

QVariant PaperModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const Paper &paper = m_papers[std::size_t(index.row())];
    const auto &column = columns[std::size_t(index.column())];
    switch (role) {
    case Qt::DisplayRole:
        return column.text(*m_session.records(), paper);
    case Qt::ToolTipRole:
        return index.column() == Needed ? neededWords(paper)
                                        : column.text(*m_session.records(), paper);
    case Qt::DecorationRole:
        if (index.column() != State)
            return {};
        return m_session.theme().icon(iconOf(paper.state),
                                      colourOf(paper, m_session.theme().colours()));
    case Qt::TextAlignmentRole:
        return int((index.column() == Scans ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    default:
        return {};
    }
}

QVariant PaperModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    return QCoreApplication::translate("PaperModel", columns[std::size_t(section)].head);
}

QString neededWords(const certificate::Paper &paper)
{
    if (!paper.need)
        return PaperModel::tr("On no list of the country: added here.");
    const QString need = asSentence(certificate::inWords(*paper.need));
    return paper.when.empty() ? PaperModel::tr("%1.").arg(need)
                              : PaperModel::tr("%1: %2.").arg(need, listLine(paper.when));
}

} // namespace lastrivet::ui
