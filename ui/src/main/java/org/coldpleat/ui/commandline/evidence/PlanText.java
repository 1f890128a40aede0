package org.coldpleat.ui.commandline.evidence;

import java.util.List;
import org.coldpleat.model.certainty.measurement.TestPlan;
import org.coldpleat.shared.notice.NoticeText;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.QuantityFormat;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.ui.text.CompareText;
import org.coldpleat.ui.text.Figures;
import org.coldpleat.ui.text.Table;
import org.coldpleat.ui.text.Texts;

/** A planned test as a page for a terminal. */
final class PlanText {
    private PlanText() {}

    static String of(TestPlan plan, UnitSystem units) {
        StringBuilder page = new StringBuilder();
        page.append(Texts.get("plan.header", Texts.get("test." + plan.test()), plan.candidate()))
                .append('\n');
        Table.wrap(Texts.get("plan.prepare." + plan.test()), CompareText.WIDTH - 4)
                .forEach(line -> page.append("  ").append(line).append('\n'));
        Table table = new Table(new int[] {48, 50}, new boolean[] {false, false});
        plan.conditions()
                .forEach(one ->
                        table.row(Texts.get("plan.condition." + one.key()), QuantityFormat.format(one.value(), units)));
        table.row(Texts.get("plan.reading." + plan.test()), shown(units, plan.reading(), plan.expected()));
        table.row(
                Texts.get("plan.duration"), Texts.get("plan.minutes", Figures.plain3(Math.ceil(plan.duration() / 60))));
        table.row(Texts.get("plan.present", Texts.get("plan.target." + plan.target())), percent(plan.presentLnSigma()));
        table.row(
                Texts.get("plan.reached", shown(units, plan.reading(), plan.resolution())),
                percent(plan.reachedLnSigma()));
        table.row(
                Texts.get("plan.needed"),
                plan.resolutionNeeded().isPresent()
                        ? shown(units, plan.reading(), plan.resolutionNeeded().getAsDouble())
                        : Texts.get("plan.cannot"));
        table.lines().forEach(line -> page.append(line).append('\n'));
        page.append(Texts.get("plan.cautions")).append('\n');
        for (String caution : plan.cautions()) {
            List<String> lines = Table.wrap(NoticeText.text(caution, List.of()), CompareText.WIDTH - 6);
            for (int i = 0; i < lines.size(); i++) {
                page.append(i == 0 ? "  - " : "    ").append(lines.get(i)).append('\n');
            }
        }
        return page.toString();
    }

    private static String percent(double lnSigma) {
        return Texts.get("plan.percent", Figures.percent(lnSigma));
    }

    private static String shown(UnitSystem units, Kind kind, double value) {
        return QuantityFormat.format(Measured.exact(kind, value, Provenance.MEASURED), units);
    }
}
