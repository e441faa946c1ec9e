// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/PhotosWindow.h"

#include <QFile>
#include <QImage>
#include <QPainter>
#include <QTest>

#include <catch2/catch.hpp>

namespace lastrivet::test {

PhotosWindow::PhotosWindow()
{
    QObject::connect(session.get(), &ui::Session::complained, &page,
                     [this](const QString &sentence) { complaint = sentence; });
    QObject::connect(session.get(), &ui::Session::said, &page,
                     [this](const QString &sentence) { said = sentence; });
    page.resize(1100, 680);
    page.show();
    REQUIRE(QTest::qWaitForWindowExposed(&page));
}

const Media &PhotosWindow::lastMedia() const
{
    return *session->records()->find(Id<Media>{media().greatestId()});
}

QString PhotosWindow::file(int number)
{
    QImage image(640, 480, QImage::Format_RGB32);
    image.fill(QColor::fromHsv(number * 47 % 360, 90, 190));
    QPainter painter(&image);
    for (int x = 40; x < 640; x += 50)
        painter.drawEllipse(x, 200 + (x * number) % 60, 18, 18);
    painter.end();
    const QString name =
        QString::fromStdString((folder / std::to_string(number)).string()) + QStringLiteral(".png");
    REQUIRE(image.save(name));
    return name;
}

QString PhotosWindow::textFile(const QString &name, const QByteArray &content)
{
    QFile file(QString::fromStdString((folder / name.toStdString()).string()));
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(content);
    return file.fileName();
}

QPushButton *PhotosWindow::button(const QString &words)
{
    // What was just put into a layout is shown at the next turn.
    QCoreApplication::processEvents();
    for (auto *button : page.findChildren<QPushButton *>()) {
        if (button->text() == words && button->isVisible())
            return button;
    }
    return nullptr;
}

void PhotosWindow::key(QWidget &widget, int key, Qt::KeyboardModifiers modifiers)
{
    QTest::keyClick(&widget, Qt::Key(key), modifiers);
}

} // namespace lastrivet::test
