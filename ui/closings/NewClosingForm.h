// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Closing.h"
#include "ui/widgets/ActForm.h"

#include <set>
#include <vector>

class QCheckBox;
class QComboBox;
class QLineEdit;
class QListWidget;
class QListWidgetItem;

namespace lastrivet::ui {

class Session;

/// Makes a closing, with the hold points of the profile and the inspector's lists that fit.
class NewClosingForm final : public ActForm {
    Q_OBJECT

public:
    explicit NewClosingForm(Session &session, QWidget *parent = nullptr);

    void start(Id<Component> part = {});
    /// Offers the lists of rules that came while it was begun, all of them ticked.
    void takeUpRules();

Q_SIGNALS:
    void made(lastrivet::Id<lastrivet::Closing> closing);

protected:
    bool perform() override;

private:
    void fillParts();
    void fillEnclosed();
    void tellNewPart();
    void fillLists();
    void noteTick(const QListWidgetItem *list);
    Closing typed() const;
    bool make(Closing closing);
    std::vector<Id<Component>> partsCalled(const QString &typed) const;
    /// The chosen part; none when the typed name is that of a new one, or of several.
    Id<Component> part() const;
    QString newPart() const;

    Session &m_session;
    QComboBox *m_part;
    QLineEdit *m_title;
    QListWidget *m_encloses;
    QLineEdit *m_method;
    QComboBox *m_madeBy;
    QCheckBox *m_permanent;
    QCheckBox *m_aircraft;
    QListWidget *m_lists;
    /// Lists that somebody has unticked, by their place in the profile; they stay so while others
    /// come and go.
    std::set<qint64> m_unticked;
};

} // namespace lastrivet::ui
