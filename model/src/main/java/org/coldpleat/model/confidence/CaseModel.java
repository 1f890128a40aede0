package org.coldpleat.model.confidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.model.run.CaseDraws;
import org.coldpleat.model.run.DrawnState;
import org.coldpleat.model.run.NamedTemperature;
import org.coldpleat.model.run.ResolvedCase;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;

/**
 * A case as a function from its unknowns to its headline numbers. Answers by candidate: medium resistance, whether a
 * filter can have the values, then for each state opening temperature, hot drop, ratios and shares at the named temperatures. A set of values that no filter can
 * have gives {@code NaN} for that candidate.
 */
final class CaseModel implements Model {
    /** Share of a positive value above which a normal spread counts as a factor [1], as in first-order propagation. */
    private static final double FACTOR_FROM = 0.3;

    private final CaseDraws draws;
    private final List<org.coldpleat.model.run.Unknown> written;
    private final int candidates;
    private final int states;
    private final int named;

    CaseModel(CaseDraws draws) {
        this.draws = draws;
        ResolvedCase resolved = draws.resolved();
        written = draws.unknowns();
        candidates = resolved.candidateNames().size();
        states = resolved.stateNames().size();
        named = resolved.named().size();
    }

    /** The unknowns of the case with their distributions, in the order of the values of this model. */
    List<UncertainQuantity> unknowns() {
        return written.stream().map(CaseModel::unknown).toList();
    }

    static UncertainQuantity unknown(org.coldpleat.model.run.Unknown one) {
        Measured value = one.value();
        boolean factor = value.spread() == Spread.NORMAL
                && !one.upwardOnly()
                && value.value() > 0
                && value.halfWidth() > FACTOR_FROM * value.value();
        Measured shape = factor ? value.withSpread(value.halfWidth() / value.value(), Spread.LOG_NORMAL) : value;
        boolean fraction = value.kind() == Kind.FRACTION;
        String measurement = CaseDraws.measurementFor(one.path());
        return new UncertainQuantity(
                one.path(),
                shape,
                one.shared(),
                measurement + (one.shared() ? "" : "#" + one.candidate()),
                one.upwardOnly(),
                fraction ? 0 : Double.NEGATIVE_INFINITY,
                fraction ? 1 : Double.POSITIVE_INFINITY);
    }

    int answerCount() {
        return candidates * width();
    }

    int resistance(int candidate) {
        return candidate * width();
    }

    /** 1 if some filter can have the values of the draw, else {@code NaN}. */
    int possible(int candidate) {
        return candidate * width() + 1;
    }

    int opening(int candidate, int state) {
        return candidate * width() + 2 + state * stateWidth();
    }

    int hotDrop(int candidate, int state) {
        return opening(candidate, state) + 1;
    }

    int ratio(int candidate, int state, int at) {
        return opening(candidate, state) + 2 + at;
    }

    int share(int candidate, int state, int at) {
        return opening(candidate, state) + 2 + named + at;
    }

    private int width() {
        return 2 + states * stateWidth();
    }

    private int stateWidth() {
        return 2 + 2 * named;
    }

    private List<Map<String, Double>> split(double[] values) {
        List<Map<String, Double>> parts = new ArrayList<>();
        for (int i = 0; i <= candidates; i++) {
            parts.add(new HashMap<>());
        }
        for (int j = 0; j < values.length; j++) {
            parts.get(written.get(j).candidate() + 1).put(written.get(j).path(), values[j]);
        }
        return parts;
    }

    @Override
    public double[] answers(double[] values) {
        double[] answers = new double[answerCount()];
        Arrays.fill(answers, Double.NaN);
        List<Map<String, Double>> parts = split(values);
        Optional<CaseDraws.Common> common = draws.common(parts.get(0));
        for (int i = 0; i < candidates && common.isPresent(); i++) {
            Optional<CaseDraws.Own> own = common.get().candidate(i, parts.get(i + 1));
            if (own.isEmpty()) {
                continue;
            }
            answers[possible(i)] = 1;
            answers[resistance(i)] = own.get().mediumResistance();
            for (int s = 0; s < states; s++) {
                put(answers, i, s, own.get().state(s));
            }
        }
        return answers;
    }

    private void put(double[] answers, int candidate, int state, DrawnState drawn) {
        answers[opening(candidate, state)] = drawn.opening();
        answers[hotDrop(candidate, state)] = drawn.hotDrop();
        for (int n = 0; n < named; n++) {
            answers[ratio(candidate, state, n)] = drawn.ratios().get(n);
            answers[share(candidate, state, n)] = drawn.shares().get(n);
        }
    }

    /** The opening temperature of one candidate in one state alone [K]. */
    Model openingOnly(int candidate, int state) {
        return new OpeningModel(draws, written, candidate, state);
    }

    /** Named temperatures of the case. */
    List<NamedTemperature> named() {
        return draws.resolved().named();
    }
}
