// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Component.h"

#include <QWidget>

class QBoxLayout;
class QCheckBox;
class QLabel;
class QPushButton;

namespace lastrivet::ui {

class Session;
struct PartFigures;

/// What a part is, its state, and its hours with everything below; or the whole aircraft.
class PartHead final : public QWidget {
    Q_OBJECT

public:
    explicit PartHead(Session &session, QWidget *parent = nullptr);

    /// No part stands for the whole aircraft.
    void show(Id<Component> part, const PartFigures &figures);
    bool isWithBelow() const;
    /// The picture of the state takes the colours of the theme.
    void themeChanged()
    {
        showState(m_shown);
        showFingerTight(m_fingerTight);
    }

Q_SIGNALS:
    void withBelowChanged();
    void fingerTightWanted();

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    void placeActs();
    void showState(Id<Component> part);
    void showFingerTight(int lines);
    QString facts(const Component &part) const;

    Session &m_session;
    Id<Component> m_shown;
    QLabel *m_heading;
    QLabel *m_stateShape;
    QLabel *m_state;
    QPushButton *m_loose;
    int m_fingerTight = 0;
    QLabel *m_facts;
    /// The facts, and what can be done about them.
    QBoxLayout *m_second;
    QCheckBox *m_below;
    QPushButton *m_history;
};

} // namespace lastrivet::ui
