package org.coldpleat.model.steady;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.numerics.BracketedRoot;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Finds the warmest crossing of a draw with few looks, led by the curve with nothing moved. What the draw adds to that
 * curve is interpolated between the temperatures looked at; from warm to cold, a stretch is left aside where curve, addition
 * and what the addition may do in between stay below the limit; any other is looked into. Work object of one search.
 */
@Source(
        "derived here: warmest stretch first, bound by the change of the addition over it; Illinois variant of regula falsi"
                + " on the logarithm of the ratio")
@Validity("draws whose curve differs from the unmoved one by a function that turns less than it changes between looks;"
        + " agrees with the search on a grid to 1e-6 K over 80,000 draws of all demo cases but two, whose curves only touch"
        + " the limit")
public final class GuidedOpening {
    private static final BracketedRoot.Stop STOP = BracketedRoot.Stop.atWidth(1e-7);
    private static final int MOST_LOOKS = 250;

    /** Width of a stretch with one end open in which one crossing is taken to lie [K]. */
    private static final double NARROW = 4;

    /** Width below which a stretch with both ends shut is left aside [K]. */
    private static final double FINEST = 0.1;

    /** How far a draw may move a bend of the unmoved curve along the temperature [K]. */
    private static final double NEARBY = 25;

    /** Beyond the warmest look the addition is taken to stay below so many times what it is there [1]. */
    private static final double BEYOND = 2;

    /** Distance from the limit beyond the warmest look, beside the addition, that makes a look there needless [1]. */
    private static final double FAR = 1;

    /** Times the change of the addition over a stretch that it may turn off within [1]. */
    private static final double TIMES = 3;

    private final StateModel model;
    private final StateSolver solver;
    private final GuideCurve guide;
    private final List<Look> looks = new ArrayList<>();
    private int count;

    /** Above this temperature no stretch between looks is in doubt [K]. */
    private double settled = Double.POSITIVE_INFINITY;

    /** A temperature looked at [K], the value there, and what the draw adds to the guide [1]. */
    private record Look(double temperature, double value, double added) {}

    /** @param solver of the model with every valve held shut; each look starts from where its last solve ended */
    public GuidedOpening(StateModel model, GuideCurve guide, StateSolver solver) {
        this.model = model;
        this.guide = guide;
        this.solver = solver;
    }

    /** Takes a ratio [1] of the valve held shut that was solved for before; NaN is no answer. */
    public void know(double temperature, double ratio) {
        if (temperature >= guide.from() && temperature <= guide.to()) {
            insert(temperature, GuideCurve.logRatio(ratio));
        }
    }

    /** [K]; infinite if never or open at the warm end, NaN where a point has no answer. */
    public double find() {
        look(guide.likeliest());
        Look warmest = looks.get(looks.size() - 1);
        if (warmest.temperature() < guide.to() && mayOpenBeyond(warmest)) {
            look(guide.to());
        }
        while (count < MOST_LOOKS) {
            if (looks.stream().anyMatch(one -> Double.isNaN(one.value()))) {
                return Double.NaN;
            }
            int open = warmestOpen();
            if (open >= 0 && looks.get(open).temperature() == guide.to()) {
                return Double.POSITIVE_INFINITY;
            }
            double next = firstDoubt(open);
            if (!Double.isNaN(next)) {
                look(next);
            } else if (open < 0) {
                return Double.NEGATIVE_INFINITY;
            } else {
                return crossing(looks.get(open), looks.get(open + 1));
            }
        }
        return new WarmestOpening(model, guide.from(), guide.to()).find();
    }

    /** Whether the stretch beyond the warmest look might hold an opening: then its end must be looked at too. */
    private boolean mayOpenBeyond(Look warmest) {
        double highest = guide.values()[guide.last()];
        for (int i = guide.last(); i >= 0 && guide.temperature(i) > warmest.temperature(); i--) {
            highest = Math.max(highest, guide.values()[i]);
        }
        return warmest.value() > 0 || highest + BEYOND * Math.abs(warmest.added()) + FAR > 0;
    }

    private int warmestOpen() {
        int open = looks.size() - 1;
        while (open >= 0 && looks.get(open).value() <= 0) {
            open--;
        }
        return open;
    }

