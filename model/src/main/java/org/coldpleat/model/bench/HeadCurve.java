package org.coldpleat.model.bench;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import org.coldpleat.model.flow.Fluid;

/** Heads of the whole log for the logarithm of the resistance and the first head; remembers the last ones. */
final class HeadCurve implements RobustFit.Curve {
    private final List<DrainReading> log;
    private final DrainTest.Rig rig;
    private final DoubleFunction<Fluid> oil;
    private final double unit;
    private final double firstHead;
    private double[] lastParameters = {};
    private double[] lastHeads = {};

    HeadCurve(List<DrainReading> log, DrainTest.Rig rig, DoubleFunction<Fluid> oil, double unit, double firstHead) {
        this.log = log;
        this.rig = rig;
        this.oil = oil;
        this.unit = unit;
        this.firstHead = firstHead;
    }

    double laminar(double[] parameters) {
        return unit * Math.exp(parameters[0] - 1);
    }

    @Override
    public double value(double[] predictors, double[] parameters) {
        if (!Arrays.equals(parameters, lastParameters)) {
            lastHeads = DrainTest.heads(laminar(parameters), firstHead * parameters[1], log, rig, oil);
            lastParameters = parameters.clone();
        }
        return lastHeads[(int) predictors[0]];
    }
}
