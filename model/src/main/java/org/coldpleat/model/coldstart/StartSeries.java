package org.coldpleat.model.coldstart;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.valve.SpringValve;

/** Collects the points of a start and thins them. */
final class StartSeries {
    /**
     * Bypass valve nearest to opening or furthest open.
     *
     * @param valve 0 element, 1 block
     * @param difference across it [Pa]
     * @param opening its opening pressure as set [Pa]; infinite without a valve
     */
    record Leading(int valve, double difference, double opening) {}

    private final StartEquations plant;
    private final List<StartSwitch.Bypass> valves;
    private final List<StartPoint> points = new ArrayList<>();
    private final List<Boolean> kept = new ArrayList<>();

    StartSeries(StartEquations plant, List<StartSwitch.Bypass> valves) {
        this.plant = plant;
        this.valves = valves;
    }

    Leading leading(StartHydraulics.Moment moment) {
        Leading best = new Leading(0, moment.difference(0), Double.POSITIVE_INFINITY);
        for (StartSwitch.Bypass valve : valves) {
            Leading other = new Leading(valve.which, moment.difference(valve.which), valve.opening());
            best = other.difference() / other.opening() >= best.difference() / best.opening() ? other : best;
        }
        return best;
    }

    /** Adds a point; one to keep survives the thinning. */
    void add(StartRun.Sample sample, boolean keep) {
        StartHydraulics.Moment moment = sample.moment();
        Leading leading = leading(moment);
        double lift = plant.hydraulics()
                .valve(leading.valve())
                .map(valve -> relativeLift(valve, leading.difference()))
                .orElse(0.0);
        points.add(new StartPoint(
                sample.time(),
                plant.oil(sample.time(), sample.state()),
                sample.state()[StartEquations.METAL],
                plant.element(sample.time(), sample.state()),
                moment.point().pumpPressure(),
                moment.point().galleryPressure(),
                moment.totalDrop(),
                leading.difference(),
                leading.opening(),
                lift,
                moment.point().pumpFlow(),
                moment.point().reliefFlow(),
                moment.mediumFlow(),
                moment.bypassFlow()));
        kept.add(keep);
    }

    private static double relativeLift(SpringValve valve, double difference) {
        return valve.lift(difference) / valve.maximumLift();
    }

    /** The points, thinned evenly to the most a series holds; those to keep go first. */
    List<StartPoint> thinned() {
        int most = StartUpResult.MOST_POINTS;
        if (points.size() <= most) {
            return points;
        }
        int fixed = (int) kept.stream().filter(keep -> keep).count();
        boolean onlyFixed = fixed > most - 100;
        int candidates = onlyFixed ? points.size() : points.size() - fixed;
        int room = onlyFixed ? most - 1 : most - fixed - 1;
        int stride = (candidates + room - 1) / room;
        List<StartPoint> thin = new ArrayList<>(most);
        int counted = 0;
        for (int i = 0; i < points.size(); i++) {
            boolean hold = kept.get(i) && !onlyFixed;
            boolean take = hold || counted % stride == 0 || i == points.size() - 1;
            counted += hold ? 0 : 1;
            if (take) {
                thin.add(points.get(i));
            }
        }
        return thin;
    }
}
