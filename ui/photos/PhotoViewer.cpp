// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/PhotoViewer.h"

#include "core/project/acts/PhotoActs.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/photos/PictureRefiner.h"
#include "ui/photos/PictureView.h"
#include "ui/shell/Session.h"
#include "ui/shell/ShortcutSheet.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/MediaModel.h"
#include "ui/widgets/ProjectFiles.h"
#include "ui/widgets/UnkeptHold.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace lastrivet::ui {

namespace {

const std::string captionPlace = "caption";
const std::string marksPlace = "marks";

} // namespace

PhotoViewer::PhotoViewer(Session &session, PictureLoader &loader, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_picture(new PictureView(session.theme(), this))
    , m_refiner(new PictureRefiner(session, loader, *m_picture, this))
    , m_other(new QWidget(this))
    , m_otherWords(new QLabel(m_other))
    , m_open(new QPushButton(tr("Open it"), m_other))
    , m_stack(new QStackedWidget(this))
    , m_tools(new QWidget(this))
    , m_remove(nullptr)
    , m_scale(new QLabel(m_tools))
    , m_caption(new QLineEdit(this))
    , m_markLabel(new QLabel(tr("Words on the mark"), this))
    , m_markWords(new QLineEdit(this))
    , m_facts(new QLabel(this))
{
    build();
    connectPicture();
    auto *hold = new UnkeptHold(session, m_unkept, this);
    connect(hold, &UnkeptHold::settling, this, [this] {
        if (isVisible())
            settle();
    });
}

void PhotoViewer::build()
{
    m_otherWords->setWordWrap(true);
    m_otherWords->setAlignment(Qt::AlignCenter);
    m_open->setProperty("primary", true);
    auto *other = new QVBoxLayout(m_other);
    other->addStretch(1);
    other->addWidget(m_otherWords);
    other->addWidget(m_open, 0, Qt::AlignCenter);
    other->addStretch(1);
    m_stack->addWidget(m_picture);
    m_stack->addWidget(m_other);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(buildTop());
    layout->addWidget(m_stack, 1);
    layout->addWidget(buildBottom());
    connect(m_open, &QPushButton::clicked, this, &PhotoViewer::openFile);
}

QPushButton *PhotoViewer::addButton(QLayout *bar, const QString &words, const QString &key)
{
    auto *button = new QPushButton(words, this);
    button->setToolTip(key);
    bar->addWidget(button);
    return button;
}

QWidget *PhotoViewer::buildTop()
{
    auto *top = new QWidget(this);
    auto *bar = new QHBoxLayout(top);
    bar->setContentsMargins(0, 0, 0, 0);
    QPushButton *back = addButton(bar, tr("Back to all"), tr("Esc"));
    QPushButton *before = addButton(bar, tr("Previous"), tr("Page Up"));
    QPushButton *next = addButton(bar, tr("Next"), tr("Page Down"));
    for (QPushButton *button : {back, before, next})
        bar->setAlignment(button, Qt::AlignTop);
    // In a small window the tools need two lines.
    buildTools(new Flow(m_tools));
    bar->addSpacing(16);
    bar->addWidget(m_tools, 1);
    // What is no photo has no tools, and the buttons stay at the left.
    bar->addStretch(0);
    connect(back, &QPushButton::clicked, this, &PhotoViewer::left);
    connect(before, &QPushButton::clicked, this, [this] { Q_EMIT stepped(-1); });
    connect(next, &QPushButton::clicked, this, [this] { Q_EMIT stepped(1); });
    return top;
}

void PhotoViewer::buildTools(QLayout *bar)
{
    const QString names[] = {tr("Arrow"), tr("Circle"), tr("Words")};
    const QString keys[] = {tr("A: an arrow"), tr("C: a circle"), tr("W: words")};
    for (std::size_t i = 0; i < std::size(names); ++i) {
        QPushButton *button = addButton(bar, names[i], keys[i]);
        button->setCheckable(true);
        m_toolButtons.push_back(button);
        connect(button, &QPushButton::clicked, this, [this, i](bool isOn) {
            m_picture->setTool(isOn ? std::optional(AnnotationShape(i)) : std::nullopt);
            m_picture->setFocus();
        });
    }
    m_remove = addButton(bar, tr("Remove mark"), tr("Del"));
    QPushButton *less = addButton(bar, QStringLiteral("−"), tr("−: smaller"));
    less->setAccessibleName(tr("Smaller"));
    bar->addWidget(m_scale);
    m_scale->setMinimumWidth(m_scale->fontMetrics().horizontalAdvance(QStringLiteral("0000 %")));
    m_scale->setAlignment(Qt::AlignCenter);
    QPushButton *more = addButton(bar, QStringLiteral("+"), tr("+: larger"));
    more->setAccessibleName(tr("Larger"));
    QPushButton *whole = addButton(bar, tr("Whole"), tr("F: the whole picture"));
    QPushButton *full = addButton(bar, tr("Full size"), tr("O: every pixel"));
    m_picture->setProperty(
        ShortcutSheet::toldKeys,
        QStringList{QStringLiteral("+"), tr("Larger"), QStringLiteral("−"), tr("Smaller"),
                    QStringLiteral("F"), tr("Whole"), QStringLiteral("O"), tr("Full size"),
                    QStringLiteral("A"), tr("Arrow"), QStringLiteral("C"), tr("Circle"),
                    QStringLiteral("W"), tr("Words"), tr("Del"), tr("Remove mark")});
    connect(m_remove, &QPushButton::clicked, &m_picture->marks(), &MarkEditor::removeChosen);
    connect(less, &QPushButton::clicked, m_picture, &PictureView::zoomOut);
    connect(more, &QPushButton::clicked, m_picture, &PictureView::zoomIn);
    connect(whole, &QPushButton::clicked, m_picture, &PictureView::showWhole);
    connect(full, &QPushButton::clicked, m_picture, &PictureView::showFullSize);
}

QWidget *PhotoViewer::buildBottom()
{
    auto *bottom = new QWidget(this);
    auto *bar = new QHBoxLayout(bottom);
    bar->setContentsMargins(0, 0, 0, 0);
    auto *label = new QLabel(tr("Caption"), bottom);
    label->setBuddy(m_caption);
    m_caption->setPlaceholderText(tr("what there is to see"));
    m_caption->setReadOnly(m_session.isReadOnly());
    m_markLabel->setBuddy(m_markWords);
    m_markWords->setMaximumWidth(280);
    m_facts->setForegroundRole(QPalette::PlaceholderText);
    bar->addWidget(label);
    bar->addWidget(m_caption, 2);
    bar->addWidget(m_markLabel);
    bar->addWidget(m_markWords, 1);
    bar->addWidget(m_facts);
    connect(m_caption, &QLineEdit::editingFinished, this, &PhotoViewer::keepCaption);
    connect(m_caption, &QLineEdit::returnPressed, this, [this] { focusPlace()->setFocus(); });
    connect(m_markWords, &QLineEdit::editingFinished, this, [this] { keepWords(); });
    connect(m_markWords, &QLineEdit::returnPressed, this, [this] { m_picture->setFocus(); });
    return bottom;
}

void PhotoViewer::connectPicture()
{
    m_picture->setReadOnly(m_session.isReadOnly());
    MarkEditor *marks = &m_picture->marks();
    connect(m_picture, &PictureView::stepped, this, &PhotoViewer::stepped);
    connect(m_picture, &PictureView::left, this, &PhotoViewer::left);
    connect(m_picture, &PictureView::toolChanged, this, &PhotoViewer::updateTools);
    connect(m_picture, &PictureView::zoomed, this, &PhotoViewer::updateZoom);
    connect(m_picture, &PictureView::wordsWanted, this, [this] {
        m_markWords->setFocus();
        m_markWords->selectAll();
    });
    connect(m_picture, &PictureView::toolChanged, this, [this] {
        for (std::size_t i = 0; i < m_toolButtons.size(); ++i)
            m_toolButtons[i]->setChecked(m_picture->tool() == AnnotationShape(i));
    });
    connect(marks, &MarkEditor::chosenChanged, this, &PhotoViewer::updateTools);
    connect(marks, &MarkEditor::edited, this, &PhotoViewer::keepMarks);
    updateTools();
}

QWidget *PhotoViewer::focusPlace() const
{
    return m_stack->currentWidget() == m_picture ? static_cast<QWidget *>(m_picture) : m_open;
}

QWidget *PhotoViewer::pictureWidget() const
{
    return m_picture;
}

void PhotoViewer::show(const Media &chosen)
{
    const Id<Media> id = chosen.id;
    settle();
    // What was kept made other records of these.
    const auto records = m_session.records();
    const Media &media = *records->find(id);
    m_media = id;
    const bool isPhoto = media.kind == MediaKind::Photo;
    m_stack->setCurrentWidget(isPhoto ? static_cast<QWidget *>(m_picture) : m_other);
    m_tools->setVisible(isPhoto);
    m_picture->setTool(std::nullopt);
    m_picture->marks().choose(-1);
    showMarks(media);
    m_otherWords->setText(media.kind == MediaKind::Video
                              ? tr("This is a video. The program that this computer has for "
                                   "videos can show it.")
                              : tr("This is a paper. The program that this computer has for "
                                   "such files can show it."));
    showTexts(media);
    updateTools();
    if (isPhoto)
        m_refiner->show(media);
}

void PhotoViewer::showMarks(const Media &media)
{
    const auto unkept = m_unkeptMarks.find(media.id);
    // A copy: what the editor tells first may take them off the list.
    const std::vector<Media::Annotation> marks =
        unkept == m_unkeptMarks.end() ? media.annotations : unkept->second;
    m_picture->marks().show(marks);
}

void PhotoViewer::showTexts(const Media &media)
{
    const QString *unkept = m_unkept.find({RecordType::Media, media.id.value()}, captionPlace);
    const bool isUnkept = unkept != nullptr;
    const QString caption = unkept ? *unkept : toQt(media.caption);
    if (!m_caption->hasFocus() || m_caption->text() != caption)
        m_caption->setText(caption);
    m_caption->setModified(isUnkept);
    m_facts->setText(mediaFacts(media));
    m_picture->setAccessibleName(tr("%1, %2, %n marks", nullptr, int(media.annotations.size()))
                                     .arg(mediaTitle(media), mediaFacts(media)));
    m_open->setAccessibleName(tr("Open %1").arg(mediaTitle(media)));
}

void PhotoViewer::apply(const ChangeNotice &notice)
{
    const Media *media = notice.after->findLive(m_media);
    if (!media || !isVisible())
        return;
    if (!m_picture->marks().isUntold())
        showMarks(*media);
    if (!m_caption->isModified())
        showTexts(*media);
}

void PhotoViewer::settle()
{
    keepWords();
    if (m_unkeptMarks.contains(m_media))
        keepMarks();
    m_picture->marks().flush();
    keepCaption();
}

void PhotoViewer::updateTools()
{
    const int chosen = m_picture->marks().chosen();
    const bool isMark = chosen >= 0 && m_stack->currentWidget() == m_picture;
    for (QPushButton *button : m_toolButtons)
        button->setEnabled(!m_session.isReadOnly());
    m_remove->setEnabled(isMark && !m_session.isReadOnly());
    m_markLabel->setVisible(isMark);
    m_markWords->setVisible(isMark);
    m_markWords->setReadOnly(m_session.isReadOnly());
    if (isMark)
        m_markWords->setText(toQt(m_picture->marks().marks()[std::size_t(chosen)].text));
}

void PhotoViewer::updateZoom()
{
    m_scale->setText(tr("%1 %").arg(int(m_picture->scale() * 100 + 0.5)));
}

void PhotoViewer::keepMarks()
{
    const Media *media = m_session.records()->findLive(m_media);
    const std::vector<Media::Annotation> marks = m_picture->marks().marks();
    m_unkeptMarks.erase(m_media);
    m_unkept.drop(record(), marksPlace);
    if (!media || media->annotations == marks)
        return;
    const bool isMore = marks.size() > media->annotations.size();
    const bool isLess = marks.size() < media->annotations.size();
    const QString label = isMore   ? tr("Mark drawn on %1")
                          : isLess ? tr("Mark removed from %1")
                                   : tr("Mark changed on %1");
    const auto outcome = m_session.attempt(label.arg(mediaTitle(*media)), [&](Edit &edit) {
        acts::setAnnotations(edit, m_media, marks);
    });
    // They wait with their photo, and are tried once more when it is left.
    if (outcome != Session::Outcome::NotSaved)
        return;
    m_unkeptMarks[m_media] = marks;
    m_unkept.keep(record(), marksPlace, QString::number(marks.size()));
}

void PhotoViewer::keepWords()
{
    if (!m_markWords->isModified())
        return;
    m_markWords->setModified(false);
    m_picture->marks().setWords(m_markWords->text());
}

void PhotoViewer::keepCaption()
{
    const Media *media = m_session.records()->findLive(m_media);
    if (!media || !m_caption->isModified())
        return;
    const QString typed = m_caption->text();
    m_caption->setModified(false);
    m_unkept.drop(record(), captionPlace);
    const std::string caption = toStd(typed);
    if (caption == media->caption)
        return;
    if (m_session.change(tr("%1: caption").arg(mediaTitle(*media)), [&](Edit &edit) {
            edit.update(m_media, [&](Media &changed) { changed.caption = caption; });
        }))
        return;
    // It waits with its photo, and is tried once more when the line is left again.
    m_unkept.keep(record(), captionPlace, typed);
    m_caption->setModified(true);
}

void PhotoViewer::openFile()
{
    ui::openFile(m_session, m_media);
}

} // namespace lastrivet::ui
