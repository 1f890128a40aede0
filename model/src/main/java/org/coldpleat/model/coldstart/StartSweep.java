package org.coldpleat.model.coldstart;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The same start from several temperatures, each soaked through: oil, metal, element and air.
 *
 * @param rows one a start temperature, in the order asked for
 */
public record StartSweep(List<Row> rows) {
    /**
     * One start.
     *
     * @param startTemperature [K]
     * @param status how it ended
     * @param fill tally while the gallery filled
     * @param connected tally from then on
     * @param greatestRatio greatest difference over opening pressure [1]
     */
    public record Row(
            double startTemperature,
            StartStatus status,
            BypassTally fill,
            BypassTally connected,
            double greatestRatio) {
        /** The row of a start that was made from a temperature [K]. */
        public static Row of(double startTemperature, StartUpResult result) {
            return new Row(
                    startTemperature,
                    result.status(),
                    result.fill(),
                    result.connected(),
                    result.valveRatioPeak().value());
        }
    }

    public StartSweep {
        rows = List.copyOf(rows);
    }

    /** Computes all starts, spread over the free processors; the answer does not depend on how many there are. */
    public static StartSweep of(StartUpSpec spec, double[] startTemperatures) {
        return new StartSweep(DoubleStream.of(startTemperatures)
                .parallel()
                .mapToObj(temperature -> Row.of(temperature, StartUp.run(spec.coldSoakedAt(temperature))))
                .toList());
    }
}
