// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Closing.h"
#include "ui/widgets/ActForm.h"

class QComboBox;
class QLabel;

namespace lastrivet::ui {

class PathLine;
class Session;

/// The packet for some closings: its form, its paper and language, and where it goes.
class PacketForm final : public ActForm {
    Q_OBJECT

public:
    explicit PacketForm(Session &session, QWidget *parent = nullptr);

    void start(const IdSet<Closing> &closings);
    const IdSet<Closing> &closings() const { return m_closings; }

protected:
    bool perform() override;

private:
    QWidget *buildPlace();
    void offer();
    void proposePlace();
    void choosePlace();
    QString whyNot(const QString &place) const;
    bool isFolder() const;

    Session &m_session;
    IdSet<Closing> m_closings;
    QLabel *m_names;
    QComboBox *m_form;
    QLabel *m_about;
    QComboBox *m_paper;
    QComboBox *m_language;
    PathLine *m_place;
    /// The file that may be replaced.
    QString m_asked;
};

} // namespace lastrivet::ui
