package org.coldpleat.validation.coverage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.coldpleat.model.certainty.CaseConfidence;
import org.coldpleat.model.certainty.CaseDraws;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.certainty.DrawnBands;
import org.coldpleat.model.certainty.OpeningBand;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.coldpleat.shared.casefile.reading.CaseReading;

/**
 * Makes synthetic teardowns with known truth, reads them with the errors that their sheets state, and counts how often the
 * 95 % bands hold the truth and how often the filter stated to open in warmer oil does.
 */
public final class CoverageExperiment {
    private static final int PICTURE = 3;
    private static final int TENTHS = 10;

    private Tally openings = Tally.NONE;
    private Tally opened = Tally.NONE;
    private Tally firstOrder = Tally.NONE;
    private Tally resistance = Tally.NONE;
    private final Map<String, Tally> byEvidence = new TreeMap<>();
    private final Map<String, Tally> byState = new TreeMap<>();
    private final List<double[]> pairs = new ArrayList<>();

    private CoverageExperiment() {}

    /**
     * Runs it.
     *
     * @param first number of the first teardown
     * @param teardowns number of teardowns
     * @param draws draws for each
     * @param compareEach the first-order bands of each so-manieth teardown are looked at too; 0 for none
     */
    public static Coverage run(int first, int teardowns, int draws, int compareEach) {
        CoverageExperiment experiment = new CoverageExperiment();
        for (int i = first; i < first + teardowns; i++) {
            experiment.add(SyntheticTeardown.of(i), draws, compareEach > 0 && i % compareEach == 0);
        }
        return experiment.found();
    }

    private void add(SyntheticTeardown teardown, int draws, boolean compared) {
        CaseDraws truth = new CaseDraws(resolve(teardown.truth()));
        CaseDraws.Common common = truth.common(teardown.moved()).orElseThrow();
        ResolvedCase read = resolve(teardown.readings());
        DrawnBands bands = CaseConfidence.bands(read, draws, 1, Progress.NONE).orElseThrow();
        Optional<Comparison> comparison =
                compared ? Optional.of(Simulation.compare(read).now()) : Optional.empty();
        int candidates = read.candidateNames().size();
        for (int s = 0; s < read.stateNames().size(); s++) {
            double[] openings = new double[candidates];
            for (int i = 0; i < candidates; i++) {
                CaseDraws.Own own = common.candidate(i, teardown.moved()).orElseThrow();
                openings[i] = own.opening(s);
                ConfidenceResult.StateOutcome outcome = bands.outcomes().get(s * candidates + i);
                count(openings[i], outcome, teardown.evidence()[i]);
                if (s == 0) {
                    resistance = resistance.plus(
                            own.mediumResistance(),
                            outcome.mediumResistance().low(),
                            outcome.mediumResistance().high());
                }
                int state = s;
                int candidate = i;
                comparison
                        .flatMap(one -> one.candidates()
                                .get(candidate)
                                .states()
                                .get(state)
                                .openingTemperature())
                        .ifPresent(band -> countFirstOrder(openings[candidate], band));
            }
            ConfidenceResult.Warmer pair = bands.pairs().get(s);
            if (openings[0] != openings[1]) {
                double decided = pair.firstWarmer() + pair.secondWarmer();
                pairs.add(new double[] {pair.firstWarmer() / decided, openings[0] > openings[1] ? 1 : 0});
            }
        }
    }

    private void count(double truth, ConfidenceResult.StateOutcome outcome, String evidence) {
        double low = outcome.opening().low();
        double high = outcome.opening().high();
        openings = openings.plus(truth, low, high);
        if (Double.isFinite(truth)) {
            opened = opened.plus(truth, low, high);
            byEvidence.put(
                    evidence, byEvidence.getOrDefault(evidence, Tally.NONE).plus(truth, low, high));
            byState.put(
                    outcome.state(),
                    byState.getOrDefault(outcome.state(), Tally.NONE).plus(truth, low, high));
        }
    }

    private void countFirstOrder(double truth, OpeningBand band) {
        if (Double.isFinite(truth)) {
            firstOrder = firstOrder.plus(truth, band.low(), band.high());
        }
    }

    private Coverage found() {
        List<Coverage.Tenth> tenths = new ArrayList<>();
        for (int t = 0; t < TENTHS; t++) {
            int tenth = t;
            List<double[]> inside = pairs.stream()
                    .filter(one -> Math.min(TENTHS - 1, (int) (TENTHS * one[0])) == tenth)
                    .toList();
            tenths.add(new Coverage.Tenth(
                    inside.stream().mapToDouble(one -> one[0]).average().orElse(Double.NaN),
                    inside.stream().mapToDouble(one -> one[1]).average().orElse(Double.NaN),
                    inside.size()));
        }
        return new Coverage(openings, opened, byEvidence, byState, firstOrder, resistance, tenths);
    }

    private static ResolvedCase resolve(String text) {
        CaseReading reading = CaseReader.read("synthetic.yaml", text);
        return Simulation.resolve(reading.document()
                        .orElseThrow(() -> new IllegalStateException(reading.problems() + "\n" + text)))
                .resolved()
                .orElseThrow(() -> new IllegalStateException(text));
    }

    /**
     * Prints the tables: number of teardowns (500), draws for each (512), the so-manieth compared at first order (5); draws
     * the stated chances into a file if one is named.
     */
    public static void main(String[] arguments) throws IOException {
        int teardowns = argument(arguments, 0, 500);
        Coverage found = run(0, teardowns, argument(arguments, 1, 512), argument(arguments, 2, 5));
        print("all", found.openings());
        print("truly opening", found.opened());
        found.byEvidence().forEach(CoverageExperiment::print);
        found.byState().forEach(CoverageExperiment::print);
        print("first order", found.firstOrder());
        print("medium resistance", found.resistance());
        System.out.println("stated,found,error,count");
        for (Coverage.Tenth tenth : found.pairs()) {
            System.out.printf(
                    Locale.ROOT, "%.3f,%.3f,%.3f,%d%n", tenth.stated(), tenth.found(), tenth.error(), tenth.count());
        }
        if (arguments.length > PICTURE) {
            Files.writeString(Path.of(arguments[PICTURE]), ReliabilityPicture.of(found.pairs(), teardowns));
        }
    }

    private static void print(String what, Tally tally) {
        System.out.printf(
                Locale.ROOT,
                "%s: %.1f %% of %d (%d below, %d above)%n",
                what,
                100 * tally.share(),
                tally.count(),
                tally.below(),
                tally.above());
    }

    private static int argument(String[] arguments, int place, int fallback) {
        return arguments.length > place ? Integer.parseInt(arguments[place]) : fallback;
    }
}
