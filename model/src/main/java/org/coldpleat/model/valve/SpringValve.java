package org.coldpleat.model.valve;

import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.FlowLaw;
import org.coldpleat.model.flow.FlowWithSlope;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.PilotedLaw;
import org.coldpleat.model.numerics.Corner;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Valve whose lid is held on its seat by a spring: a plate on a coil spring, a leaf spring, or an element that lifts off
 * its seat as a whole. The flow is explicit in the pressure difference.
 *
 * <p>Balance of forces on the seat area {@code A = pi d^2/4}: {@code A (dp - pc) = (k + kf) x}, with opening pressure pc,
 * spring rate k, lift x, and steady flow force {@code kf = z 2 Cd pi d cos(69 deg) dp}. The lift comes from the whole
 * difference across the valve. Oil passes the curtain {@code w pi d x}, which counts no further than the bore area, as a
 * slit (creeping entrance and inertia), then the port. Both corners are rounded by cubics, the first just above
 * the opening pressure, the second just below full lift; the error is at most 0.015 % of the opening pressure and of the
 * full lift, and a valve below its opening pressure passes its leak and nothing else.
 *
 * <p>Friction holds a lid that has opened: on its way up it follows the balance from pc, on its way down that from the
 * closing pressure, and between the two it rests where it is, {@code x = max(up, min(hangingLift, down))}.
 *
 * <p>Worked example: d 12 mm, k 1.5 N/mm, pc 100 kPa, lift 3 mm, Cd 0.62, 24 mm2/s, 860 kg/m3: 78.4 L/min at 150 kPa.
 *
 * @param openingPressure pc [Pa], above 0: spring preload over seat area
 * @param seatDiameter d [m], above 0
 * @param springRate k [N/m], above 0
 * @param maximumLift [m], above 0
 * @param curtainWidthFactor w, share of the seat's edge that opens [1], 0 to 1; below 1 for a leaf hinged at one side
 * @param dischargeCoefficient Cd of the curtain [1]
 * @param port bore or windows in series; {@link AdditiveLaw#NONE} when wide
 * @param leak laminar leak of the shut valve, flow times viscosity over pressure difference [m3], at least 0
 * @param flowForceFactor z [1], 0 to 1; 0 is no flow force, 0-0.3 is the range for flat lids
 * @param closingPressure [Pa], at most the opening pressure: where a valve that has opened shuts again; 0 as the opening
 *     pressure
 * @param hangingLift lift at which friction holds the lid [m], 0 to the maximum lift; 0 for one that comes from its seat
 */
@Source(
        "force balance and curtain: fluid-power textbooks, e.g. Merritt 1967, Hydraulic Control Systems; slit resistance derived here")
@Validity(
        "steady state; lid stays parallel to its seat; friction is the difference of opening and closing pressure, the same at every lift")
public record SpringValve(
        double openingPressure,
        double seatDiameter,
        double springRate,
        double maximumLift,
        double curtainWidthFactor,
        double dischargeCoefficient,
        AdditiveLaw port,
        double leak,
        double flowForceFactor,
        double closingPressure,
        double hangingLift)
        implements FlowLaw, PilotedLaw {
    /** Width of the rounded corners over the opening pressure and over the full lift [1]. */
    private static final double ROUNDING = 1e-3;

    /** Discharge coefficient of a curtain [1]. */
    @Source("fluid-power textbooks, 0.60-0.65; common practice")
    public static final double CURTAIN_DISCHARGE = 0.62;

    private static final double JET_COSINE = Math.cos(Math.toRadians(69));

    public SpringValve {
        Require.positive("openingPressure", openingPressure, "Pa");
        Require.positive("seatDiameter", seatDiameter, "m");
        Require.positive("springRate", springRate, "N/m");
        Require.positive("maximumLift", maximumLift, "m");
        Require.within("curtainWidthFactor", curtainWidthFactor, 1e-3, 1, "1");
        Require.within("dischargeCoefficient", dischargeCoefficient, 1e-3, 1, "1");
        Require.notNegative("leak", leak, "m3");
        Require.within("flowForceFactor", flowForceFactor, 0, 1, "1");
        Require.within("closingPressure", closingPressure, 0, openingPressure, "Pa");
        Require.within("hangingLift", hangingLift, 0, maximumLift, "m");
    }

    /** A valve that comes from its seat. */
    public SpringValve(
            double openingPressure,
            double seatDiameter,
            double springRate,
            double maximumLift,
            double curtainWidthFactor,
            double dischargeCoefficient,
            AdditiveLaw port,
            double leak,
            double flowForceFactor,
            double closingPressure) {
        this(
                openingPressure,
                seatDiameter,
                springRate,
                maximumLift,
                curtainWidthFactor,
                dischargeCoefficient,
                port,
                leak,
                flowForceFactor,
                closingPressure,
                0);
    }

    /**
     * Valve with a whole curtain, no friction and no flow force.
     *
     * @param openingPressure [Pa]
     * @param seatDiameter [m]
     * @param springRate [N/m]
     * @param maximumLift [m]
     * @param leak [m3]
     */
    public static SpringValve disc(
            double openingPressure, double seatDiameter, double springRate, double maximumLift, double leak) {
        return new SpringValve(
                openingPressure,
                seatDiameter,
                springRate,
                maximumLift,
                1,
                CURTAIN_DISCHARGE,
                AdditiveLaw.NONE,
                leak,
                0,
                openingPressure);
    }

    /** The same valve set to another opening pressure [Pa]; the closing pressure keeps its ratio to it. */
    public SpringValve withOpeningPressure(double pressure) {
        return with(pressure, closingPressure / openingPressure * pressure, hangingLift);
    }

    /** The valve on its way down from its stop: friction holds it open down to the closing pressure. */
    public SpringValve afterOpening() {
        return hangingAt(maximumLift);
    }

    /** The valve with a lid that friction holds at a lift [m]. */
    public SpringValve hangingAt(double lift) {
        return hasFriction() ? with(openingPressure, closingPressure, Math.min(lift, maximumLift)) : this;
    }

    /** Whether the lid shuts at a lower pressure than it opens. */
    public boolean hasFriction() {
        return shutsAt() < openingPressure;
    }

    /** Pressure difference at which a lid that has opened shuts again [Pa]. */
    public double shutsAt() {
        return closingPressure == 0 ? openingPressure : closingPressure;
    }

    private SpringValve with(double opening, double closing, double hanging) {
        return new SpringValve(
                opening,
                seatDiameter,
                springRate,
                maximumLift,
                curtainWidthFactor,
                dischargeCoefficient,
                port,
                leak,
                flowForceFactor,
                closing,
                hanging);
    }

    /** Seat area [m2]. */
    public double seatArea() {
        return Math.PI * seatDiameter * seatDiameter / 4;
    }

    /** Whether the valve is open at a pressure difference [Pa]: it exceeds the opening pressure, or that at which it shuts. */
    public boolean isOpen(double pressureDifference) {
        return pressureDifference > (hangingLift > 0 ? shutsAt() : openingPressure);
    }

    /** Lift [m] at a pressure difference [Pa], from 0 to the maximum lift. */
    public double lift(double pressureDifference) {
        return capped(freeLift(pressureDifference), maximumLift);
    }

    /** Pressure difference at which the spring balance reaches the maximum lift [Pa]; infinite if flow force forbids it. */
    public double fullLiftPressure() {
        double reach = seatArea() - flowForceRate() * maximumLift;
        return reach > 0
                ? (seatArea() * (hangingLift == maximumLift ? shutsAt() : openingPressure) + springRate * maximumLift)
                        / reach
                : Double.POSITIVE_INFINITY;
    }

    @Override
    public double flowRate(double pressureDifference, Fluid fluid) {
        double seep = leak * pressureDifference / fluid.dynamicViscosity();
        double free = freeLift(pressureDifference);
        return free == 0 ? seep : seep + slit().flowRate(capped(free, countedLift()), pressureDifference, fluid);
    }

    @Override
    public double flowSlope(double pressureDifference, Fluid fluid) {
        return passage(pressureDifference, fluid).slope();
    }

    @Override
    public FlowWithSlope passage(double pressureDifference, Fluid fluid) {
        Piloted both = at(pressureDifference, pressureDifference, fluid);
        return new FlowWithSlope(both.flowRate(), both.byOpening() + both.byDriving());
    }

    /** The lid is lifted by one pressure against the spring, and against the flow force of the oil that another drives. */
    @Override
    public Piloted at(double opening, double driving, Fluid fluid) {
        double seep = leak / fluid.dynamicViscosity();
        double stiffness = springRate + flowForceRate() * driving;
        double free = seatArea() * ramp(opening, openingPressure) / stiffness;
        double byOpening = seatArea() * rampSlope(opening, openingPressure) / stiffness;
        double byDriving = -free * flowForceRate() / stiffness;
        if (hangingLift > 0) {
            double down = seatArea() * ramp(opening, shutsAt()) / stiffness;
            if (Math.min(down, hangingLift) > free) {
                boolean rests = down > hangingLift;
                free = rests ? hangingLift : down;
                byOpening = rests ? 0 : seatArea() * rampSlope(opening, shutsAt()) / stiffness;
                byDriving = rests ? 0 : -free * flowForceRate() / stiffness;
            }
        }
        if (free == 0) {
            return new Piloted(seep * driving, 0, seep);
        }
        double limit = countedLift();
        double counted = Corner.cappedSlope(free, limit, ROUNDING * limit);
        double lift = capped(free, limit);
        LiftedSlit slit = slit();
        FlowWithSlope fixed = slit.passage(lift, driving, fluid);
        double byLift = slit.byLift(lift, fixed, fluid) * counted;
        return new Piloted(
                seep * driving + fixed.flowRate(), byLift * byOpening, seep + fixed.slope() + byLift * byDriving);
    }

    private double freeLift(double pressureDifference) {
        double perPressure = seatArea() / (springRate + flowForceRate() * pressureDifference);
        double up = perPressure * ramp(pressureDifference, openingPressure);
        return hangingLift == 0
                ? up
                : Math.max(up, Math.min(hangingLift, perPressure * ramp(pressureDifference, shutsAt())));
    }

    /** How far a pressure [Pa] lies above the one from which the lid lifts, its corner rounded [Pa]. */
    private double ramp(double pressure, double from) {
        return Corner.ramp(pressure - from, ROUNDING * openingPressure);
    }

    private double rampSlope(double pressure, double from) {
        return Corner.slope(pressure - from, ROUNDING * openingPressure);
    }

    private static double capped(double free, double limit) {
        return Corner.capped(free, limit, ROUNDING * limit);
    }

    /** Lift beyond which more lift no longer widens the way [m]. */
    private double countedLift() {
        return Math.min(maximumLift, seatDiameter / (4 * curtainWidthFactor));
    }

    private double flowForceRate() {
        return flowForceFactor * 2 * dischargeCoefficient * Math.PI * seatDiameter * JET_COSINE;
    }

    private LiftedSlit slit() {
        return new LiftedSlit(curtainWidthFactor * Math.PI * seatDiameter, dischargeCoefficient, port);
    }
}
