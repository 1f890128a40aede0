package org.coldpleat.model.resolve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.coldpleat.model.resolve.candidate.BenchEvidence;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.engine.EngineCompletion;
import org.coldpleat.model.resolve.engine.SharedModel;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.model.resolve.input.NamedTemperature;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.resolve.input.Unknown;
import org.coldpleat.model.typical.DefaultSpreads;
import org.coldpleat.model.typical.TypicalEngine;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.Measured;

/**
 * A case in computing form: SI values with their spreads, defaults named, and the way back to every input. Immutable;
 * can be built anew with some unknowns moved, and hands parts that stay as they are on to the case of a changed document.
 */
public final class ResolvedCase {
    private final EngineCompletion.Completed completed;
    private final double from;
    private final double to;
    private final List<NamedTemperature> named;
    private final List<OperatingState> operatingStates;
    private final ResolvedShared shared;
    private final SharedModel model;
    private final List<ResolvedCandidate> own;
    private final List<BuiltCandidate> candidates;
    private final List<Assumption> assumptions;
    private final List<Notice> oilNotices;
    private final Optional<InPlace> changed;

    /** What stands in the place of a candidate, of what all share, and of a state. */
    public interface Changed {
        SharedModel shared(SharedModel as, Map<String, Double> moved);

        BuiltCandidate candidate(BuiltCandidate as);

        OperatingState operatingState(OperatingState as);
    }

    private record InPlace(int position, Changed by) {}

    private ResolvedCase(ResolvedCase as, InPlace place) {
        completed = as.completed;
        from = as.from;
        to = as.to;
        named = as.named;
        operatingStates =
                as.operatingStates.stream().map(place.by()::operatingState).toList();
        shared = as.shared;
        model = place.by().shared(shared.model(), Map.of());
        own = as.own;
        List<BuiltCandidate> next = new ArrayList<>(as.candidates);
        next.set(place.position(), place.by().candidate(next.get(place.position())));
        candidates = List.copyOf(next);
        assumptions = as.assumptions;
        oilNotices = as.oilNotices;
        changed = Optional.of(place);
    }

    /** @param before a case with much the same document, of which every part is taken that says the same; empty for none */
    ResolvedCase(
            EngineCompletion.Completed completed,
            double from,
            double to,
            List<NamedTemperature> named,
            List<OperatingState> operatingStates,
            List<Notice> oilNotices,
            Optional<ResolvedCase> before) {
        this.completed = completed;
        this.from = from;
        this.to = to;
        this.named = List.copyOf(named);
        this.operatingStates = List.copyOf(operatingStates);
        this.oilNotices = List.copyOf(oilNotices);
        shared = ResolvedShared.of(document().root(), before.map(one -> one.shared));
        model = shared.model();
        boolean sameOil = before.map(one -> one.shared.hasOilOf(shared)).orElse(false);
        List<ResolvedCandidate> parts = new ArrayList<>();
        List<Assumption> assumed = new ArrayList<>(shared.assumptions());
        boolean blockValve = document()
                .root()
                .section("engine")
                .map(engine -> engine.has("blockBypass"))
                .orElse(false);
        List<Section> sheets = document().root().sections("candidates");
        for (int i = 0; i < sheets.size(); i++) {
            int position = i;
            Optional<ResolvedCandidate> there =
                    before.filter(one -> position < one.own.size()).map(one -> one.own.get(position));
            parts.add(ResolvedCandidate.of(sheets.get(i), blockValve, i, shared.oil(), coldestNamed(), there, sameOil));
            assumed.addAll(parts.get(i).assumptions());
        }
        own = List.copyOf(parts);
        changed = Optional.empty();
        candidates = own.stream().map(ResolvedCandidate::built).toList();
        assumptions = distinct(assumed);
    }

    private static List<Assumption> distinct(List<Assumption> all) {
        Map<String, Assumption> byPath = new LinkedHashMap<>();
        all.forEach(assumption -> byPath.putIfAbsent(assumption.path(), assumption));
        return List.copyOf(byPath.values());
    }

