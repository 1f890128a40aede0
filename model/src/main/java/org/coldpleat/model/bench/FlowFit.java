package org.coldpleat.model.bench;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import org.coldpleat.model.flow.Fluid;

/** Parameters are fitted as multiples of units of the size to expect. */
record FlowFit(RobustFit.Result result, double laminarUnit, double inertialUnit, double compressionUnit) {
    double laminar() {
        return laminarUnit * result.parameters()[0];
    }

    double laminarUncertainty() {
        return laminarUnit * result.standardUncertainty(0);
    }

    double inertial() {
        return inertialUnit > 0 ? inertialUnit * result.parameters()[1] : 0;
    }

    double inertialUncertainty() {
        return inertialUnit > 0 ? inertialUnit * result.standardUncertainty(1) : 0;
    }

    double compression() {
        int last = result.parameters().length - 1;
        return compressionUnit > 0 ? compressionUnit * result.parameters()[last] : 0;
    }

    static FlowFit of(List<FlowRow> rows, FlowBench.Readings readings, DoubleFunction<Fluid> oil, boolean compression) {
        int count = rows.size();
        double[][] predictors = new double[count][];
        double[] pressures = new double[count];
        double[] uncertainties = new double[count];
        double[] ratios = new double[count];
        double inertialUnit = Double.MAX_VALUE;
        double largest = 0;
        for (int i = 0; i < count; i++) {
            FlowRow row = rows.get(i);
            Fluid fluid = oil.apply(row.temperature());
            double viscous = fluid.dynamicViscosity() * row.flowRate();
            double inertia = fluid.density() * row.flowRate() * row.flowRate();
            predictors[i] = new double[] {viscous, inertia};
            pressures[i] = row.pressureDifference();
            uncertainties[i] =
                    Math.hypot(readings.pressureUncertainty(), row.pressureDifference() * readings.flowUncertainty());
            ratios[i] = Math.max(row.pressureDifference(), readings.pressureUncertainty()) / viscous;
            largest = Math.max(largest, Math.abs(row.pressureDifference()));
            inertialUnit = Math.min(inertialUnit, Math.max(row.pressureDifference(), 1e-3) / inertia);
        }
        Arrays.sort(ratios);
        double laminarUnit = ratios[count / 2];
        double compressionUnit = compression && count > 3 ? 1 / largest : 0;
        FlowFit both = fit(predictors, pressures, uncertainties, laminarUnit, inertialUnit, compressionUnit);
        return both.result.converged() && both.inertial() < 0
                ? fit(predictors, pressures, uncertainties, laminarUnit, 0, compressionUnit)
                : both;
    }

    private static FlowFit fit(
            double[][] predictors,
            double[] pressures,
            double[] uncertainties,
            double laminarUnit,
            double inertialUnit,
            double compressionUnit) {
        int inertialPlace = inertialUnit > 0 ? 1 : -1;
        int compressionPlace = compressionUnit > 0 ? inertialPlace < 0 ? 1 : 2 : -1;
        double[] start = new double[1 + (inertialPlace > 0 ? 1 : 0) + (compressionPlace > 0 ? 1 : 0)];
        Arrays.fill(start, 0.1);
        start[0] = 1;
        RobustFit.Curve curve = (x, p) -> {
            double viscous = laminarUnit * p[0] * x[0];
            double inertia = inertialPlace > 0 ? inertialUnit * p[inertialPlace] * x[1] : 0;
            double squeeze = compressionPlace > 0 ? 1 + compressionUnit * p[compressionPlace] * viscous : 1;
            return viscous * squeeze + inertia;
        };
        RobustFit.Result result =
                RobustFit.fit(curve, predictors, pressures, uncertainties, start, RobustFit.Loss.HUBER);
        return new FlowFit(result, laminarUnit, inertialUnit, compressionUnit);
    }
}
