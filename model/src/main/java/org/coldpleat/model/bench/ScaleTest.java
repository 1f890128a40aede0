package org.coldpleat.model.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.bench.BenchEstimate.Status;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Kitchen scale under the bypass valve: the force that just lifts the plate, and the force at a second lift, give the
 * opening pressure and the spring rate. The pressure acts on the circle of the seal line, not on the plate.
 */
@Source("derived here: force balance on the plate, p pi d^2/4 = F")
@Validity("slow push along the axis of the valve; friction shows as a lower force on the way back")
public final class ScaleTest {
    private static final List<String> CAUTIONS =
            List.of("bench.caution.springLoaded", "bench.caution.sharpMetal", "bench.caution.noEngineApproval");
    private static final String PLACE = "scale test";

    private ScaleTest() {}

    /**
     * What was read.
     *
     * @param liftOff scale reading when the plate just leaves the seat [kg]
     * @param reseat scale reading when it just sits down again [kg]; empty if not read
     * @param secondLift scale reading at the second lift [kg]; empty if not read
     * @param lift travel of the scale side between lift-off and second lift [m]; empty if not read
     * @param lever force on the plate over force on the scale [1]; 1 without a lever
     * @param addedWeight weight of plate, pusher or lever that helps to open, negative if it helps to close [N]
     * @param seatDiameter diameter of the seal line [m]
     * @param plateDiameter outer diameter of the plate [m]; empty if not read
     */
    public record Readings(
            Measured liftOff,
            Optional<Measured> reseat,
            Optional<Measured> secondLift,
            Optional<Measured> lift,
            Measured lever,
            Measured addedWeight,
            Measured seatDiameter,
            Optional<Measured> plateDiameter) {
        public Readings {
            Require.positive("liftOff", liftOff.value(), "kg");
            Require.positive("lever", lever.value(), "1");
            Require.positive("seatDiameter", seatDiameter.value(), "m");
            lift.ifPresent(l -> Require.positive("lift", l.value(), "m"));
            if (secondLift.isPresent() != lift.isPresent()) {
                throw new IllegalArgumentException("secondLift and lift must be read both or neither");
            }
        }
    }

    /**
     * What the scale says.
     *
     * @param opening pressure difference at which the plate leaves the seat [Pa]
     * @param closing pressure difference at which it sits down again [Pa]; empty if not read
     * @param springRate [N/m]; empty if not read
     */
    public record Result(BenchEstimate opening, Optional<Measured> closing, Optional<Measured> springRate) {}

    /** Evaluates the readings. */
    public static Result evaluate(Readings readings) {
        List<Notice> notices = new ArrayList<>();
        double area = Math.PI * Math.pow(readings.seatDiameter.value(), 2) / 4;
        double force = force(readings.liftOff, readings);
        if (!(force > 0)) {
            notices.add(Notice.of("bench.scale.noForce", Severity.WARNING, PLACE));
            return new Result(BenchEstimate.refused(notices), Optional.empty(), Optional.empty());
        }
        double scaleForce = Gravity.FREE_FALL * readings.lever.value() * readings.liftOff.value();
        List<Correction> corrections = new ArrayList<>();
        corrections.add(new Correction(
                "addedWeight",
                readings.addedWeight.value() / force,
                readings.addedWeight.standardUncertainty() / force));
        corrections.add(new Correction("scale", 0, scaleForce / force * relative(readings.liftOff)));
        corrections.add(new Correction("lever", 0, scaleForce / force * relative(readings.lever)));
        corrections.add(new Correction("seatDiameter", 0, 2 * relative(readings.seatDiameter)));
        readings.plateDiameter.ifPresent(plate -> {
            double ratio = Math.pow(readings.seatDiameter.value() / plate.value(), 2);
            if (ratio > 1) {
                notices.add(Notice.of("bench.scale.plateInsideSeat", Severity.WARNING, PLACE));
            } else if (ratio < 0.95) {
                notices.add(
                        Notice.of("bench.scale.sealLine", Severity.INFO, PLACE, new Amount(Look.PERCENT, 1 - ratio)));
            }
        });
        Optional<Measured> closing = readings.reseat.map(r -> {
            double back = force(r, readings);
            if (back < 0.85 * force) {
                notices.add(Notice.of(
                        "bench.scale.friction", Severity.WARNING, PLACE, new Amount(Look.PERCENT, 1 - back / force)));
            }
            double byScale = Gravity.FREE_FALL * readings.lever.value() * r.standardUncertainty();
            double u = Math.sqrt(Math.pow(byScale, 2)
                            + Math.pow(readings.addedWeight.standardUncertainty(), 2)
                            + Math.pow(2 * back * relative(readings.seatDiameter), 2))
                    / area;
            return normal(Kind.PRESSURE_DIFFERENCE, back / area, u);
        });
        Optional<Measured> rate = readings.secondLift.map(second -> rate(second, readings, notices));
        notices.add(Notice.of("bench.scale.installedLength", Severity.INFO, PLACE));
        BenchEstimate opening = BenchEstimate.ofFactor(
                Status.USABLE,
                Kind.PRESSURE_DIFFERENCE,
                force / area,
                readings.liftOff.repeats(),
                corrections,
                List.of(),
                notices);
        return new Result(opening, closing, rate);
    }

    /**
     * What to expect.
     *
     * @param openingPressure guessed [Pa]
     * @param seatDiameter [m]
     * @param lever [1]
     * @param resolution of the scale [kg]
     * @param otherLnSigma seat, lever and repeat together [1]
     * @param presentLnSigma what is known now [1]
     */
    public static Plan plan(
            double openingPressure,
            double seatDiameter,
            double lever,
            double resolution,
            double otherLnSigma,
            double presentLnSigma) {
        double force =
                Require.positive("openingPressure", openingPressure, "Pa") * Math.PI * seatDiameter * seatDiameter / 4;
        double mass = force / (Require.positive("lever", lever, "1") * Gravity.FREE_FALL);
        return Plan.of(Kind.MASS, mass, MINUTES_FIVE, 1, resolution, otherLnSigma, presentLnSigma, CAUTIONS);
    }

    @Source("common practice, no source")
    private static final double MINUTES_FIVE = 300;

    private static double force(Measured mass, Readings readings) {
        return Gravity.FREE_FALL * readings.lever.value() * mass.value() + readings.addedWeight.value();
    }

    private static Measured rate(Measured second, Readings readings, List<Notice> notices) {
        double lever = readings.lever.value();
        Measured travel = readings.lift.orElseThrow();
        double more = second.value() - readings.liftOff.value();
        // travel of the plate is that of the scale over the lever
        double rate = Gravity.FREE_FALL * lever * lever * more / travel.value();
        if (!(rate > 0)) {
            notices.add(Notice.of("bench.scale.noRate", Severity.WARNING, PLACE));
        }
        double byMass = Gravity.FREE_FALL
                * lever
                * lever
                * Math.hypot(second.standardUncertainty(), readings.liftOff.standardUncertainty())
                / travel.value();
        double u = Math.sqrt(byMass * byMass
                + Math.pow(rate * relative(travel), 2)
                + Math.pow(2 * rate * relative(readings.lever), 2));
        return normal(Kind.SPRING_RATE, rate, u);
    }

    private static Measured normal(Kind kind, double value, double uncertainty) {
        return Measured.exact(kind, value, Provenance.MEASURED).withSpread(uncertainty, Spread.NORMAL);
    }

    private static double relative(Measured m) {
        return m.standardUncertainty() / m.value();
    }
}
