package org.coldpleat.model.certainty;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.engine.SharedModel;
import org.coldpleat.model.resolve.input.NamedTemperature;
import org.coldpleat.model.resolve.input.Unknown;
import org.coldpleat.model.steady.GuideCurve;
import org.coldpleat.model.steady.GuidedOpening;
import org.coldpleat.model.steady.OpenTemperatures;
import org.coldpleat.model.steady.OpeningFinder;
import org.coldpleat.model.steady.StateModel;
import org.coldpleat.model.steady.StateSolver;
import org.coldpleat.model.steady.WarmestOpening;

/** Evaluates a case for values of its unknowns that differ from the best estimates. Knows no distributions. Immutable. */
public final class CaseDraws {

    private final ResolvedCase resolved;

    /** Guides by candidate and operating state; empty where there is no valve or a point without an answer. */
    private final List<List<Optional<GuideCurve>>> guides;

    /** Draws of a case. */
    public CaseDraws(ResolvedCase resolved) {
        this.resolved = resolved;
        guides = resolved.candidates().stream()
                .map(candidate -> resolved.operatingStates().stream()
                        .map(operatingState -> new StateModel(resolved.shared(), candidate.filter(), operatingState))
                        .map(this::guide)
                        .toList())
                .toList();
    }

    private Optional<GuideCurve> guide(StateModel model) {
        return model.hasValve()
                ? Optional.of(GuideCurve.of(model, resolved.from(), resolved.to()))
                        .filter(GuideCurve::isWhole)
                : Optional.empty();
    }

    /** The case. */
    public ResolvedCase resolved() {
        return resolved;
    }

    /** Every unknown of the case, the shared ones first. */
    public List<Unknown> unknowns() {
        List<Unknown> all = new ArrayList<>(resolved.sharedUnknowns().values());
        for (int i = 0; i < resolved.candidates().size(); i++) {
            all.addAll(resolved.ownUnknowns(i).values());
        }
        return List.copyOf(all);
    }

    /** Digest of the inputs. */
    public String digest() {
        return resolved.digest();
    }

    /** Key of the words for the measurement that would narrow an unknown. */
    public static String measurementFor(String path) {
        return NextMeasurements.measurementFor(path);
    }

    /** Uncertainty that the measurement for an unknown leaves over the one now [0..1]. */
    public static double remainingAfterMeasuring(Unknown unknown) {
        return NextMeasurements.remaining(unknown);
    }

    /** What all candidates share with values moved; empty if no engine or oil can have these values together. */
    public Optional<Common> common(Map<String, Double> values) {
        return possible(() -> resolved.sharedMoving(values)).map(Common::new);
    }

    /** Builders refuse values that nothing can have together, such as a core wider than its element. */
    private static <T> Optional<T> possible(Supplier<T> build) {
        try {
            return Optional.of(build.get());
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }

    /** The shared part of one draw. */
    public final class Common {
        private final SharedModel shared;

        private Common(SharedModel shared) {
            this.shared = shared;
        }

        /**
         * One candidate of this draw.
         *
         * @param position position of the candidate in the case
         * @param values path to value of its unknowns [SI]
         * @return nothing if no filter can have these values together
         */
        public Optional<Own> candidate(int position, Map<String, Double> values) {
            return CaseDraws.this.candidate(position, values).map(this::with);
        }

        /** A filter in this oil and engine. */
        public Own with(Candidate candidate) {
            return new Own(shared, candidate.position, candidate.built);
        }
    }

    /** A candidate of one draw by itself, without oil and engine. */
    public static final class Candidate {
        private final int position;
        private final BuiltCandidate built;

        private Candidate(int position, BuiltCandidate built) {
            this.position = position;
            this.built = built;
        }
    }

    /**
     * One candidate by itself with values moved.
     *
     * @param position position of the candidate in the case
     * @param values path to value of its unknowns [SI]
     * @return nothing if no filter can have these values together
     */
    public Optional<Candidate> candidate(int position, Map<String, Double> values) {
        return possible(() -> resolved.candidateMoving(position, values)).map(built -> new Candidate(position, built));
    }

    /** One candidate of one draw. */
    public final class Own {
        private final SharedModel shared;
        private final int position;
        private final BuiltCandidate candidate;

        private Own(SharedModel shared, int position, BuiltCandidate candidate) {
            this.shared = shared;
            this.position = position;
            this.candidate = candidate;
        }

        /** Medium resistance [1/m]. */
        public double mediumResistance() {
            return candidate.mediumResistance();
        }

        /** Effective medium area [m2]. */
        public double effectiveArea() {
            return candidate.pack().effectiveArea();
        }

        /** Headline numbers in one state, given by its position in the case. */
        public DrawnState state(int operatingState) {
            StateModel model = model(operatingState);
            Optional<GuideCurve> guide = guides.get(position).get(operatingState);
            StateSolver held = model.heldShutSolver();
            StateSolver open = model.solver();
            Optional<GuidedOpening> search = guide.map(curve -> new GuidedOpening(model, curve, held));
            List<Double> ratios = new ArrayList<>();
            List<Double> shares = new ArrayList<>();
            double hotDrop = Double.NaN;
            for (NamedTemperature named : resolved.named()) {
                double at = named.temperature();
                guide.flatMap(curve -> curve.near(at)).ifPresent(held::startAt);
                double ratio = held.ratioAt(at);
                search.ifPresent(one -> one.know(at, ratio));
                // held shut it is the same filter as long as no valve would open
                StateSolver solver = ratio <= 1 ? held : open;
                if (solver == open) {
                    open.startBeside(held);
                    open.at(at);
                }
                ratios.add(model.hasValve() ? ratio : Double.NaN);
                shares.add(solver.isAnswer() ? solver.bypassShare() : Double.NaN);
                if (at == resolved.warmestNamed() && solver.isAnswer()) {
                    hotDrop = solver.totalDrop();
                }
            }
            return new DrawnState(opening(model, search), ratios, shares, hotDrop);
        }

        /** Warmest open temperature in one state [K], as in {@link DrawnState#opening}. */
        public double opening(int operatingState) {
            StateModel model = model(operatingState);
            return opening(
                    model,
                    guides.get(position)
                            .get(operatingState)
                            .map(curve -> new GuidedOpening(model, curve, model.heldShutSolver())));
        }

        /** The same by the finder that looks for every interval; slower, for verification. */
        public double openingByFullSearch(int operatingState) {
            StateModel model = model(operatingState);
            if (!model.hasValve()) {
                return Double.NEGATIVE_INFINITY;
            }
            OpenTemperatures all = new OpeningFinder(resolved.from(), resolved.to(), 4, 0.1, 1e-8)
                    .find(model.heldShutSolver()::ratioAt);
            if (all.unresolved() > 0) {
                return Double.NaN;
            }
            return all.warmestOpen() >= resolved.to() ? Double.POSITIVE_INFINITY : all.warmestOpen();
        }

        private StateModel model(int operatingState) {
            return new StateModel(
                    shared, candidate.filter(), resolved.operatingStates().get(operatingState));
        }

        private double opening(StateModel model, Optional<GuidedOpening> search) {
            if (!model.hasValve()) {
                return Double.NEGATIVE_INFINITY;
            }
            return search.map(GuidedOpening::find)
                    .orElseGet(() -> new WarmestOpening(model, resolved.from(), resolved.to()).find());
        }
    }
}
