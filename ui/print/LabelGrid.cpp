// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/LabelGrid.h"

namespace lastrivet::print {

QRectF LabelGrid::place(int index) const
{
    const int column = index % columns;
    const int row = index / columns;
    return {millimetres(left + column * (width + gap_across)),
            millimetres(top + row * (height + gap_down)), millimetres(width), millimetres(height)};
}

std::vector<LabelGrid> labelGrids(Paper paper)
{
    if (paper == Paper::Letter)
        return {{paper, 2, 5, 101.6, 50.8, 4.0, 12.7, 4.7, 0},
                {paper, 2, 7, 101.6, 33.9, 4.0, 21.2, 4.7, 0},
                {paper, 3, 10, 66.7, 25.4, 4.8, 12.7, 3.1, 0}};
    return {{paper, 2, 5, 99.1, 57.0, 4.7, 6.0, 2.5, 0},
            {paper, 2, 7, 99.1, 38.1, 4.7, 15.1, 2.5, 0},
            {paper, 3, 8, 70.0, 37.0, 0, 0.5, 0, 0},
            {paper, 3, 8, 63.5, 33.9, 7.2, 12.9, 2.5, 0},
            {paper, 4, 10, 48.5, 25.4, 8.0, 21.5, 0, 0}};
}

} // namespace lastrivet::print
