// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/certificate/CrossCheck.h"

#include <QAbstractTableModel>

namespace lastrivet::ui {

class Session;

/// What each paper says of name, model, serial number and registration, below what the project's
/// own facts say.
class CrossCheckModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    explicit CrossCheckModel(Session &session, QObject *parent = nullptr);

    void refresh();
    /// The document of a row; none for the row of the project.
    Id<CertificateDocument> documentAt(int row) const;

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const certificate::Compared &said(const QModelIndex &index) const;
    QString text(const QModelIndex &index) const;
    QString explanation(const QModelIndex &index) const;

    Session &m_session;
    std::vector<certificate::ComparedDocument> m_rows;
};

/// A document of the country or of the builder, as people call it.
QString documentTitle(const Session &session, Id<CertificateDocument> document);

} // namespace lastrivet::ui
