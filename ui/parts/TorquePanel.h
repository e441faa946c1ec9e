// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/fasteners/TorqueProposal.h"
#include "ui/parts/SectionAside.h"

#include <optional>
#include <utility>
#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace lastrivet::ui {

class Session;

/// What the workshop's table proposes for a fastener, with its source, the drag added, and what to
/// set the wrench to through an extension.
class TorquePanel final : public SectionAside {
    Q_OBJECT

public:
    explicit TorquePanel(Session &session, QWidget *parent = nullptr);

    void present(std::int64_t id) override;
    /// Takes the proposed limits into the record.
    void take();

protected:
    void showEvent(QShowEvent *event) override;

private:
    void build();
    void readOwnLimits();
    workshop::Nut nut() const;
    /// Of the table, or of the project where it has a limit of its own.
    Result<fasteners::TorqueProposal, Message> proposal(const Fastener &fastener,
                                                        workshop::Nut nut) const;
    const workshop::OwnLimit *own(const fasteners::TorqueProposal &proposal) const;
    QString limitWords(const fasteners::TorqueProposal &proposal) const;
    QString sourceWords(const fasteners::TorqueProposal &proposal) const;
    /// Lever and extension, both with a unit or both without.
    std::optional<std::pair<double, double>> levers() const;
    void chooseNut(const Fastener &fastener);
    void refresh();
    void sayProposal(const Fastener &fastener);
    void sayWrench(const Fastener &fastener);
    QString dragWarning(const Fastener &fastener) const;

    Session &m_session;
    Id<Fastener> m_id;
    std::optional<fasteners::TorqueProposal> m_proposal;
    std::vector<workshop::OwnLimit> m_own;
    QComboBox *m_nut;
    QLabel *m_limits;
    QLabel *m_source;
    QLabel *m_drag;
    QPushButton *m_take;
    QLineEdit *m_lever;
    QLineEdit *m_extension;
    QLabel *m_setting;
};

} // namespace lastrivet::ui
