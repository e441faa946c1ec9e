// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/Outline.h"
#include "ui/print/Paper.h"
#include "ui/print/TextBlock.h"
#include "ui/print/Wording.h"

#include <QPainter>
#include <QPdfWriter>

#include <functional>
#include <vector>

class QIODevice;

namespace lastrivet::print {

/// What stands at the head and foot of the pages.
struct Margins {
    QString head_left;
    QString head_right;
    /// At the head of the first page, which has no other; a line or two.
    QString first_head;
    QString foot;
    /// A second line of the foot of the first page only.
    QString first_foot;
    /// Nothing stands there, and the body is the whole paper.
    bool are_bare = false;
};

/// Upright pages filled from top to bottom, with running head and foot; knows where it stands.
/// Where the cautions stood on a page alone, the page before ends some lines earlier, which come
/// over.
class Pages {
public:
    /// Called at each new page; false stops the printing.
    using OnPage = std::function<bool(int page)>;

    /// `known` is the outline of the layout before this one; empty at first.
    Pages(QIODevice &device, Paper paper, Margins margins, const Wording &wording, Outline known,
          OnPage onPage);
    ~Pages();
    Pages(const Pages &) = delete;
    Pages &operator=(const Pages &) = delete;

    QPainter &painter() { return m_painter; }
    const Wording &wording() const { return m_wording; }
    const Outline &known() const { return m_known; }
    const Outline &outline() const { return m_outline; }
    const std::vector<Link> &links() const { return m_links; }

    const QRectF &body() const { return m_body; }
    double y() const { return m_y; }
    double spaceLeft() const { return bottom() - m_y; }
    bool isAtTop() const { return m_y <= m_body.top(); }
    void advance(double distance) { m_y += distance; }
    /// A gap between two things; none at the top of a page.
    void gap(double distance);
    void breakPage();
    /// Breaks the page when less than `height` is left and something stands on it already.
    void need(double height);

    /// A heading, kept on one page with `following` of what comes after it, a line at least: a
    /// section (level 0) or what is below one (1), both known to contents and bookmarks.
    void heading(int level, const QString &title, double following);
    /// A small heading that contents and bookmarks leave out.
    void smallHeading(const QString &title, double following);
    void text(const QString &text, Size size = Size::Body, bool isBold = false);
    /// As `text`, indented by `indent`.
    void textAt(double indent, const QString &text, Size size = Size::Body, bool isBold = false);
    void rule(double weight);
    /// Notes that nothing but the cautions stands on this page; the one before ended at
    /// `endBefore`.
    void noteLoneCautions(double endBefore);
    /// The cautions found another place: no page ends early for them.
    void endAsUsual() { m_known.before_cautions.reset(); }
    /// Makes a place of this page lead to a heading of the known outline.
    void link(const QRectF &place, std::size_t heading);

private:
    void beginPage();
    void drawHead();
    void drawFirstHead();
    void drawFoot();
    double bottom() const;

    const Wording &m_wording;
    Margins m_margins;
    Outline m_known;
    OnPage m_onPage;
    QRectF m_body;
    QSizeF m_size;
    QPdfWriter m_writer;
    QPainter m_painter;
    Outline m_outline;
    std::vector<Link> m_links;
    double m_y = 0;
};

/// Thrown through the layout when the person cancels.
struct Cancelled {};

} // namespace lastrivet::print