    /** Where to look next: in the warmest stretch that may hide an opening, down to the warmest open look [K]. */
    private double firstDoubt(int open) {
        for (int k = looks.size() - 2; k >= Math.max(0, open); k--) {
            Look cold = looks.get(k);
            Look warm = looks.get(k + 1);
            if (cold.temperature() >= settled) {
                continue;
            }
            double next = k == open ? towardCrossing(cold, warm) : doubt(cold, warm);
            if (!Double.isNaN(next)) {
                settled = warm.temperature();
                return next;
            }
        }
        boolean coldEnd = open < 0 && looks.get(0).temperature() > guide.from();
        return coldEnd ? guide.from() : Double.NaN;
    }

    /**
     * Where between two shut looks the curve might be open [K], or nothing. Between the looks it is taken to stay below the
     * prediction plus a parabola over the stretch, as high as the addition changes and the guide, thereabouts, bends.
     */
    private double doubt(Look cold, Look warm) {
        double width = warm.temperature() - cold.temperature();
        if (width <= FINEST) {
            return Double.NaN;
        }
        double turn = TIMES * Math.abs(warm.added() - cold.added())
                + width / 4 * guide.bend(cold.temperature() - NEARBY, warm.temperature() + NEARBY);
        double middle = 0.5 * (cold.temperature() + warm.temperature());
        double at = middle;
        double highest = predicted(cold, warm, middle, guide.at(middle)) + turn;
        int last = guide.last();
        for (int i = guide.below(cold.temperature()) + 1; i <= last; i++) {
            double place = guide.temperature(i);
            if (place >= warm.temperature()) {
                break;
            }
            double share = (place - cold.temperature()) / width;
            double value = predicted(cold, warm, place, guide.values()[i]) + 4 * share * (1 - share) * turn;
            if (value > highest) {
                highest = value;
                at = place;
            }
        }
        if (highest <= 0) {
            return Double.NaN;
        }
        double edge = 0.1 * width;
        return Math.min(Math.max(at, cold.temperature() + edge), warm.temperature() - edge);
    }

    /** Nothing once the stretch is narrow; else where the prediction crosses, or a little beyond if that is at its edge. */
    private double towardCrossing(Look cold, Look warm) {
        double width = warm.temperature() - cold.temperature();
        if (width <= NARROW) {
            return Double.NaN;
        }
        double right = warm.temperature();
        double atRight = warm.value();
        for (int i = guide.below(warm.temperature()); guide.temperature(i) > cold.temperature(); i--) {
            double at = guide.temperature(i);
            double value = at < right ? predicted(cold, warm, at, guide.values()[i]) : atRight;
            if (value > 0) {
                return beyondEdge(at + (right - at) * value / (value - atRight), cold, warm);
            }
            right = Math.min(at, right);
            atRight = value;
            if (i == 0) {
                break;
            }
        }
        return beyondEdge(
                cold.temperature() + (right - cold.temperature()) * cold.value() / (cold.value() - atRight),
                cold,
                warm);
    }

    private static double beyondEdge(double crossing, Look cold, Look warm) {
        double left = crossing - cold.temperature();
        double right = warm.temperature() - crossing;
        double most = 0.5 * NARROW;
        if (left < most && left < right) {
            return cold.temperature() + Math.max(0.1, Math.min(most, 2 * left));
        }
        if (right < most) {
            return warm.temperature() - Math.max(0.1, Math.min(most, 2 * right));
        }
        return crossing;
    }

    private static double predicted(Look cold, Look warm, double temperature, double unmoved) {
        double share = (temperature - cold.temperature()) / (warm.temperature() - cold.temperature());
        return unmoved + cold.added() + share * (warm.added() - cold.added());
    }

    private double look(double temperature) {
        for (Look known : looks) {
            if (known.temperature() == temperature) {
                return known.value();
            }
        }
        if (looks.isEmpty()) {
            guide.near(temperature).ifPresent(solver::startAt);
        }
        count++;
        double value = GuideCurve.logRatio(solver.ratioAt(temperature));
        insert(temperature, value);
        return value;
    }

    private void insert(double temperature, double value) {
        int place = 0;
        while (place < looks.size() && looks.get(place).temperature() < temperature) {
            place++;
        }
        looks.add(place, new Look(temperature, value, value - guide.at(temperature)));
    }

    private double crossing(Look cold, Look warm) {
        double found = BracketedRoot.illinois(
                this::look, cold.temperature(), cold.value(), warm.temperature(), warm.value(), STOP);
        return looks.stream().anyMatch(one -> Double.isNaN(one.value())) ? Double.NaN : found;
    }
}