    /** The shared model with some unknowns moved: path to value [SI]. */
    public SharedModel sharedMoving(Map<String, Double> moved) {
        SharedModel as = shared.moving(moved);
        return changed.isPresent() ? changed.get().by().shared(as, moved) : as;
    }

    /** A candidate with some unknowns moved: path to value [SI]. */
    public BuiltCandidate candidateMoving(int position, Map<String, Double> moved) {
        BuiltCandidate as = own.get(position).moving(moved);
        return changed.isPresent() && changed.get().position() == position
                ? changed.get().by().candidate(as)
                : as;
    }

    /**
     * The case with another filter in the place of a candidate. Document, unknowns and tests stay those of the filter as
     * measured.
     *
     * @throws IllegalArgumentException if this case has been changed before
     */
    public ResolvedCase changed(int position, Changed by) {
        if (changed.isPresent()) {
            throw new IllegalArgumentException("a case must be changed at most once, was before");
        }
        return new ResolvedCase(this, new InPlace(position, by));
    }

    /** A candidate as measured, whatever stands in its place. */
    public BuiltCandidate measured(int position) {
        return own.get(position).built();
    }

    /** The document this case was made from, with what stands in. */
    public CaseDocument document() {
        return completed.document();
    }

    /** The row of the table of typical engines behind each value that stands in, by the path of the value. */
    public Map<String, TypicalEngine.Row> standIns() {
        return completed.standIns();
    }

    /**
     * Every quantity of the case by its path, in the order of the file, with the usual spread of its bench reading where
     * none was written.
     */
    public Map<String, Measured> understood() {
        Map<String, Measured> understood = new LinkedHashMap<>();
        document().quantities().forEach((path, value) -> understood.put(path, DefaultSpreads.complete(path, value)));
        return Collections.unmodifiableMap(understood);
    }

    /** Title of the case; the name of its file if it has none. */
    public String title() {
        return document().title();
    }

    /** True if the case says that its data are invented. */
    public boolean isInvented() {
        return document().root().flag("invented").orElse(false);
    }

    /** What tells one case file from another: a digest of the whole text. */
    public String digest() {
        return document().digest();
    }

    /** The bench sheet of a candidate as written. */
    public Section sheet(int position) {
        return document().root().sections("candidates").get(position);
    }

    /** Names of the candidates, in the order of the case. */
    public List<String> candidateNames() {
        return candidates.stream().map(BuiltCandidate::name).toList();
    }

    /** Names of the states, flow stand first. */
    public List<String> stateNames() {
        return operatingStates.stream().map(OperatingState::name).toList();
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

    public double coldestNamed() {
        return named.stream().mapToDouble(NamedTemperature::temperature).min().orElse(from);
    }

    public double warmestNamed() {
        return named.stream().mapToDouble(NamedTemperature::temperature).max().orElse(to);
    }

    public List<OperatingState> operatingStates() {
        return operatingStates;
    }

    public SharedModel shared() {
        return model;
    }

    /** What the tests of a candidate gave. */
    public BenchEvidence bench(int position) {
        return own.get(position).bench();
    }

    public List<BuiltCandidate> candidates() {
        return candidates;
    }

    /** Unknowns all candidates share, by path. */
    public Map<String, Unknown> sharedUnknowns() {
        return shared.unknowns();
    }

    /** Unknowns of one candidate, by path. */
    public Map<String, Unknown> ownUnknowns(int position) {
        return own.get(position).unknowns();
    }

    public List<Assumption> assumptions() {
        return assumptions;
    }

    public List<Notice> oilNotices() {
        return oilNotices;
    }

    /** Position of a candidate by name. */
    public Optional<Integer> positionOf(String name) {
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
    public int[] positions(Optional<String> candidate) {
        return candidate
                .map(name -> new int[] {requirePosition(name)})
                .orElseGet(() -> IntStream.range(0, candidates.size()).toArray());
    }

    /** A state by name. */
    public Optional<OperatingState> operatingState(String name) {
        return operatingStates.stream()
                .filter(operatingState -> operatingState.name().equals(name))
                .findFirst();
    }
}
