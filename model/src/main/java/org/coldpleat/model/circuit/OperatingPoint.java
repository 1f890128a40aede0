package org.coldpleat.model.circuit;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;

/**
 * Steady state of a circuit at one speed and temperature.
 *
 * @param status how the search ended
 * @param speed of the pump [rev/s]
 * @param temperature of the sump [K]
 * @param pumpPressure at the pump outlet [Pa]
 * @param galleryPressure behind the filter, where the gauge sits [Pa]
 * @param bearingPressure before bearings and restrictors [Pa]
 * @param pumpFlow delivered [m3/s]
 * @param reliefFlows dumped by each relief valve, in the order of the circuit [m3/s]
 * @param filterFlow through filter and its bypass valves, and so through the gallery [m3/s]
 * @param filterDrop over the filter [Pa]
 * @param bearingFlow through the bearings, side flow included [m3/s]
 * @param sideFlow pumped out by the journals [m3/s]
 * @param restrictorFlow through jets and restrictors [m3/s]
 * @param filmTemperature of the bearing films [K]
 * @param filmToMetal heat that the bearing films give to the metal around them [W], below 0 where the metal warms them
 * @param galleryStarved whether the journals ask for more oil than arrives, so that the bearing pressure is 0
 * @param suctionLimited whether the pickup sets the delivery
 * @param residuals how well the balances are met
 * @param steps taken by the solver [1]
 */
public record OperatingPoint(
        SolveStatus status,
        double speed,
        double temperature,
        double pumpPressure,
        double galleryPressure,
        double bearingPressure,
        double pumpFlow,
        List<Double> reliefFlows,
        double filterFlow,
        double filterDrop,
        double bearingFlow,
        double sideFlow,
        double restrictorFlow,
        double filmTemperature,
        double filmToMetal,
        boolean galleryStarved,
        boolean suctionLimited,
        Residuals residuals,
        int steps) {
    public OperatingPoint {
        reliefFlows = List.copyOf(reliefFlows);
    }

    /**
     * Relative misses of the balances.
     *
     * @param flow oil delivered but not accounted for, over delivery [1]
     * @param pressure pump less gallery less filter, and ideal relief valves off their setting [1]
     * @param power pump power not dissipated in a part, over pump power [1]
     * @param film heat of the bearing films not carried off, over that heat [1]
     */
    public record Residuals(double flow, double pressure, double power, double film) {
        /** All balances met exactly. */
        public static final Residuals ZERO = new Residuals(0, 0, 0, 0);

        /** The largest miss [1]. */
        public double largest() {
            return Math.max(Math.max(flow, pressure), Math.max(power, film));
        }
    }

    /** Oil dumped by all relief valves [m3/s]. */
    public double reliefFlow() {
        double sum = 0;
        for (double flow : reliefFlows) {
            sum += flow;
        }
        return sum;
    }

    /** What a reader of this point should know. */
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>();
        if (!status.isAnswer() && status != SolveStatus.FILM_TOO_HOT) {
            notices.add(Notice.of("circuit.notConverged", Severity.WARNING, "circuit", status.name()));
        }
        if (status == SolveStatus.NO_FLOW) {
            notices.add(Notice.of("circuit.noFlow", Severity.INFO, "circuit"));
        }
        if (galleryStarved) {
            notices.add(Notice.of("circuit.starvedGallery", Severity.CAUTION, "circuit"));
        }
        if (suctionLimited) {
            notices.add(Notice.of("circuit.suctionLimited", Severity.WARNING, "circuit"));
        }
        if (status == SolveStatus.FILM_TOO_HOT) {
            notices.add(Notice.of(
                    "circuit.filmTooHot",
                    Severity.WARNING,
                    "circuit",
                    new Amount(Look.PLAIN_TEMPERATURE, BearingFilm.HOTTEST)));
        }
        return List.copyOf(notices);
    }
}
