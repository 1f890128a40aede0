package org.coldpleat.model.resolve;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.resolve.bench.BenchOil;
import org.coldpleat.model.resolve.bench.BenchReader;
import org.coldpleat.model.resolve.bench.RigParts;
import org.coldpleat.model.resolve.candidate.BenchEvidence;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.candidate.CandidateBuilder;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.model.resolve.input.Unknown;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Measured;

/**
 * One candidate of a case in computing form: its tests evaluated, the filter built, the ledger of the build. Immutable,
 * and made from its sheet alone, but for tests, which know the oil of the case and its coldest temperature.
 */
final class ResolvedCandidate {
    private final Section sheet;
    private final boolean blockValve;
    private final int position;
    private final double coldest;
    private final BenchEvidence bench;
    private final BuiltCandidate built;
    private final Map<String, Unknown> unknowns;
    private final Map<String, Measured> values;
    private final List<Assumption> assumptions;

    private ResolvedCandidate(Section sheet, boolean blockValve, int position, Oil oil, double coldest) {
        this.sheet = sheet;
        this.blockValve = blockValve;
        this.position = position;
        this.coldest = coldest;
        bench = bench(oil);
        Inputs inputs = Inputs.ofCandidate(position);
        built = CandidateBuilder.candidate(sheet, blockValve, inputs, bench, Optional.empty());
        unknowns = inputs.unknowns();
        values = inputs.completed();
        assumptions = inputs.assumptions();
    }

    /**
     * A candidate of a case.
     *
     * @param blockValve true if the engine has a bypass valve in its block
     * @param coldest temperature for which a leak is scaled [K]
     * @param before the candidate in that place of another case; taken where its sheet says the same and either case
     *     would evaluate its tests alike
     * @param sameOil true if both cases have the same oil
     */
    static ResolvedCandidate of(
            Section sheet,
            boolean blockValve,
            int position,
            Oil oil,
            double coldest,
            Optional<ResolvedCandidate> before,
            boolean sameOil) {
        boolean tested = sheet.section("tests").isPresent();
        return before.filter(one -> one.sheet.saysSame(sheet) && one.blockValve == blockValve)
                .filter(one -> !tested || (sameOil && one.coldest == coldest))
                .orElseGet(() -> new ResolvedCandidate(sheet, blockValve, position, oil, coldest));
    }

    /**
     * Evaluates the tests in the surroundings that the sheet gives them. What a scale test says is needed first, since a
     * filter without a stated opening pressure has its valve from there.
     */
    private BenchEvidence bench(Oil oil) {
        Optional<Section> tests = sheet.section("tests");
        if (tests.isEmpty()) {
            return BenchEvidence.NONE;
        }
        Inputs inputs = Inputs.ofCandidate(position);
        BuiltCandidate best =
                CandidateBuilder.candidate(sheet, blockValve, inputs, BenchEvidence.NONE, Optional.empty());
        return BenchReader.read(
                sheet,
                Inputs.ofCandidate(position),
                BenchOil.of(tests, oil, Inputs.shared()),
                new RigParts(best, moved(inputs, best), false),
                coldest);
    }

    /** The filter with one of its unknowns at a time moved by one standard uncertainty, the medium kept. */
    private List<BuiltCandidate> moved(Inputs inputs, BuiltCandidate best) {
        String medium = sheet.path() + "." + CandidateBuilder.RESISTANCE;
        Map<String, Measured> known = inputs.completed();
        return inputs.unknowns().values().parallelStream()
                .filter(unknown -> !unknown.path().equals(medium))
                .map(unknown -> CandidateBuilder.candidate(
                        sheet,
                        blockValve,
                        Inputs.ofCandidate(position)
                                .movingAgain(
                                        Map.of(
                                                unknown.path(),
                                                unknown.moved(1),
                                                medium,
                                                best.evidence().median()),
                                        known),
                        BenchEvidence.NONE,
                        Optional.of(best.evidence())))
                .toList();
    }

    /** The candidate with some unknowns moved: path to value [SI]. */
    BuiltCandidate moving(Map<String, Double> moved) {
        return CandidateBuilder.candidate(
                sheet,
                blockValve,
                Inputs.ofCandidate(position).movingAgain(moved, values),
                bench,
                Optional.of(built.evidence()));
    }

    BenchEvidence bench() {
        return bench;
    }

    BuiltCandidate built() {
        return built;
    }

    /** What was uncertain in the build, by path. */
    Map<String, Unknown> unknowns() {
        return Collections.unmodifiableMap(unknowns);
    }

    List<Assumption> assumptions() {
        return assumptions;
    }
}
