package org.coldpleat.model.run;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.coldpleat.model.coldstart.OpeningFinder;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.Measured;

/**
 * A case in computing form: SI values with their spreads, defaults named, and the way back to every input. Immutable;
 * can be built anew with some unknowns moved.
 */
public final class ResolvedCase {
    private final CaseDocument document;
    private final double from;
    private final double to;
    private final List<NamedTemperature> named;
    private final List<Duty> duties;
    private final SharedModel shared;
    private final List<BuiltCandidate> candidates;
    private final List<BenchEvidence> bench;
    private final Map<String, Unknown> sharedUnknowns;
    private final List<Map<String, Unknown>> ownUnknowns;
    private final Oil oil;
    private final Map<String, Measured> sharedValues;
    private final List<Map<String, Measured>> ownValues;
    private final List<Assumption> assumptions;
    private final List<Notice> oilNotices;

    ResolvedCase(
            CaseDocument document,
            double from,
            double to,
            List<NamedTemperature> named,
            List<Duty> duties,
            List<Notice> oilNotices) {
        this.document = document;
        this.from = from;
        this.to = to;
        this.named = List.copyOf(named);
        this.duties = List.copyOf(duties);
        this.oilNotices = List.copyOf(oilNotices);
        Inputs common = Inputs.shared();
        oil = OilBuilder.oil(document.root().section("oil").orElseThrow(), common);
        shared = buildShared(common);
        sharedUnknowns = common.unknowns();
        sharedValues = common.completed();
        List<Assumption> assumed = new ArrayList<>(common.assumptions());
        List<BuiltCandidate> built = new ArrayList<>();
        List<BenchEvidence> tests = new ArrayList<>();
        List<Map<String, Unknown>> own = new ArrayList<>();
        List<Map<String, Measured>> values = new ArrayList<>();
        List<Section> sheets = document.root().sections("candidates");
        for (int i = 0; i < sheets.size(); i++) {
            Inputs inputs = Inputs.ofCandidate(i);
            tests.add(bench(sheets.get(i), i));
            built.add(CandidateBuilder.candidate(sheets.get(i), inputs, tests.get(i), Optional.empty()));
            own.add(inputs.unknowns());
            values.add(inputs.completed());
            assumed.addAll(inputs.assumptions());
        }
        candidates = List.copyOf(built);
        bench = List.copyOf(tests);
        ownUnknowns = List.copyOf(own);
        ownValues = List.copyOf(values);
        assumptions = distinct(assumed);
    }

    /**
     * Evaluates the tests of a candidate in the surroundings that its sheet gives them. What a scale test says is needed
     * first, since a filter without a stated opening pressure has its valve from there.
     */
    private BenchEvidence bench(Section sheet, int position) {
        Optional<Section> tests = sheet.section("tests");
        if (tests.isEmpty()) {
            return BenchEvidence.NONE;
        }
        Inputs inputs = Inputs.ofCandidate(position);
        BuiltCandidate best = CandidateBuilder.candidate(sheet, inputs, BenchEvidence.NONE, Optional.empty());
        String medium = sheet.path() + "." + CandidateBuilder.RESISTANCE;
        List<BuiltCandidate> moved = new ArrayList<>();
        for (Unknown unknown : inputs.unknowns().values()) {
            if (!unknown.path().equals(medium)) {
                Map<String, Double> values = Map.of(
                        unknown.path(),
                        unknown.moved(1),
                        medium,
                        best.evidence().median());
                moved.add(CandidateBuilder.candidate(
                        sheet,
                        Inputs.ofCandidate(position).movingAgain(values, inputs.completed()),
                        BenchEvidence.NONE,
                        Optional.of(best.evidence())));
            }
        }
        return BenchReader.read(
                sheet,
                Inputs.ofCandidate(position),
                BenchOil.of(tests, oil, Inputs.shared()),
                new Surroundings(best, moved, false),
                coldestNamed());
    }

    private static List<Assumption> distinct(List<Assumption> all) {
        Map<String, Assumption> byPath = new LinkedHashMap<>();
        all.forEach(assumption -> byPath.putIfAbsent(assumption.path(), assumption));
        return List.copyOf(byPath.values());
    }

