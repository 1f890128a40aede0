package org.coldpleat.ui.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.ui.chart.cutaway.CutawayDrawing;
import org.coldpleat.ui.chart.cutaway.StagePainter;
import org.coldpleat.ui.chart.cutaway.StageSheet;
import org.coldpleat.ui.chart.cutaway.StageSheet.Fact;
import org.coldpleat.ui.chart.file.Picture;
import org.coldpleat.ui.chart.style.UnitWords;
import org.coldpleat.ui.service.OpenedCase;

/** A filter cut open beside a few facts. */
final class Stages {
    private Stages() {}

    static Picture picture(StageSheet sheet, boolean ground) {
        String facts = String.join(
                ", ",
                sheet.facts().stream()
                        .map(fact -> fact.name() + " " + fact.value())
                        .toList());
        return new Picture(
                sheet.title(),
                ShowTexts.get("stage.description", sheet.subtitle(), facts),
                (g2, area) -> StagePainter.paint(sheet, ground, g2, area));
    }

    /** As it stands in steady flow. */
    static StageSheet steady(CutawayDrawing drawing, PointResult point, OpenedCase opened, UnitWords words) {
        List<Fact> facts = new ArrayList<>();
        point.bypass()
                .ifPresentOrElse(
                        bypass -> {
                            facts.add(share(bypass.share()));
                            facts.add(lift(bypass.open(), bypass.liftShare()));
                        },
                        () -> facts.add(new Fact(ShowTexts.get("fact.valve"), ShowTexts.get("valve.none"), false)));
        facts.add(new Fact(ShowTexts.get("fact.drop"), words.pressure(point.pressureDrop()), false));
        facts.add(new Fact(ShowTexts.get("fact.flow"), words.flow(point.flow()), false));
        String subtitle = ShowTexts.get(
                opened.invented() ? "stage.subtitleInvented" : "stage.subtitle",
                opened.title(),
                point.state(),
                words.temperature(point.temperature()));
        return new StageSheet(drawing.title(), subtitle, drawing, facts, new double[0], List.of());
    }

    static Fact share(double share) {
        return new Fact(ShowTexts.get("fact.share"), percent(share), true);
    }

    static Fact lift(boolean open, double liftShare) {
        String value = open ? ShowTexts.get("valve.open", percent(liftShare)) : ShowTexts.get("valve.shut");
        return new Fact(ShowTexts.get("fact.valve"), value, false);
    }

    static String percent(double share) {
        return ShowTexts.get(
                "unit.percent", String.format(Locale.ROOT, share > 0 && share < 0.0995 ? "%.1f" : "%.0f", 100 * share));
    }
}
