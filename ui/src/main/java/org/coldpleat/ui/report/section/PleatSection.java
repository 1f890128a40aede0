package org.coldpleat.ui.report.section;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.sizing.SizingResult;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.ui.chart.SizeChart;
import org.coldpleat.ui.chart.file.Picture;
import org.coldpleat.ui.report.input.ReportInput;
import org.jsoup.nodes.Element;

/** What more or fewer pleats would change, where they are counted: up to an optimum they help, beyond it they choke. */
public final class PleatSection implements ReportSection {
    @Override
    public Optional<Element> of(ReportInput input, Amounts amounts) {
        if (input.pleats().isEmpty()) {
            return Optional.empty();
        }
        Element section = Tags.of("section", "").id("pleats");
        section.appendChild(Tags.text("h2", "", ReportTexts.get("pleats.title")));
        int number = 0;
        for (SizingResult one : input.pleats()) {
            section.appendChild(Figure.of(
                    Picture.of(SizeChart.of(one, input.units()), SizeChart.description(one)), "pleats-" + ++number));
            section.appendChild(SentenceFold.plain(one.verdicts(), amounts));
        }
        List<Notice> notices = input.pleats().stream()
                .flatMap(one -> one.notices().stream())
                .distinct()
                .toList();
        return Optional.of(section.appendChild(BasisSection.notices(notices, amounts)));
    }
}
