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
            double greatestRatio) {}

    public StartSweep {
        rows = List.copyOf(rows);
    }

    /** Computes all starts, spread over the free processors; the answer does not depend on how many there are. */
    public static StartSweep of(StartUpSpec spec, double[] startTemperatures) {
        return new StartSweep(DoubleStream.of(startTemperatures)
                .parallel()
                .mapToObj(temperature -> row(spec, temperature))
                .toList());
    }

    private static Row row(StartUpSpec spec, double temperature) {
        StartUpResult result = StartUp.run(spec.coldSoakedAt(temperature));
        return new Row(
                temperature,
                result.status(),
                result.fill(),
                result.connected(),
                result.valveRatioPeak().value());
    }
}
