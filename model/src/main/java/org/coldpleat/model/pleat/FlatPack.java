package org.coldpleat.model.pleat;

import java.util.Arrays;
import java.util.EnumSet;
import org.coldpleat.shared.source.Source;

/**
 * Medium of known area whose channels are not known: the pack counts as medium alone, so its resistance is a lower bound
 * and its result carries {@link PackFlag#CHANNELS_UNKNOWN}.
 *
 * @param effectiveArea medium area open to flow [m2], above 0
 */
public record FlatPack(double effectiveArea) implements PackModel {
    public FlatPack {
        if (!(effectiveArea > 0) || Double.isInfinite(effectiveArea)) {
            throw new IllegalArgumentException("effectiveArea must be finite and above 0 m2, was " + effectiveArea);
        }
    }

    @Override
    public PackCurve curve() {
        return new FlatCurve(this);
    }

    @Override
    public PackResult solve(double mediumResistance) {
        double[] resistance = new double[PleatPack.DEFAULT_CELLS];
        Arrays.fill(resistance, mediumResistance);
        return solve(resistance);
    }

    @Override
    @Source("Darcy's law; sheets side by side add their conductances")
    public PackResult solve(double[] mediumResistance) {
        requireResistances(mediumResistance);
        int cells = mediumResistance.length;
        double[] area = new double[cells];
        double[] velocity = new double[cells];
        Arrays.fill(area, effectiveArea / cells);
        double conductance = 0;
        for (int i = 0; i < cells; i++) {
            conductance += area[i] / mediumResistance[i];
        }
        for (int i = 0; i < cells; i++) {
            velocity[i] = effectiveArea / (mediumResistance[i] * conductance);
        }
        return new PackResult(whole(1 / conductance), 0, velocity, area);
    }

    private PackSummary whole(double resistance) {
        return new PackSummary(
                resistance,
                resistance,
                effectiveArea,
                0,
                0,
                Double.NaN,
                Double.NaN,
                EnumSet.of(PackFlag.CHANNELS_UNKNOWN));
    }

    static void requireResistances(double[] mediumResistance) {
        if (mediumResistance.length < 2) {
            throw new IllegalArgumentException(
                    "mediumResistance needs at least 2 cells along the leg, had " + mediumResistance.length);
        }
        for (double value : mediumResistance) {
            requireResistance(value);
        }
    }

    static double requireResistance(double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("mediumResistance must be finite and above 0 1/m, was " + value);
        }
        return value;
    }

    private record FlatCurve(FlatPack pack) implements PackCurve {
        @Override
        public Point at(double mediumResistance) {
            return new Point(requireResistance(mediumResistance) / pack.effectiveArea, 1);
        }

        @Override
        public PackSummary summary(double mediumResistance) {
            return pack.whole(at(mediumResistance).resistance());
        }

        @Override
        public double effectiveArea() {
            return pack.effectiveArea;
        }
    }
}
