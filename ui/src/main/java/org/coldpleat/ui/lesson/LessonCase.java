package org.coldpleat.ui.lesson;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.coldpleat.model.change.CandidateChange;
import org.coldpleat.model.progress.Run;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.steady.QuickCurves;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;

/**
 * A case to ask, and the same case with some values changed. Questions are put to one candidate: the first whose valve
 * opens in a state of the engine, else on a flow stand, else simply the first.
 */
public final class LessonCase {
    private static final double FREEZING = 273.15;

    private final CaseService service;
    private final CaseDraft draft;
    private final OpenedCase opened;
    private final int position;
    private final Optional<String> engineState;
    private final Optional<String> standState;
    private final QuickCurves quickCurves;

    private LessonCase(CaseService service, CaseDraft draft, OpenedCase opened) {
        this.service = service;
        this.draft = draft;
        this.opened = opened;
        List<String> engine = names("engine");
        List<String> stand = names("flowStand");
        standState = stand.stream().findFirst();
        Subject subject = subject(engine)
                .or(() -> subject(stand))
                .orElseGet(() -> new Subject(
                        0, opened.quickCurves(opened.states().get(0)).now()));
        position = subject.position();
        quickCurves = subject.quickCurves();
        engineState = engine.contains(state())
                ? Optional.of(state())
                : engine.stream().findFirst();
    }

    private record Subject(int position, QuickCurves quickCurves) {}

    /**
     * A case as it is written, already opened.
     *
     * @param draft the same case, to be changed
     */
    public static LessonCase of(CaseService service, CaseDraft draft, OpenedCase opened) {
        return new LessonCase(service, draft, opened);
    }

    private Optional<Subject> subject(List<String> states) {
        for (String one : states) {
            QuickCurves all = opened.quickCurves(one).now();
            for (int i = 0; i < all.candidates().size(); i++) {
                if (!all.candidates().get(i).intervals().isEmpty()) {
                    return Optional.of(new Subject(i, all));
                }
            }
        }
        return Optional.empty();
    }

    private List<String> names(String section) {
        return opened.document()
                .root()
                .section(section)
                .map(found -> found.sections("states").stream()
                        .map(one -> one.text("name").orElse(""))
                        .filter(Predicate.not(String::isEmpty))
                        .toList())
                .orElse(List.of());
    }

    OpenedCase opened() {
        return opened;
    }

    String candidate() {
        return opened.candidates().get(position);
    }

    /** The state in which the candidate opens, an engine's if there is one. */
    String state() {
        return quickCurves.state();
    }

    Optional<String> engineState() {
        return engineState;
    }

    Optional<String> standState() {
        return standState;
    }

    /** Path of a field of the candidate's sheet. */
    String path(String field) {
        return "candidates[" + position + "]." + field;
    }

    /** A quantity of the case by its path. */
    Optional<Measured> quantity(String path) {
        return Optional.ofNullable(opened.understood().get(path));
    }

    /** How many sections a list of the case has. */
    int count(String list) {
        return draft.count(list);
    }

    /** The case with some values multiplied; nothing if one of them is not given or the case does not stand so. */
    Optional<OpenedCase> scaled(Map<String, Double> factors) {
        return changed(draft, factors, List.of());
    }

    /** The case with a change on the candidate; nothing if no filter can be changed so. */
    Optional<OpenedCase> with(CandidateChange change) {
        return opened.changed(candidate(), change);
    }

    /** Opening pressure of the candidate's own valve [Pa], if it has one. */
    OptionalDouble openingPressure() {
        return opened.present(candidate()).openingPressure();
    }

    /** The case on a bench that pushes a flow [m3/s], without engine, and with some values multiplied. */
    Optional<OpenedCase> onBench(Map<String, Double> factors, double flow) {
        CaseDraft bench = draft.clear("flowStand")
                .set("flowStand.states[0].name", "bench")
                .set("flowStand.states[0].flow", flow + " " + Kind.FLOW_RATE.siUnit());
        return changed(bench, factors, List.of("engine", "start", "duty", "oil.coldPoint"));
    }

