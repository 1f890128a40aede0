package org.coldpleat.model.resolve.bench;

import java.util.List;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.resolve.candidate.TestReport;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/** Loading of a used element from its pressure difference beside that of a new one, same flow and oil, valve shut. */
@Source("ratio of two readings, parts in series taken off; derived here")
final class UsedElement {
    private UsedElement() {}

    /**
     * What both readings say: {@code used/new} of the whole filter, and {@code (used - s)/(new - s)} of the pack, where s is
     * what the other parts take.
     */
    static TestReport report(Section test, Inputs inputs, BenchOil oil, RigParts around, String place) {
        Measured fresh = inputs.folded(test, "newDrop").orElseThrow();
        Measured used = inputs.folded(test, "usedDrop").orElseThrow();
        Fluid fluid = oil.at(RigReader.number(test, "temperature"));
        RigParts.Point point = new RigParts.Point(RigReader.number(test, "flow"), fluid);
        double series = around.seriesDrops(List.of(point))[0];
        double left = fresh.value() - series;
        double loaded = used.value() - series;
        if (left <= 0 || loaded <= 0) {
            return report(
                    TestReport.REFUSED, List.of(), List.of(Notice.of("bench.usedBelowParts", Severity.WARNING, place)));
        }
        double seriesUncertainty = around.seriesUncertainty(List.of(point)) * fluid.dynamicViscosity() * point.flow();
        double byReadings = Math.hypot(fresh.standardUncertainty() / left, used.standardUncertainty() / loaded);
        double byParts = seriesUncertainty * (1 / left - 1 / loaded);
        double whole =
                Math.hypot(fresh.standardUncertainty() / fresh.value(), used.standardUncertainty() / used.value());
        return report(
                "USABLE",
                List.of(
                        factor("filterLoading", used.value() / fresh.value(), whole),
                        factor("packLoading", loaded / left, Math.hypot(byReadings, byParts))),
                List.of(Notice.of("bench.repeats.single", Severity.INFO, place)));
    }

    private static TestReport.Value factor(String key, double value, double lnSigma) {
        return new TestReport.Value(key, Measured.factor(Kind.RATIO, value, lnSigma, Provenance.MEASURED));
    }

    private static TestReport report(String status, List<TestReport.Value> values, List<Notice> notices) {
        return new TestReport("usedElement", status, 1, values, List.of(), List.of(), List.of(), notices);
    }
}
