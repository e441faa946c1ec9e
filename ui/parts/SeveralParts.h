// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "ui/widgets/ActForm.h"

#include <vector>

class QComboBox;
class QLineEdit;

namespace lastrivet::ui {

class ActLine;
class RecordLine;
class Session;

/// Several parts at once: what is filled in here is set for all of them in one change.
class SeveralParts final : public QWidget {
    Q_OBJECT

public:
    explicit SeveralParts(Session &session, QWidget *parent = nullptr);

    void show(const std::vector<Id<Component>> &parts);
    void withdraw();

Q_SIGNALS:
    void finished();
    /// What is half answered about these is to be shown.
    void begunWanted(const std::vector<lastrivet::Id<lastrivet::Component>> &parts);

private:
    class Form;

    std::vector<RecordRef> shown() const;

    Session &m_session;
    std::vector<Id<Component>> m_parts;
    Form *m_form;
    ActLine *m_ask;
};

} // namespace lastrivet::ui
