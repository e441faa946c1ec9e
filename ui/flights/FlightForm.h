// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/records/Flight.h"
#include "ui/widgets/ActForm.h"

class QLineEdit;

namespace lastrivet::ui {

class MomentLine;
class NumberBox;
class PersonBox;
class Session;

/// Writes the next flight down; ready for another when one is kept.
class FlightForm final : public ActForm {
    Q_OBJECT

public:
    explicit FlightForm(Session &session, QWidget *parent = nullptr);

    /// Today, the pilot of the last flight, no faults.
    void start();
    /// Offers the people who are on record by now; what is typed stays.
    void offerPeopleAnew();
    QWidget *firstField() const;

Q_SIGNALS:
    void kept(qint64 flight);

protected:
    bool perform() override;

private:
    /// One sentence why it cannot be kept yet; empty when it can.
    QString whyNot(std::optional<Minutes> minutes) const;

    Session &m_session;
    MomentLine *m_day;
    QLineEdit *m_minutes;
    NumberBox *m_landings;
    PersonBox *m_pilot;
    QLineEdit *m_faults;
    QLineEdit *m_note;
};

} // namespace lastrivet::ui
