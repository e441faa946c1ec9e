// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Component.h"
#include "ui/widgets/ActForm.h"

class QLabel;
class QTreeView;

namespace lastrivet::ui {

class BranchModel;
class Session;

/// Copies a part with everything below it: shows what will be made, lets names and codes be
/// changed, and makes it in one change.
class BranchForm final : public ActForm {
    Q_OBJECT

public:
    explicit BranchForm(Session &session, QWidget *parent = nullptr);

    void start(Id<Component> branch);
    QTreeView &view() const { return *m_view; }

Q_SIGNALS:
    void made(qint64 part);

protected:
    bool perform() override;

private:
    QString whatIsCopied() const;

    Session &m_session;
    BranchModel *m_model;
    QLabel *m_what;
    QTreeView *m_view;
};

} // namespace lastrivet::ui
