package org.coldpleat.ui.desktop.view.study;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.certainty.ConfidenceResult.Contribution;
import org.coldpleat.model.certainty.ConfidenceResult.StateOutcome;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.ConfidenceCharts;
import org.coldpleat.ui.chart.style.NamedChart;
import org.coldpleat.ui.desktop.view.chart.ChartNumbers;
import org.coldpleat.ui.desktop.view.chart.NumberRow;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.service.Sentences;

/** Pictures of how sure the answers are, with their numbers. */
final class ConfidencePictures {
    private static final double PERCENT = 100;

    private ConfidencePictures() {}

    static List<Study.Drawn> of(ConfidenceResult result, boolean invented, UnitSystem units) {
        return ConfidenceCharts.all(result, invented, Sentences::measuredThing, units).stream()
                .map(one -> drawn(one, result, units))
                .toList();
    }

    private static Study.Drawn drawn(NamedChart one, ConfidenceResult result, UnitSystem units) {
        return switch (one.name()) {
            case ConfidenceCharts.BANDS ->
                new Study.Drawn(
                        WindowTexts.get("study.bands"),
                        one.drawing(),
                        one.description(),
                        chart -> bands(result, units));
            case ConfidenceCharts.SHARES ->
                new Study.Drawn(
                        WindowTexts.get("study.shares"), one.drawing(), one.description(), chart -> shares(result));
            default -> new Study.Drawn(WindowTexts.get("tab.confidence"), one.drawing(), one.description());
        };
    }

    private static List<NumberRow> bands(ConfidenceResult result, UnitSystem units) {
        Unit unit = units.unit(Kind.TEMPERATURE);
        List<NumberRow> rows = new ArrayList<>();
        for (StateOutcome one : result.outcomes()) {
            String name = WindowTexts.get("study.row", one.candidate(), one.state());
            rows.add(new NumberRow(
                    name,
                    WindowTexts.get("study.low"),
                    ChartNumbers.text(unit.fromSi(one.opening().low()))));
            rows.add(new NumberRow(
                    name,
                    WindowTexts.get("study.median"),
                    ChartNumbers.text(unit.fromSi(one.opening().median()))));
            rows.add(new NumberRow(
                    name,
                    WindowTexts.get("study.high"),
                    ChartNumbers.text(unit.fromSi(one.opening().high()))));
        }
        return rows;
    }

    private static List<NumberRow> shares(ConfidenceResult result) {
        List<NumberRow> rows = new ArrayList<>();
        for (Contribution one : result.focus().contributions()) {
            String name = Sentences.measuredThing(one.group());
            rows.add(new NumberRow(name, WindowTexts.get("study.alone"), ChartNumbers.text(PERCENT * one.first())));
            rows.add(
                    new NumberRow(name, WindowTexts.get("study.withOthers"), ChartNumbers.text(PERCENT * one.total())));
        }
        return rows;
    }
}