    private SharedModel buildShared(Inputs inputs) {
        OilLubricant lubricant = new OilLubricant(OilBuilder.shifted(oil, inputs));
        Optional<EngineModel> engine =
                document.root().section("engine").map(section -> EngineBuilder.engine(section, lubricant, inputs));
        return new SharedModel(lubricant, engine);
    }

    /** The shared model with some unknowns moved: path to value [SI]. */
    SharedModel sharedMoving(Map<String, Double> moved) {
        return buildShared(Inputs.shared().movingAgain(moved, sharedValues));
    }

    /** A candidate with some unknowns moved: path to value [SI]. */
    BuiltCandidate candidateMoving(int position, Map<String, Double> moved) {
        return CandidateBuilder.candidate(
                document.root().sections("candidates").get(position),
                Inputs.ofCandidate(position).movingAgain(moved, ownValues.get(position)),
                bench.get(position),
                Optional.of(candidates.get(position).evidence()));
    }

    /** The document this case was made from. */
    public CaseDocument document() {
        return document;
    }

    /**
     * Every quantity of the case by its path, in the order of the file, with the usual spread of its bench reading where
     * none was written.
     */
    public Map<String, Measured> understood() {
        Map<String, Measured> understood = new LinkedHashMap<>();
        document.quantities().forEach((path, value) -> understood.put(path, DefaultSpreads.complete(path, value)));
        return Collections.unmodifiableMap(understood);
    }

    /** Title of the case. */
    public String title() {
        return document.root().text("title").orElse("");
    }

    /** Names of the candidates, in the order of the case. */
    public List<String> candidateNames() {
        return candidates.stream().map(BuiltCandidate::name).toList();
    }

    /** Names of the states, flow stand first. */
    public List<String> stateNames() {
        return duties.stream().map(Duty::name).toList();
    }

    /** Coldest oil temperature looked at [K]. */
    public double from() {
        return from;
    }

    /** Warmest oil temperature looked at [K]. */
    public double to() {
        return to;
    }

    /** Oil temperatures the reader wants to see by name. */
    public List<NamedTemperature> named() {
        return named;
    }

    double coldestNamed() {
        return named.stream().mapToDouble(NamedTemperature::temperature).min().orElse(from);
    }

    double warmestNamed() {
        return named.stream().mapToDouble(NamedTemperature::temperature).max().orElse(to);
    }

    /** Looks for every temperature of the range at which a valve is open: ends to 0.1 mK, intervals down to 0.1 K. */
    OpeningFinder openingFinder() {
        return new OpeningFinder(from, to, 4, 0.1, 1e-4);
    }

    List<Duty> duties() {
        return duties;
    }

    SharedModel shared() {
        return shared;
    }

    /** What the tests of a candidate gave. */
    BenchEvidence bench(int position) {
        return bench.get(position);
    }

    List<BuiltCandidate> candidates() {
        return candidates;
    }

    /** Unknowns all candidates share, by path. */
    Map<String, Unknown> sharedUnknowns() {
        return sharedUnknowns;
    }

    /** Unknowns of one candidate, by path. */
    Map<String, Unknown> ownUnknowns(int position) {
        return Collections.unmodifiableMap(ownUnknowns.get(position));
    }

    List<Assumption> assumptions() {
        return assumptions;
    }

    List<Notice> oilNotices() {
        return oilNotices;
    }

    /** Position of a candidate by name. */
    Optional<Integer> positionOf(String name) {
        int position = candidateNames().indexOf(name);
        return position < 0 ? Optional.empty() : Optional.of(position);
    }

    /**
     * Position of a candidate that must be there.
     *
     * @throws IllegalArgumentException if there is no candidate of that name
     */
    public int requirePosition(String name) {
        return positionOf(name)
                .orElseThrow(() -> new IllegalArgumentException("no candidate " + name + " in " + candidateNames()));
    }

    /** Position of the one candidate asked for, or of all. */
    int[] positions(Optional<String> candidate) {
        return candidate
                .map(name -> new int[] {requirePosition(name)})
                .orElseGet(() -> IntStream.range(0, candidates.size()).toArray());
    }

    /** A state by name. */
    Optional<Duty> duty(String name) {
        return duties.stream().filter(duty -> duty.name().equals(name)).findFirst();
    }
}
