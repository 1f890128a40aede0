package org.coldpleat.validation.conservation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.coldpleat.model.steady.OpenTemperatures;
import org.coldpleat.model.steady.OpeningFinder;
import org.coldpleat.validation.benchmark.FilterOnEngine;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.coldpleat.validation.reference.BypassMap;
import org.junit.jupiter.api.Test;

/** Opening temperatures of random engines against a scan of the whole range in steps of 0.5 K. */
class ColdStartOpeningsTest {
    private static final String SOURCE = "single solves, derived here";

    private static final double STEP = 0.5;

    /** Points closer to a found end than this [K] are not compared: ends are found to 1 mK. */
    private static final double EDGE = 2e-3;

    @Test
    void findsWhateverADenseScanFinds() {
        int patterns = 0;
        for (long seed = 1000; seed < 1400; seed++) {
            RandomEngine random = RandomEngine.of(seed);
            FilterOnEngine engine = new FilterOnEngine(random.circuit(), random.filter());
            OpenTemperatures found = OpeningFinder.overOilRange().find(engine.ratioAt(random.speed()));
            if (found.unresolved() > 0) {
                continue;
            }
            patterns += found.kind() == OpenTemperatures.Kind.INTERVALS ? 1 : 0;
            OpeningFinder.Ratio scan = engine.ratioAt(random.speed());
            for (double t = 423.15; t >= 233.15; t -= STEP) {
                double ratio = scan.at(t);
                if (nearAnEnd(found, t) || Double.isNaN(ratio)) {
                    continue;
                }
                String place = "seed " + seed + " at " + t + " K, ratio " + ratio + ", " + found;
                assertEquals(ratio > 1, found.isOpenAt(t), place);
                assertTrue(ratio <= found.greatestRatio() * 1.001, place);
            }
        }
        assertTrue(patterns >= 3, "too few engines with warm openings in the sample: " + patterns);
    }

    @Test
    void mapAgreesWithSinglePoints() {
        RandomEngine random = RandomEngine.of(1004);
        FilterOnEngine engine = new FilterOnEngine(random.circuit(), random.filter());
        double[] temperatures = {240, 260, 280, 320, 360};
        double[] speeds = {5, 15, 50};
        BypassMap map = BypassMap.of(engine, temperatures, speeds);
        for (int i = 0; i < temperatures.length; i++) {
            for (int j = 0; j < speeds.length; j++) {
                FilterOnEngine.State state = engine.solve(speeds[j], temperatures[i], Optional.empty());
                // both solves stop at 1e-13 of the flow; a stiff valve magnifies that
                check("bypassed share of a map")
                        .at(temperatures[i] + " K, " + speeds[j] + " rev/s")
                        .expected(state.filter().bypassShare(), "1")
                        .computed(map.bypassShare()[i][j])
                        .within(1e-8, "both solves stop at 1e-13 of the flow; a stiff valve magnifies that");
            }
        }
    }

    private static boolean nearAnEnd(OpenTemperatures found, double t) {
        return found.intervals().stream().anyMatch(i -> Math.abs(t - i.low()) < EDGE || Math.abs(t - i.high()) < EDGE);
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.START, quantity, SOURCE);
    }
}
