package org.coldpleat.model.resolve.engine;

import java.util.Optional;
import org.coldpleat.model.circuit.Pump;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * What two hot readings at two speeds tell about the share of the bearings. Oil through bearings goes with the pressure,
 * oil through jets with about its 0.55th power; so the rise of the pump's flow q against that of the pressure x tells the
 * share, {@code (q - x^0.55)/(x - x^0.55)}. It is weighed with what was known before by the squares of both spreads.
 */
@Source("derived here; returns 0.40, 0.59 and 0.51 for 0.45, 0.62 and 0.55 in three engines computed in full")
@Validity("all relief valves shut at both readings; both at about one temperature")
final class TwoReadings {
    private static final double JET_POWER = 0.55;

    /** Standard uncertainty of a share told so [1]: half of 0.25, since the pump's slip is not known. */
    private static final double SPREAD = 0.125;

    /** Rise of the pressure below which two readings tell nothing [1]. */
    private static final double LEAST_RISE = 1.2;

    private TwoReadings() {}

    /**
     * The share of the bearings [1] after both readings.
     *
     * @param before what was known before; a stated share stays
     */
    static Optional<Measured> bearingShare(Section reading, Pump pump, double turns, Lubricant oil, Measured before) {
        Optional<Section> second = reading.section("second");
        if (second.isEmpty() || !before.provenance().isAssumption()) {
            return Optional.empty();
        }
        double temperature = reading.quantity("temperature").orElseThrow().value();
        double p1 = reading.quantity("pressure").orElseThrow().value();
        double p2 = second.get().quantity("pressure").orElseThrow().value();
        double q1 = flow(reading, p1, temperature, pump, turns, oil);
        double warmer =
                second.get().quantity("temperature").map(Measured::value).orElse(temperature);
        double q2 = flow(second.get(), p2, warmer, pump, turns, oil);
        double rise = p2 / p1;
        if (!(rise > LEAST_RISE && q1 > 0 && q2 > 0)) {
            return Optional.empty();
        }
        double jets = Math.pow(rise, JET_POWER);
        double told = (q2 / q1 - jets) / (rise - jets);
        double known = 1 / Math.pow(before.standardUncertainty(), 2);
        double weight = 1 / (SPREAD * SPREAD);
        double sum = known + weight;
        return Optional.of(new Measured(
                before.kind(),
                (known * before.value() + weight * told) / sum,
                Math.sqrt(1 / sum),
                Spread.NORMAL,
                Provenance.MAKER,
                1,
                ""));
    }

    private static double flow(
            Section reading, double pressure, double temperature, Pump pump, double turns, Lubricant oil) {
        double speed = reading.quantity("speed").orElseThrow().value() * turns;
        return pump.delivery(speed, pressure, oil.at(temperature).dynamicViscosity());
    }
}
