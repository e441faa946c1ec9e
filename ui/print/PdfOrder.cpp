// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PdfOrder.h"

#include <qpdf/Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include <map>
#include <string>

namespace lastrivet::print {

namespace {

using Handle = QPDFObjectHandle;

/// "/AAAAAC+" for 2: a part of a typeface is named by six letters, a plus sign and its whole name
/// (ISO 32000-1, 9.6.4).
std::string tag(int number)
{
    std::string letters(6, 'A');
    for (std::size_t i = letters.size(); i > 0; --i, number /= 26)
        letters[i - 1] = char('A' + number % 26);
    return "/" + letters + "+";
}

void rename(Handle font, const char *key, int number)
{
    if (!font.hasKey(key) || !font.getKey(key).isName())
        return;
    const std::string name = font.getKey(key).getName();
    const std::size_t plus = name.find('+');
    font.replaceKey(key,
                    Handle::newName(tag(number) + name.substr(plus == name.npos ? 1 : plus + 1)));
}

void renameWhole(Handle font, int number)
{
    rename(font, "/BaseFont", number);
    if (font.getKey("/FontDescriptor").isDictionary())
        rename(font.getKey("/FontDescriptor"), "/FontName", number);
    Handle below = font.getKey("/DescendantFonts");
    for (int i = 0; below.isArray() && i < below.getArrayNItems(); ++i)
        renameWhole(below.getArrayItem(i), number);
}

/// Numbers in a page's names of typefaces ("/F9", "/F12") grow in the order of their first use.
std::map<int, Handle> fontsOf(QPDFPageObjectHelper page)
{
    std::map<int, Handle> byNumber;
    Handle fonts = page.getAttribute("/Resources", false).getKey("/Font");
    if (!fonts.isDictionary())
        return byNumber;
    for (const auto &[name, font] : fonts.getDictAsMap())
        byNumber.emplace(QByteArray::fromStdString(name).mid(2).toInt(), font);
    return byNumber;
}

void renameFonts(QPDF &pdf)
{
    std::map<QPDFObjGen, int> known;
    for (const QPDFPageObjectHelper &page : QPDFPageDocumentHelper(pdf).getAllPages()) {
        for (const auto &[number, font] : fontsOf(page)) {
            if (known.emplace(font.getObjGen(), int(known.size())).second)
                renameWhole(font, int(known.size()) - 1);
        }
    }
}

} // namespace

std::shared_ptr<Buffer> inOrder(const QByteArray &pages)
{
    QPDF pdf;
    pdf.processMemoryFile("pages", pages.constData(), size_t(pages.size()));
    renameFonts(pdf);
    QPDFWriter writer(pdf);
    writer.setOutputMemory();
    writer.setStreamDataMode(qpdf_s_preserve);
    writer.setObjectStreamMode(qpdf_o_disable);
    writer.setStaticID(true);
    writer.write();
    return writer.getBufferSharedPointer();
}

} // namespace lastrivet::print