    private Optional<OpenedCase> changed(CaseDraft from, Map<String, Double> factors, List<String> left) {
        CaseDraft changed = from;
        for (String field : left) {
            changed = changed.clear(field);
        }
        for (Map.Entry<String, Double> one : factors.entrySet()) {
            Optional<Measured> value = quantity(one.getKey());
            if (value.isEmpty()) {
                return Optional.empty();
            }
            changed = changed.set(one.getKey(), text(value.get(), one.getValue()));
        }
        return service.openDraft("lesson", changed, Optional.of(opened)).opened();
    }

    private static String text(Measured value, double factor) {
        double scaled = factor * value.value();
        return value.kind() == Kind.COUNT
                ? Long.toString(Math.round(scaled))
                : scaled + " " + value.kind().siUnit();
    }

    /** The candidate alone and what it is in a changed case, in the state of the lesson; the case as it is if unchanged. */
    QuickCurves glanceBeside(OpenedCase other, String name) {
        if (other == opened) {
            return quickCurves;
        }
        QuickCurves.Candidate turned =
                other.quickCurves(state()).now().candidates().get(position);
        return new QuickCurves(
                quickCurves.title(),
                quickCurves.invented(),
                quickCurves.state(),
                quickCurves.from(),
                quickCurves.to(),
                quickCurves.named(),
                List.of(
                        quickCurves.candidates().get(position),
                        new QuickCurves.Candidate(
                                candidate() + " " + name,
                                turned.curve(),
                                turned.intervals(),
                                turned.openingPressure())));
    }

    /** Cold end of the range the case looks at [K]. */
    double from() {
        return quickCurves.from();
    }

    /** Warm end of the range the case looks at [K]. */
    double to() {
        return quickCurves.to();
    }

    /** Coldest temperature that the case names [K], else 25 K below freezing. */
    double coldest() {
        return named().min().orElse(FREEZING - 25);
    }

    /** Warmest temperature that the case names [K], else 90 K above freezing. */
    double warmest() {
        return named().max().orElse(FREEZING + 90);
    }

    private java.util.stream.DoubleStream named() {
        return opened
                .document()
                .root()
                .section("temperatures")
                .map(section -> section.sections("named"))
                .orElse(List.<Section>of())
                .stream()
                .flatMap(one -> one.quantity("temperature").stream())
                .mapToDouble(Measured::value);
    }

    /** Warmest oil in which the candidate's valve is open in a state of a case [K]; nothing if in none. */
    OptionalDouble opening(OpenedCase other, String name) {
        List<double[]> intervals =
                other.quickCurves(name).now().candidates().get(position).intervals();
        return intervals.stream().mapToDouble(one -> one[1]).max();
    }

    /** The candidate in a state of a case at a temperature [K]. */
    PointResult at(OpenedCase other, String name, double temperature) {
        return other.point(candidate(), name, temperature).now();
    }

    /** The candidate with a flow [m3/s] at a temperature [K]. */
    PointResult atFlow(OpenedCase other, double flow, double temperature) {
        return other.pointAtFlow(candidate(), flow, temperature).now();
    }

    /** The service life of the candidate in a case; nothing if it has no duty or the sheet no capacity. */
    Optional<ServiceResult.Candidate> service(OpenedCase other) {
        return other.service(OptionalDouble.empty())
                .map(Run::now)
                .map(result -> result.candidates().get(position))
                .filter(ServiceResult.Candidate::isComputed);
    }

    /** A flow to compare filters at [m3/s]: that of the stand, else what goes through the filter in the warm engine. */
    double flow() {
        return quantity("flowStand.states[0].flow")
                .map(Measured::value)
                .orElseGet(() -> at(opened, state(), warmest()).flow());
    }
}
