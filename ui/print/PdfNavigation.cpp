// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PdfNavigation.h"

#include "ui/print/Measures.h"
#include "ui/print/PdfFinish.h"

#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>

namespace lastrivet::print {

namespace {

using Handle = QPDFObjectHandle;

Handle destinationOf(const std::vector<QPDFPageObjectHelper> &pages, const Heading &heading,
                     double pageHeight)
{
    constexpr double above = points(12);
    Handle destination = Handle::newArray();
    destination.appendItem(pages[std::size_t(heading.page)].getObjectHandle());
    destination.appendItem(Handle::newName("/XYZ"));
    destination.appendItem(Handle::newInteger(0));
    destination.appendItem(Handle::newReal(toPoints(pageHeight - heading.top + above), 2));
    destination.appendItem(Handle::newInteger(0));
    return destination;
}

/// Chains bookmarks below `parent`; answers how many there are.
void chain(Handle parent, std::vector<Handle> &bookmarks)
{
    if (bookmarks.empty())
        return;
    for (std::size_t i = 0; i < bookmarks.size(); ++i) {
        bookmarks[i].replaceKey("/Parent", parent);
        if (i > 0)
            bookmarks[i].replaceKey("/Prev", bookmarks[i - 1]);
        if (i + 1 < bookmarks.size())
            bookmarks[i].replaceKey("/Next", bookmarks[i + 1]);
    }
    parent.replaceKey("/First", bookmarks.front());
    parent.replaceKey("/Last", bookmarks.back());
    // Sections are shown with what is below them folded away.
    const int count = int(bookmarks.size());
    const bool isRoot = parent.hasKey("/Type");
    parent.replaceKey("/Count", Handle::newInteger(isRoot ? count : -count));
}

} // namespace

void addBookmarks(QPDF &pdf, const PdfFinish &finish)
{
    const std::vector<QPDFPageObjectHelper> pages = QPDFPageDocumentHelper(pdf).getAllPages();
    Handle root = pdf.makeIndirectObject(Handle::parse("<< /Type /Outlines >>"));
    std::vector<Handle> sections;
    std::vector<Handle> below;
    for (const Heading &heading : finish.headings) {
        Handle bookmark = pdf.makeIndirectObject(Handle::newDictionary());
        bookmark.replaceKey("/Title", Handle::newUnicodeString(heading.title.toStdString()));
        bookmark.replaceKey("/Dest", destinationOf(pages, heading, finish.page_height));
        if (heading.level > 0 && !sections.empty()) {
            below.push_back(bookmark);
            continue;
        }
        if (!sections.empty())
            chain(sections.back(), below);
        below.clear();
        sections.push_back(bookmark);
    }
    if (sections.empty())
        return;
    chain(sections.back(), below);
    chain(root, sections);
    pdf.getRoot().replaceKey("/Outlines", root);
    pdf.getRoot().replaceKey("/PageMode", Handle::newName("/UseOutlines"));
}

void addLinks(QPDF &pdf, const PdfFinish &finish)
{
    std::vector<QPDFPageObjectHelper> pages = QPDFPageDocumentHelper(pdf).getAllPages();
    for (const Link &link : finish.links) {
        if (link.heading >= finish.headings.size())
            continue;
        const QRectF &place = link.place;
        Handle annotation = Handle::parse("<< /Type /Annot /Subtype /Link /Border [0 0 0] /F 4 >>");
        annotation.replaceKey(
            "/Rect", Handle::newFromRectangle(
                         {toPoints(place.left()), toPoints(finish.page_height - place.bottom()),
                          toPoints(place.right()), toPoints(finish.page_height - place.top())}));
        annotation.replaceKey(
            "/Dest", destinationOf(pages, finish.headings[link.heading], finish.page_height));
        Handle page = pages[std::size_t(link.page)].getObjectHandle();
        if (!page.hasKey("/Annots") || !page.getKey("/Annots").isArray())
            page.replaceKey("/Annots", Handle::newArray());
        page.getKey("/Annots").appendItem(pdf.makeIndirectObject(annotation));
    }
}

} // namespace lastrivet::print
