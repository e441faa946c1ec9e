// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/BranchForm.h"

#include "ui/convert/QtText.h"
#include "ui/parts/BranchModel.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/TallRows.h"

#include <QHeaderView>
#include <QLabel>
#include <QTreeView>

namespace lastrivet::ui {

BranchForm::BranchForm(Session &session, QWidget *parent)
    : ActForm(tr("Make the copy"), parent)
    , m_session(session)
    , m_model(new BranchModel(session, this))
    , m_what(new QLabel(this))
    , m_view(new QTreeView(this))
{
    m_what->setWordWrap(true);
    m_view->setModel(m_model);
    m_view->setAccessibleName(tr("Parts of the copy"));
    m_view->setItemDelegate(new TallRows(this));
    m_view->setRootIsDecorated(false);
    m_view->setUniformRowHeights(true);
    m_view->setAllColumnsShowFocus(true);
    m_view->setTabKeyNavigation(false);
    m_view->setMinimumHeight(260);
    m_view->setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::DoubleClicked |
                            QAbstractItemView::AnyKeyPressed);
    m_view->header()->setStretchLastSection(true);
    m_view->setColumnWidth(BranchModel::NameColumn, 230);
    m_view->setColumnWidth(BranchModel::CodeColumn, 96);
    addWide(m_what);
    addWide(m_view);
}

QString BranchForm::whatIsCopied() const
{
    const acts::BranchCopy &copy = m_model->copy();
    const QStringList what{
        tr("%n parts", "", int(copy.parts.size())),
        tr("%n steps", "", int(copy.counts.steps)),
        tr("%n closings", "", int(copy.counts.closings)),
        tr("%n lines to check", "", int(copy.counts.checks)),
        tr("%n fasteners", "", int(copy.counts.fasteners)),
        tr("%n measurements", "", int(copy.counts.measurements)),
    };
    const QString sides = copy.swapsSides
                              ? tr("Left and right change places in names and words.")
                              : tr("The name tells no side, so that names stay as they are.");
    return tr("Copied as planned: %1. What was done, signed, photographed or found stays with the "
              "original. %2 Codes that other parts have are left empty.")
        .arg(what.join(QStringLiteral(", ")), sides);
}

void BranchForm::start(Id<Component> branch)
{
    m_model->show(acts::planBranchCopy(*m_session.records(), branch));
    setTitle(tr("Copy of %1").arg(partName(*m_session.records(), branch)));
    m_what->setText(whatIsCopied());
    hint({});
    noteFields();
    m_view->setCurrentIndex(m_model->index(0, BranchModel::NameColumn));
    m_view->setFocus();
}

bool BranchForm::perform()
{
    const acts::BranchCopy &copy = m_model->copy();
    if (!acts::stillFits(*m_session.records(), copy)) {
        hint(tr("The parts are no longer those that are listed here. Leave, and copy again."));
        return false;
    }
    if (const auto row = acts::takenCode(*m_session.records(), copy)) {
        hint(tr("Another part has the code %1.").arg(toQt(copy.parts[*row].code)));
        m_view->setCurrentIndex(m_model->index(int(*row), BranchModel::CodeColumn));
        return false;
    }
    Id<Component> made;
    const QString label = tr("%1 copied as %2")
                              .arg(partName(*m_session.records(), copy.parts.front().original),
                                   toQt(copy.parts.front().name));
    if (!m_session.change(label, [&](Edit &edit) { made = acts::copyBranch(edit, copy); }))
        return false;
    Q_EMIT this->made(made.value());
    return true;
}

} // namespace lastrivet::ui
