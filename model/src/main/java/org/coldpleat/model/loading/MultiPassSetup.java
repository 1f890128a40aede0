package org.coldpleat.model.loading;

import java.util.Arrays;
import java.util.Objects;
import org.coldpleat.shared.quantity.Require;

/**
 * Conditions of a virtual multi-pass test.
 *
 * @param classes size classes of the dust
 * @param shares mass share of the injected dust in each class [1], double[classes.count()], summing to 1
 * @param grainDensity density of the dust grains [kg/m3], above 0
 * @param efficiency share caught by the medium in one pass [0..1], double[classes.count()]
 * @param flows flows about the reservoir; the bypass share in it is replaced by {@code leak}
 * @param injectionRate dust injected [kg/s], above 0
 * @param medium blocking law of the medium
 * @param area effective area of medium [m2], above 0
 * @param cleanPressureDrop of the clean element at the test flow [Pa], above 0
 * @param terminalPressureDrop that ends the test [Pa], above the clean one
 * @param leak flow round the medium
 * @param betaSizes sizes for filtration ratios [m], double[k]
 */
public record MultiPassSetup(
        SizeClasses classes,
        double[] shares,
        double grainDensity,
        double[] efficiency,
        SumpFlows flows,
        double injectionRate,
        BlockingLaw medium,
        double area,
        double cleanPressureDrop,
        double terminalPressureDrop,
        Leak leak,
        double[] betaSizes) {
    /** What rounding may leave of the sum of the shares [1]. */
    private static final double SUM_TOLERANCE = 1e-9;

    public MultiPassSetup {
        Objects.requireNonNull(medium, "medium");
        Objects.requireNonNull(leak, "leak");
        Objects.requireNonNull(flows, "flows");
        shares = shares.clone();
        efficiency = efficiency.clone();
        betaSizes = betaSizes.clone();
        Require.entries("shares", shares.length, classes.count());
        Require.entries("efficiency", efficiency.length, classes.count());
        for (int i = 0; i < shares.length; i++) {
            Require.within("shares", shares[i], 0, 1, "1");
            Require.within("efficiency", efficiency[i], 0, 1, "1");
        }
        double sum = Arrays.stream(shares).sum();
        if (Math.abs(sum - 1) > SUM_TOLERANCE) {
            throw new IllegalArgumentException("shares must sum to 1 [1], sum was " + sum);
        }
        Require.positive("grainDensity", grainDensity, "kg/m3");
        Require.positive("injectionRate", injectionRate, "kg/s");
        Require.positive("area", area, "m2");
        Require.positive("cleanPressureDrop", cleanPressureDrop, "Pa");
        Require.above("terminalPressureDrop", terminalPressureDrop, cleanPressureDrop, "Pa");
        for (double size : betaSizes) {
            Require.atLeast("betaSizes", size, classes.lower(0), "m");
            if (!(size < classes.upper(classes.count() - 1))) {
                throw new IllegalArgumentException("betaSizes must lie below the highest class edge "
                        + classes.upper(classes.count() - 1) + " m, was " + size);
            }
        }
    }

    @Override
    public double[] shares() {
        return shares.clone();
    }

    @Override
    public double[] efficiency() {
        return efficiency.clone();
    }

    @Override
    public double[] betaSizes() {
        return betaSizes.clone();
    }

    /** Injected dust by class [kg/s]. */
    double[] source() {
        return Arrays.stream(shares).map(share -> share * injectionRate).toArray();
    }

    /** Resistance ratio [1] with a dirt mass in the element [kg]. */
    double resistanceRatio(double retainedMass) {
        return medium.resistanceRatio(retainedMass / area);
    }

    /** Pressure drop of the element [Pa] with a dirt mass in it [kg]. */
    double pressureDrop(double retainedMass) {
        return cleanPressureDrop * leak.pressureRatio(resistanceRatio(retainedMass));
    }
}
