package org.coldpleat.model.loading.service;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.coldpleat.model.loading.ElementLoad;
import org.coldpleat.model.loading.sump.SumpBalance;
import org.coldpleat.model.loading.sump.SumpFlows;
import org.coldpleat.model.loading.sump.SumpState;
import org.coldpleat.model.pleat.PackResult;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Integrates hot running and cold starts together while the element loads.
 *
 * <p>Dirt is balanced exactly over every stretch between starts and oil changes; bypassed oil is not captured. The
 * resistance of the pack follows the dirt in it with Heun's method: a step is done with the pack as it is, the pack is
 * solved with what fell on it, and the step is done again with the resistance growing in between and the dirt spread by
 * the mean of both face velocities. The step is as long as the two agree. Steps end where the resistance ratios that were
 * asked for are reached, and at each oil change, whose moment is given twice: before and behind it. There are never more
 * than a bounded number of steps, since none is cut below a share of the whole time.
 */
@Source("Heun's method, textbook; balances derived here")
@Validity("dirt by size class falls where the oil flows; resistance ratio up to 30; one element for the whole time")
public final class ServiceLife {
    /** Usual tolerance of the logarithm of the resistance ratio over a step [1]. */
    public static final double USUAL_TOLERANCE = 1e-3;

    /** Resistance ratio of the pack at which a run ends [1]. */
    @Source("common practice, no source: blocking laws are read up to ratios of about 20")
    public static final double ELEMENT_LIMIT = 30;

    /** Narrowest miss of an asked ratio, in its logarithm [1]. */
    private static final double EVENT_TOLERANCE = 1e-10;

    private static final int EVENT_STEPS = 60;

    /** Steps of the shortest length in the whole time [1]; one as short is taken whatever its two attempts differ by. */
    private static final int MOST_STEPS = 20_000;

    /** Rounding of a sum of steps, over the time [1]. */
    private static final double ROUNDING = 1e-14;

    private static final double GREATEST_GROWTH = 3;
    private static final double SAFETY = 0.9;

    private final ServicePlan plan;
    private final double tolerance;
    private final double longest;
    private final double shortest;
    private final double cleanPack;
    private final CycleClock clock;
    private int steps;

    private ServiceLife(ServicePlan plan, double tolerance, double longest) {
        this.plan = plan;
        this.tolerance = tolerance;
        this.longest = longest;
        shortest = Math.min(longest, plan.horizon() / MOST_STEPS);
        clock = new CycleClock(plan.startDuration(), plan.hotDurations());
        cleanPack = plan.pack().solve(plan.mediumResistance()).resistance();
    }

    /** Course with the usual tolerance, meeting resistance ratios [1, above 1] exactly. */
    public static ServiceCourse run(ServicePlan plan, double... ratios) {
        return runWith(plan, USUAL_TOLERANCE, Double.POSITIVE_INFINITY, ratios);
    }

    /**
     * Course of a service life.
     *
     * @param plan what the element goes through
     * @param tolerance of the logarithm of the resistance ratio over a step [1], above 0
     * @param longestStep [s], above 0; with a wide tolerance this makes a fixed step
     * @param ratios resistance ratios of the pack to be met exactly [1]; those up to 1 are met at once
     */
    public static ServiceCourse runWith(ServicePlan plan, double tolerance, double longestStep, double... ratios) {
        Require.positive("tolerance", tolerance, "1");
        if (!(longestStep > 0)) {
            throw new IllegalArgumentException("longestStep must be above 0 s, was " + longestStep);
        }
        return new ServiceLife(plan, tolerance, longestStep).course(ratios);
    }

    /** Where a run stands. */
    private record Stand(
            double time,
            SumpState sump,
            ElementLoad load,
            PackResult pack,
            double logRatio,
            double unfiltered,
            double pumped) {
        Stand afterOilChange() {
            SumpState fresh = sump.afterOilChange(1, new double[sump.retained().length]);
            return new Stand(time, fresh, load, pack, logRatio, unfiltered, pumped);
        }
    }

