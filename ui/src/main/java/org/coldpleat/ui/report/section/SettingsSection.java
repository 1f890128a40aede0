package org.coldpleat.ui.report.section;

import java.util.Optional;
import org.coldpleat.ui.chart.SettingsChart;
import org.coldpleat.ui.chart.file.Picture;
import org.coldpleat.ui.report.input.ReportInput;
import org.jsoup.nodes.Element;

/** What another opening pressure of the bypass valve would change: both risks side by side. */
public final class SettingsSection implements ReportSection {
    @Override
    public Optional<Element> of(ReportInput input, Amounts amounts) {
        Element section = Tags.of("section", "").id("settings");
        section.appendChild(Tags.text("h2", "", ReportTexts.get("settings.title")));
        section.appendChild(Figure.of(
                Picture.of(
                        SettingsChart.of(input.settings(), input.units()), SettingsChart.description(input.settings())),
                "settings-1"));
        section.appendChild(SentenceFold.plain(input.settings().verdicts(), amounts));
        return Optional.of(
                section.appendChild(BasisSection.notices(input.settings().notices(), amounts)));
    }
}
