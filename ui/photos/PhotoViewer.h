// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "ui/widgets/UnkeptWords.h"

#include <QString>
#include <QWidget>

#include <map>
#include <vector>

class QLabel;
class QLayout;
class QLineEdit;
class QPushButton;
class QStackedWidget;

namespace lastrivet::ui {

class PictureLoader;
class PictureRefiner;
class PictureView;
class Session;

/// One file as large as the page: a picture with its caption and its marks, or a video or paper
/// that the system's own program opens.
class PhotoViewer final : public QWidget {
    Q_OBJECT

public:
    PhotoViewer(Session &session, PictureLoader &loader, QWidget *parent = nullptr);

    void show(const Media &media);
    Id<Media> shown() const { return m_media; }
    void apply(const ChangeNotice &notice);
    /// Keeps what is being written or moved.
    void settle();
    /// Where keys look and draw.
    QWidget *focusPlace() const;
    /// The picture itself, also when another kind of file is shown.
    QWidget *pictureWidget() const;

Q_SIGNALS:
    void stepped(int by);
    void left();

private:
    void build();
    QWidget *buildTop();
    QWidget *buildBottom();
    QPushButton *addButton(QLayout *bar, const QString &words, const QString &key);
    void buildTools(QLayout *bar);
    void connectPicture();
    void showTexts(const Media &media);
    void updateTools();
    void updateZoom();
    void keepMarks();
    void showMarks(const Media &media);
    void keepWords();
    void keepCaption();
    RecordRef record() const { return {RecordType::Media, m_media.value()}; }
    void openFile();

    Session &m_session;
    Id<Media> m_media;
    PictureView *m_picture;
    PictureRefiner *m_refiner;
    QWidget *m_other;
    QLabel *m_otherWords;
    QPushButton *m_open;
    QStackedWidget *m_stack;
    QWidget *m_tools;
    std::vector<QPushButton *> m_toolButtons;
    QPushButton *m_remove;
    QLabel *m_scale;
    QLineEdit *m_caption;
    /// Captions and marks that could not be saved, of photos that are shown now or later.
    UnkeptWords m_unkept;
    std::map<Id<Media>, std::vector<Media::Annotation>> m_unkeptMarks;
    QLabel *m_markLabel;
    QLineEdit *m_markWords;
    QLabel *m_facts;
};

} // namespace lastrivet::ui