    private ServiceCourse course(double[] ratios) {
        double[] stops = DoubleStream.concat(Arrays.stream(ratios), DoubleStream.of(ELEMENT_LIMIT))
                .filter(ratio -> ratio > 1 && ratio <= ELEMENT_LIMIT)
                .map(Math::log)
                .sorted()
                .toArray();
        PackResult clean = plan.pack().solve(plan.mediumResistance());
        int classes = plan.classes().count();
        Stand stand =
                new Stand(0, SumpState.clean(classes), ElementLoad.clean(clean.cellAreas(), classes), clean, 0, 0, 0);
        List<ServiceCourse.Point> points = new ArrayList<>();
        points.add(point(stand));
        double step = Math.min(longest, clock.begin(1));
        double end = Math.log(ELEMENT_LIMIT);
        long changes = 1;
        while (stand.time < plan.horizon()) {
            double changeAt = changes * plan.oilLife();
            double border = Math.min(plan.horizon(), changeAt);
            double stride = Math.min(Math.min(step, longest), border - stand.time);
            Trial trial = advance(stand, stride);
            if (trial.error > tolerance && stride > shortest) {
                step = stride * Math.max(0.1, SAFETY * Math.sqrt(tolerance / trial.error));
                continue;
            }
            double stop = next(stops, stand.logRatio);
            if (trial.end.logRatio > stop + EVENT_TOLERANCE) {
                trial = landing(stand, stride, stop);
            } else if (stride >= step) {
                step = stride
                        * Math.min(
                                GREATEST_GROWTH,
                                SAFETY * Math.sqrt(tolerance / Math.max(trial.error, 1e-6 * tolerance)));
            }
            steps++;
            stand = trial.end;
            points.add(point(stand));
            if (stand.time >= changeAt * (1 - ROUNDING)) {
                stand = stand.afterOilChange();
                points.add(point(stand));
                changes++;
            }
            if (stand.logRatio >= end - EVENT_TOLERANCE || trial.plugged) {
                return new ServiceCourse(ServiceCourse.Status.ELEMENT_LIMIT, points, stand.sump, stand.load, steps);
            }
        }
        return new ServiceCourse(ServiceCourse.Status.HORIZON, points, stand.sump, stand.load, steps);
    }

