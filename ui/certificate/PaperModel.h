// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/certificate/Papers.h"

#include <QAbstractTableModel>

namespace lastrivet::ui {

class Session;

/// The documents on the way to the certificate, a line each: what it is, who asks for it, how far
/// it has come.
class PaperModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Title, Needed, State, Number, Scans };

    explicit PaperModel(Session &session, QObject *parent = nullptr);

    /// Reads the records again.
    void refresh();
    const certificate::Paper &paper(int row) const { return m_papers[std::size_t(row)]; }
    const std::vector<certificate::Paper> &papers() const { return m_papers; }
    int rowOf(std::string_view key) const;
    int rowOf(Id<CertificateDocument> record) const;

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    Session &m_session;
    std::vector<certificate::Paper> m_papers;
};

/// "Required: before the start"; "not on the country's list".
QString neededWords(const certificate::Paper &paper);

} // namespace lastrivet::ui
