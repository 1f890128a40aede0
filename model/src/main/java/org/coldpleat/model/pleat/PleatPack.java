package org.coldpleat.model.pleat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Objects;
import java.util.OptionalDouble;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Pleated pack: many equal pleats side by side, each solved by the corrected two-channel model (slip, flow along the
 * sheet, folds, mouths).
 *
 * @param geometry one pleat
 * @param pleatCount number of pleats [1], at least 1
 * @param pleatHeight free height of the pleats between the end caps or glue beads [m]
 * @param closure slip, in-plane ratio, folds, gap factor
 * @param statedArea effective medium area known from the unfolded strip [m2]; it outranks the area of the pleat
 *     geometry and scales the pack resistance by their ratio. Empty: area from geometry.
 */
@Validity("creeping flow; any medium resistance; gaps down to contact (finite and continuous through touching)")
@Source("derived here: see TwoChannelSolver; within 1.1 % of own 2-D Stokes-Brinkman runs")
public record PleatPack(
        PleatGeometry geometry, int pleatCount, double pleatHeight, PleatClosure closure, OptionalDouble statedArea)
        implements PackModel {
    /**
     * Cells along a leg where the flow along it is asked for [1]. Discretization error of the resistance below 1e-6 in usual
     * packs, up to 5e-5 where the gaps are so narrow that only the last millimeter of the legs works.
     */
    public static final int DEFAULT_CELLS = 100;

    public PleatPack {
        Objects.requireNonNull(geometry, "geometry");
        Objects.requireNonNull(closure, "closure");
        Objects.requireNonNull(statedArea, "statedArea");
        if (pleatCount < 1) {
            throw new IllegalArgumentException("pleatCount must be at least 1, was " + pleatCount);
        }
        if (!(pleatHeight > 0) || Double.isInfinite(pleatHeight)) {
            throw new IllegalArgumentException("pleatHeight must be finite and above 0 m, was " + pleatHeight);
        }
        if (statedArea.isPresent()
                && (!(statedArea.getAsDouble() > 0) || Double.isInfinite(statedArea.getAsDouble()))) {
            throw new IllegalArgumentException(
                    "statedArea must be finite and above 0 m2, was " + statedArea.getAsDouble());
        }
    }

    /** A pack with the default closure and its area from geometry. */
    public PleatPack(PleatGeometry geometry, int pleatCount, double pleatHeight) {
        this(geometry, pleatCount, pleatHeight, PleatClosure.DEFAULT, OptionalDouble.empty());
    }

    /** The same pack with another closure. */
    public PleatPack withClosure(PleatClosure other) {
        return new PleatPack(geometry, pleatCount, pleatHeight, other, statedArea);
    }

    /** The same pack with its effective medium area [m2] known from the unfolded strip. */
    public PleatPack withStatedArea(double area) {
        return new PleatPack(geometry, pleatCount, pleatHeight, closure, OptionalDouble.of(area));
    }

    /**
     * Other number of pleats of the same depth and height on the same core; the stated area grows with the count.
     *
     * @param count number of pleats [1], at least 3
     * @throws IllegalArgumentException if the pack is flat
     */
    public PleatPack withPleatCount(int count) {
        OptionalDouble area = statedArea.isEmpty()
                ? statedArea
                : OptionalDouble.of(statedArea.getAsDouble() * count / geometry.pleatCount());
        return new PleatPack(geometry.withPleatCount(count), count, pleatHeight, closure, area);
    }

    /**
     * The same pleats, so many times as high.
     *
     * @param factor [1], above 0
     */
    public PleatPack taller(double factor) {
        return new PleatPack(geometry, pleatCount, pleatHeight * factor, closure, timesArea(factor));
    }

    /**
     * As many pleats as high with legs so many times as long; what the folds take of the strip stays.
     *
     * @param factor [1], above 0
     * @throws IllegalArgumentException if the pack is flat
     */
    public PleatPack deeper(double factor) {
        return new PleatPack(geometry.deeper(factor), pleatCount, pleatHeight, closure, timesArea(factor));
    }

    /**
     * The same strip of a medium so many times as thick, in the same room.
     *
     * @param factor [1], above 0
     * @param areaFactor times the effective area, since thicker folds take more of the strip [1], above 0
     * @throws IllegalArgumentException if the pack is flat or the folds leave no room
     */
    public PleatPack thicker(double factor, double areaFactor) {
        return new PleatPack(geometry.thicker(factor), pleatCount, pleatHeight, closure, timesArea(areaFactor));
    }

    private OptionalDouble timesArea(double factor) {
        return statedArea.isEmpty() ? statedArea : OptionalDouble.of(statedArea.getAsDouble() * factor);
    }

    @Override
    public double effectiveArea() {
        return statedArea.orElseGet(this::ownArea);
    }

    /** Area of the pleat geometry, folds included [m2]. */
    private double ownArea() {
        return pleatCount * pleatHeight * PleatFolds.areaPerHeight(geometry, closure);
    }

    /** Height of all pleats together [m], as many times as the stated area is the one of the pleat geometry. */
    private double height() {
        return pleatCount * pleatHeight * (effectiveArea() / ownArea());
    }

    @Override
    public PackCurve curve() {
        requireFlowWhereLegsTouch();
        return new PleatCurve(this, new UniformPleat(geometry, closure), height());
    }

    @Override
    public PackResult solve(double mediumResistance) {
        double[] resistance = new double[DEFAULT_CELLS];
        Arrays.fill(resistance, mediumResistance);
        return solve(resistance);
    }

    @Override
    public PackResult solve(double[] mediumResistance) {
        double[] resistance = mediumResistance.clone();
        FlatPack.requireResistances(resistance);
        requireFlowWhereLegsTouch();
        TwoChannelSolver solver = new TwoChannelSolver(geometry, closure, resistance);
        double height = height();
        double legFactor = 2 * height / geometry.legCosine();
        double[] cellArea = new double[resistance.length];
        double[] velocity = new double[resistance.length];
        double areaPerHeight = PleatFolds.areaPerHeight(geometry, closure);
        for (int i = 0; i < resistance.length; i++) {
            cellArea[i] = legFactor * solver.width[i];
            velocity[i] = solver.difference[i] / resistance[i] * areaPerHeight;
        }
        return new PackResult(
                summary(solver.pleatResistance / height, solver.mediumResistance() / height, resistance.length),
                solver.nearFoldShare + solver.farFoldShare,
                velocity,
                cellArea);
    }

    private PackSummary summary(double resistance, double mediumAlone, int cells) {
        Gaps gaps = gaps(cells);
        return new PackSummary(
                resistance,
                mediumAlone,
                effectiveArea(),
                geometry.crowdedShare(),
                gaps.touchingShare,
                gaps.smallestUpstream,
                gaps.smallestDownstream,
                flags(gaps));
    }

    private void requireFlowWhereLegsTouch() {
        if (closure.inPlaneRatio() == 0 && gaps(DEFAULT_CELLS).touchingShare > 0) {
            throw new IllegalArgumentException("inPlaneRatio must be above 0 [1] where legs touch, was 0");
        }
    }

    private EnumSet<PackFlag> flags(Gaps gaps) {
        EnumSet<PackFlag> flags = EnumSet.noneOf(PackFlag.class);
        if (geometry.crowdedShare() > 0) {
            flags.add(PackFlag.CROWDED);
        }
        if (gaps.floorHolds) {
            flags.add(geometry.gapFloor() > 0 ? PackFlag.GAP_FLOOR_HOLDS : PackFlag.LEGS_TOUCH);
        }
        if (Math.min(gaps.meanUpstream, gaps.meanDownstream) < PleatClosure.NARROW_GAP) {
            flags.add(PackFlag.NARROW_GAP);
        }
        return flags;
    }

    private Gaps gaps(int cells) {
        return new Gaps(geometry, closure.gapFactor(), cells);
    }

    private record PleatCurve(PleatPack pack, UniformPleat pleat, double height) implements PackCurve {
        @Override
        public Point at(double mediumResistance) {
            Point one = pleat.at(FlatPack.requireResistance(mediumResistance));
            return new Point(one.resistance() / height, one.slope());
        }

        @Override
        public PackSummary summary(double mediumResistance) {
            return pack.summary(at(mediumResistance).resistance(), mediumResistance / effectiveArea(), DEFAULT_CELLS);
        }

        @Override
        public double effectiveArea() {
            return pack.effectiveArea();
        }
    }

    /** Gaps along the leg: extremes over the leg and means, sampled at cell ends. */
    private static final class Gaps {
        private final double smallestUpstream;
        private final double smallestDownstream;
        private final double meanUpstream;
        private final double meanDownstream;
        private final double touchingShare;
        private final boolean floorHolds;

        Gaps(PleatGeometry geometry, double factor, int cells) {
            double smallUp = Double.POSITIVE_INFINITY;
            double smallDown = Double.POSITIVE_INFINITY;
            double sumUp = 0;
            double sumDown = 0;
            int touching = 0;
            int held = 0;
            for (int i = 0; i < cells; i++) {
                double share = (i + 0.5) / cells;
                double up = factor * geometry.upstreamGap(share);
                double down = factor * geometry.downstreamGap(share);
                smallUp = Math.min(smallUp, up);
                smallDown = Math.min(smallDown, down);
                sumUp += up;
                sumDown += down;
                touching += up <= 0 || down <= 0 ? 1 : 0;
                held += geometry.floorHolds(share) ? 1 : 0;
            }
            smallestUpstream = smallUp;
            smallestDownstream = smallDown;
            meanUpstream = sumUp / cells;
            meanDownstream = sumDown / cells;
            touchingShare = (double) touching / cells;
            floorHolds = held > 0;
        }
    }
}