    private static double next(double[] stops, double logRatio) {
        for (double stop : stops) {
            if (stop > logRatio + EVENT_TOLERANCE) {
                return stop;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Shortens a step that passes a ratio until it ends there. */
    private Trial landing(Stand from, double stride, double stop) {
        double low = 0;
        double high = stride;
        Trial best = advance(from, stride);
        for (int i = 0; i < EVENT_STEPS && best.end.logRatio > stop + EVENT_TOLERANCE; i++) {
            double u = (stop - from.logRatio) / (best.end.logRatio - from.logRatio);
            double guess = i % 3 == 2 ? 0.5 * (low + high) : u * (best.end.time - from.time);
            double next = Math.min(Math.max(guess, low + 1e-3 * (high - low)), high - 1e-6 * (high - low));
            Trial trial = advance(from, next);
            if (trial.end.logRatio >= stop - EVENT_TOLERANCE) {
                high = next;
                best = trial;
            } else {
                low = next;
            }
        }
        return best;
    }

    private ServiceCourse.Point point(Stand stand) {
        return new ServiceCourse.Point(
                stand.time,
                Math.exp(stand.logRatio),
                stand.sump.retainedMass(),
                stand.sump.concentration(plan.sumpVolume()),
                stand.unfiltered,
                stand.pumped);
    }

    /** A step and how far its two attempts are apart. */
    private record Trial(Stand end, double error, boolean plugged) {}

    private Trial advance(Stand from, double duration) {
        double[] shares = from.load.flowShares(from.pack.relativeFaceVelocities(), from.pack.effectiveArea());
        Stretch first = new Stretch(from, 0);
        first.pass(duration);
        ElementLoad guess = from.load.deposit(shares, first.caught(from));
        if (isPlugged(guess)) {
            return new Trial(from, duration > shortest ? Double.MAX_VALUE : 0, true);
        }
        PackResult guessed = solve(guess);
        double rise = Math.log(guessed.resistance() / cleanPack) - from.logRatio;
        double mass = first.sump.retainedMass() - from.sump.retainedMass();
        Stretch second = new Stretch(from, mass > 0 ? rise / mass : 0);
        second.pass(duration);
        double[] later = guess.flowShares(guessed.relativeFaceVelocities(), guessed.effectiveArea());
        for (int i = 0; i < shares.length; i++) {
            shares[i] = 0.5 * (shares[i] + later[i]);
        }
        ElementLoad load = from.load.deposit(shares, second.caught(from));
        if (isPlugged(load)) {
            return new Trial(from, duration > shortest ? Double.MAX_VALUE : 0, true);
        }
        PackResult pack = solve(load);
        double logRatio = Math.log(pack.resistance() / cleanPack);
        Stand end =
                new Stand(from.time + duration, second.sump, load, pack, logRatio, second.unfiltered, second.pumped);
        return new Trial(end, Math.abs(logRatio - from.logRatio - rise), false);
    }

    private boolean isPlugged(ElementLoad load) {
        return load.fullness(plan.law()) >= 1;
    }

    private PackResult solve(ElementLoad load) {
        double[] resistance = load.resistanceRatios(plan.law());
        for (int i = 0; i < resistance.length; i++) {
            resistance[i] *= plan.mediumResistance();
        }
        return plan.pack().solve(resistance);
    }

    /** One pass over a stretch of time with a resistance that grows evenly with the dirt caught. */
    private final class Stretch {
        private final double[] efficiency = plan.efficiency();
        private final double[] source = plan.source();
        private final double growth;
        private final double logRatio;
        private final double retained;
        private double time;
        private SumpState sump;
        private double unfiltered;
        private double pumped;

        Stretch(Stand from, double growth) {
            this.growth = growth;
            logRatio = from.logRatio;
            retained = from.sump.retainedMass();
            time = from.time;
            sump = from.sump;
            unfiltered = from.unfiltered;
            pumped = from.pumped;
        }

        double[] caught(Stand from) {
            double[] now = sump.retained();
            double[] before = from.sump.retained();
            for (int i = 0; i < now.length; i++) {
                now[i] = Math.max(0, now[i] - before[i]);
            }
            return now;
        }

        void pass(double duration) {
            double end = time + duration;
            long number = clock.at(time);
            while (time < end) {
                double hotFrom = clock.begin(number) + plan.startDuration();
                boolean starting = time < hotFrom;
                double border = starting ? hotFrom : clock.begin(number + 1);
                double to = Math.min(border, end);
                if (starting) {
                    start(number, to - time);
                } else {
                    hot(to - time);
                }
                time = to;
                if (!starting && to == border) {
                    number++;
                }
            }
        }

        private double ratio(SumpState state) {
            return Math.exp(logRatio + growth * (state.retainedMass() - retained));
        }

        private void start(long number, double duration) {
            ServicePlan.StartDose dose = plan.starts().at(plan.startTemperature(number), ratio(sump));
            double volume = dose.unfilteredVolume() + dose.filteredVolume();
            double flow = volume / plan.startDuration();
            flow(flow, volume == 0 ? 0 : dose.unfilteredVolume() / volume, duration);
        }

        private void hot(double duration) {
            ServicePlan.HotState before = plan.hot().at(ratio(sump));
            SumpState middle = advanced(before.flow(), before.bypassShare(), duration / 2);
            ServicePlan.HotState between = plan.hot().at(ratio(middle));
            flow(between.flow(), between.bypassShare(), duration);
        }

        private void flow(double flow, double share, double duration) {
            sump = advanced(flow, share, duration);
            unfiltered += flow * share * duration;
            pumped += flow * duration;
        }

        private SumpState advanced(double flow, double share, double duration) {
            double held = Math.min(1, Math.max(0, share));
            SumpFlows flows = new SumpFlows(plan.sumpVolume(), flow, held, 0, 0, plan.topUp());
            return SumpBalance.advance(sump, flows, efficiency, source, duration);
        }
    }
}
