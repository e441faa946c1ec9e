// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/MeasurementPanel.h"

#include "core/measuring/Series.h"
#include "core/readiness/Limits.h"
#include "ui/convert/QtText.h"
#include "ui/parts/MeasurementPlot.h"
#include "ui/shell/Session.h"

#include <QLabel>
#include <QVBoxLayout>

namespace lastrivet::ui {

MeasurementPanel::MeasurementPanel(Session &session, QWidget *parent)
    : SectionAside(parent)
    , m_session(session)
    , m_words(new QLabel(this))
    , m_plot(new MeasurementPlot(session.theme(), this))
{
    m_words->setWordWrap(true);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(8, 0, 0, 0);
    layout->addWidget(m_words);
    layout->addWidget(m_plot);
    layout->addStretch(1);
}

void MeasurementPanel::present(std::int64_t id)
{
    const auto records = m_session.records();
    const Measurement *measurement = records->findLive(Id<Measurement>{id});
    setVisible(measurement != nullptr);
    if (!measurement)
        return;
    std::vector<PlottedValue> values;
    for (const Measurement *each : measuring::seriesOf(*measurement, *records, m_session.today()))
        values.push_back(
            {*each->value, dayText(*each->measured_on),
             readiness::isOutside(*each->value, measurement->minimum, measurement->maximum)});
    const auto count = int(values.size());
    m_words->setText(count == 0 ? tr("Not measured yet.")
                                : tr("Measured %n times.", nullptr, count));
    m_plot->setVisible(count > 1);
    m_plot->show(std::move(values), measurement->minimum, measurement->maximum,
                 toQt(measurement->unit));
}

} // namespace lastrivet::ui
