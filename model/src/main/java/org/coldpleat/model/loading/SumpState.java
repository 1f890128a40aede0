package org.coldpleat.model.loading;

import java.util.Arrays;
import org.coldpleat.shared.quantity.Require;

/**
 * Where the dirt is, by size class, and where it went since the start. All arrays double[classes] [kg].
 *
 * @param suspended dirt in the oil of the sump
 * @param retained dirt in the element that is in place
 * @param sampled dirt taken off with samples
 * @param removed dirt gone for good with lost or changed oil and changed elements
 * @param supplied dirt that came in since the start, with what was there at the start
 */
public record SumpState(double[] suspended, double[] retained, double[] sampled, double[] removed, double[] supplied) {
    public SumpState {
        suspended = suspended.clone();
        retained = retained.clone();
        sampled = sampled.clone();
        removed = removed.clone();
        supplied = supplied.clone();
        for (double[] part : new double[][] {retained, sampled, removed, supplied}) {
            Require.entries("each array of the state", part.length, suspended.length);
        }
    }

    /** Clean oil, clean element. */
    public static SumpState clean(int classes) {
        double[] none = new double[classes];
        return new SumpState(none, none, none, none, none);
    }

    /** A clean element in oil that carries dirt [kg], double[classes]. */
    public static SumpState dirtyOil(double[] suspended) {
        return clean(suspended.length).withAdded(suspended);
    }

    @Override
    public double[] suspended() {
        return suspended.clone();
    }

    @Override
    public double[] retained() {
        return retained.clone();
    }

    @Override
    public double[] sampled() {
        return sampled.clone();
    }

    @Override
    public double[] removed() {
        return removed.clone();
    }

    @Override
    public double[] supplied() {
        return supplied.clone();
    }

    /** Number of size classes. */
    public int classes() {
        return suspended.length;
    }

    /** Dirt per volume of oil by class [kg/m3], for a sump volume [m3, above 0]. */
    public double[] concentration(double volume) {
        Require.positive("volume", volume, "m3");
        return scaled(suspended, 1 / volume);
    }

    /** Dirt in the element in place [kg]. */
    public double retainedMass() {
        return Arrays.stream(retained).sum();
    }

    /** Dirt in the oil of the sump [kg]. */
    public double suspendedMass() {
        return Arrays.stream(suspended).sum();
    }

    /** The state after a lot of dirt [kg], double[classes], at least 0 each, fell into the oil. */
    public SumpState withAdded(double[] dirt) {
        Require.entries("dirt", dirt.length, classes());
        for (double mass : dirt) {
            Require.notNegative("dirt", mass, "kg");
        }
        return new SumpState(plus(suspended, dirt), retained, sampled, removed, plus(supplied, dirt));
    }

    /**
     * The state after an oil change.
     *
     * @param drainedShare share of the old oil that came out [0..1]; the rest stays in the engine with its dirt
     * @param freshDirt dirt that the new oil brings [kg], double[classes]
     */
    public SumpState afterOilChange(double drainedShare, double[] freshDirt) {
        Require.within("drainedShare", drainedShare, 0, 1, "1");
        double[] gone = scaled(suspended, drainedShare);
        double[] left = plus(suspended, scaled(gone, -1));
        return new SumpState(left, retained, sampled, plus(removed, gone), supplied).withAdded(freshDirt);
    }

    /** The state after a clean element was put in. */
    public SumpState afterElementChange() {
        return new SumpState(suspended, new double[classes()], sampled, plus(removed, retained), supplied);
    }

    /** Greatest imbalance over the classes: what came in less what is accounted for, over what came in [1]. */
    public double massClosure() {
        double worst = 0;
        for (int i = 0; i < suspended.length; i++) {
            double found = suspended[i] + retained[i] + sampled[i] + removed[i];
            if (supplied[i] != 0 || found != 0) {
                worst = Math.max(worst, Math.abs(supplied[i] - found) / Math.max(supplied[i], found));
            }
        }
        return worst;
    }

    static double[] plus(double[] one, double[] other) {
        double[] sum = new double[one.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = one[i] + other[i];
        }
        return sum;
    }

    private static double[] scaled(double[] values, double factor) {
        double[] result = new double[values.length];
        for (int i = 0; i < result.length; i++) {
            result[i] = values[i] * factor;
        }
        return result;
    }
}
