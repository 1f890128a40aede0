package org.coldpleat.model.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.coldstart.Openings;

/** Evaluates a case for values of its unknowns that differ from the best estimates. Knows no distributions. Immutable. */
public final class CaseDraws {

    private final ResolvedCase resolved;

    /** Draws of a case. */
    public CaseDraws(ResolvedCase resolved) {
        this.resolved = resolved;
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
        return resolved.document().digest();
    }

    /** Key of the words for the measurement that would narrow an unknown. */
    public static String measurementFor(String path) {
        return NextMeasurements.measurementFor(path);
    }

    /** What all candidates share with values moved. */
    public Common common(Map<String, Double> values) {
        return new Common(resolved.sharedMoving(values));
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
         * @throws IllegalArgumentException if no filter can have these values together
         */
        public Own candidate(int position, Map<String, Double> values) {
            return new Own(shared, resolved.candidateMoving(position, values));
        }
    }

    /** One candidate of one draw. */
    public final class Own {
        private final SharedModel shared;
        private final BuiltCandidate candidate;

        private Own(SharedModel shared, BuiltCandidate candidate) {
            this.shared = shared;
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
        public DrawnState state(int duty) {
            DutyModel model = model(duty);
            List<Double> ratios = new ArrayList<>();
            List<Double> shares = new ArrayList<>();
            Optional<OperatingPoint> near = Optional.empty();
            for (NamedTemperature named : resolved.named()) {
                SolvedPoint held = model.heldShutAt(named.temperature(), near);
                near = held.near();
                SolvedPoint point = model.at(named.temperature(), near);
                ratios.add(model.hasValve() && held.isAnswer() ? model.ratio(held) : Double.NaN);
                shares.add(point.isAnswer() ? point.filter().bypassShare() : Double.NaN);
            }
            SolvedPoint hot = model.at(resolved.warmestNamed(), near);
            return new DrawnState(
                    opening(model),
                    ratios,
                    shares,
                    hot.isAnswer() ? hot.filter().totalDrop() : Double.NaN);
        }

        /** Warmest open temperature in one state [K], as in {@link DrawnState#opening}. */
        public double opening(int duty) {
            return opening(model(duty));
        }

        /** The same by the finder that looks for every interval; slower, for verification. */
        public double openingByFullSearch(int duty) {
            DutyModel model = model(duty);
            if (!model.hasValve()) {
                return Double.NEGATIVE_INFINITY;
            }
            Openings all = resolved.openingFinder().find(at -> {
                SolvedPoint point = model.heldShutAt(at, Optional.empty());
                return point.isAnswer() ? model.ratio(point) : Double.NaN;
            });
            if (all.unresolved() > 0) {
                return Double.NaN;
            }
            return all.warmestOpen() >= resolved.to() ? Double.POSITIVE_INFINITY : all.warmestOpen();
        }

        private DutyModel model(int duty) {
            return new DutyModel(shared, candidate.filter(), resolved.duties().get(duty));
        }

        private double opening(DutyModel model) {
            return model.hasValve()
                    ? new WarmestOpening(model, resolved.from(), resolved.to()).find()
                    : Double.NEGATIVE_INFINITY;
        }
    }
}
