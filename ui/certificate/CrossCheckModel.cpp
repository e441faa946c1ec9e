// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/certificate/CrossCheckModel.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"

#include <QFont>

#include <algorithm>

namespace lastrivet::ui {

using certificate::Compared;
using certificate::Said;
using Outcome = Compared::Outcome;

CrossCheckModel::CrossCheckModel(Session &session, QObject *parent)
    : QAbstractTableModel(parent)
    , m_session(session)
{
    refresh();
}

void CrossCheckModel::refresh()
{
    auto rows = certificate::compared(*m_session.records());
    const auto isSame = [](const auto &a, const auto &b) { return a.document == b.document; };
    if (!std::ranges::equal(rows, m_rows, isSame)) {
        beginResetModel();
        m_rows = std::move(rows);
        endResetModel();
        return;
    }
    m_rows = std::move(rows);
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

Id<CertificateDocument> CrossCheckModel::documentAt(int row) const
{
    return row > 0 ? m_rows[std::size_t(row - 1)].document : Id<CertificateDocument>{};
}

int CrossCheckModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size()) + 1;
}

int CrossCheckModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(certificate::everySaid.size()) + 1;
}

const Compared &CrossCheckModel::said(const QModelIndex &index) const
{
    return m_rows[std::size_t(index.row() - 1)].said[std::size_t(index.column() - 1)];
}

QString CrossCheckModel::text(const QModelIndex &index) const
{
    if (index.row() == 0 && index.column() == 0)
        return tr("Facts of the project");
    if (index.column() == 0)
        return documentTitle(m_session, documentAt(index.row()));
    if (index.row() == 0) {
        const auto own = certificate::ownWords(*m_session.records(), Said(index.column() - 1));
        return own.empty() ? tr("not entered") : toQt(own);
    }
    const Compared &cell = said(index);
    if (cell.outcome == Outcome::NotWritten)
        return QStringLiteral("–");
    return cell.outcome == Outcome::Differs ? QStringLiteral("≠ ") + toQt(cell.written)
                                            : toQt(cell.written);
}

QString CrossCheckModel::explanation(const QModelIndex &index) const
{
    if (index.row() == 0 || index.column() == 0)
        return text(index);
    switch (said(index).outcome) {
    case Outcome::Agrees:
        return tr("says the same");
    case Outcome::Differs:
        return tr("says otherwise than the project");
    case Outcome::NotWritten:
        return tr("nobody wrote down what it says");
    case Outcome::Unknown:
        return tr("the project's own facts do not say it");
    }
    return {};
}

QVariant CrossCheckModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const bool isCell = index.row() > 0 && index.column() > 0;
    const bool differs = isCell && said(index).outcome == Outcome::Differs;
    switch (role) {
    case Qt::DisplayRole:
        return text(index);
    case Qt::ToolTipRole:
    case Qt::AccessibleDescriptionRole:
        return explanation(index);
    case Qt::FontRole: {
        QFont font;
        font.setBold(differs || index.row() == 0);
        return font;
    }
    case Qt::ForegroundRole:
        if (differs)
            return m_session.theme().colours().closedEarly;
        return {};
    default:
        return {};
    }
}

QVariant CrossCheckModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    if (section == 0)
        return tr("Document");
    return asSentence(certificate::inWords(Said(section - 1)));
}

QString documentTitle(const Session &session, Id<CertificateDocument> id)
{
    const CertificateDocument *document = session.records()->find(id);
    if (!document)
        return {};
    const auto &known = session.project().profile().documents;
    const auto rule = std::ranges::find(known, document->key, &Profile::Document::key);
    const QString title = rule == known.end() ? toQt(document->key) : listLine(rule->title);
    return document->number.empty() ? title
                                    : CrossCheckModel::tr("%1, %2", "document, its number")
                                          .arg(title, toQt(document->number));
}

} // namespace lastrivet::ui
