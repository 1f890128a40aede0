package org.coldpleat.model.circuit;

import java.util.List;
import java.util.Objects;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.model.numerics.BracketedNewton;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;

/**
 * Gallery described by what a gauge shows hot, with every relief valve shut, and by the share of the oil that goes
 * through the bearings. Shares are of flow, not of pressure drop.
 *
 * @param gaugePressure in the gallery [Pa], above 0
 * @param temperature of the sump at the reading [K]
 * @param speed of the pump at the reading [rev/s], above 0
 * @param totalFlow oil that reaches the gallery at the reading [m3/s], above 0; see {@link Pump#delivery}
 * @param bearingShare share of that oil that goes through the bearings, side flow included [1], 0 to 1
 * @param jet law of one jet or restrictor; its count follows from the rest of the flow and need not be whole
 * @param crackPressure of a check valve before the jets [Pa], at least 0
 * @param seriesResistance of the passage behind the gauge [1/m3], at least 0
 * @param metalLead how much warmer than the sump the metal is at the reading [K]
 * @param bearingHabits side flow, friction, conductance to metal and film position of the bearings; what they let through is
 *     not used
 */
@Source("flow balance at the reading; derived here")
public record GalleryFromHotReading(
        double gaugePressure,
        double temperature,
        double speed,
        double totalFlow,
        double bearingShare,
        AdditiveLaw jet,
        double crackPressure,
        double seriesResistance,
        double metalLead,
        Bearings bearingHabits) {
    public GalleryFromHotReading {
        Require.positive("gaugePressure", gaugePressure, "Pa");
        Require.positive("temperature", temperature, "K");
        Require.positive("speed", speed, "rev/s");
        Require.positive("totalFlow", totalFlow, "m3/s");
        Require.within("bearingShare", bearingShare, 0, 1, "1");
        Objects.requireNonNull(jet, "jet");
        Require.notNegative("crackPressure", crackPressure, "Pa");
        Require.notNegative("seriesResistance", seriesResistance, "1/m3");
        Objects.requireNonNull(bearingHabits, "bearingHabits");
    }

    /**
     * Gallery and what follows from it.
     *
     * @param gallery in computing form
     * @param laminarShare share of the hot pressure drop that is laminar, {@code psi_g mu Q/p} [1]: how much of the hot
     *     gallery drop still counts, multiplied by viscosity, when the oil is cold
     * @param filmViscosityRatio film over sump viscosity at the reading [1]
     */
    public record Resolved(Gallery gallery, double laminarShare, double filmViscosityRatio) {
        /**
         * Ratio of filter to gallery resistance, the number that decides cold bypass.
         *
         * @param filterResistance psi_f [1/m3]
         */
        public double resistanceRatio(double filterResistance) {
            return filterResistance / gallery.creepingResistance(filmViscosityRatio);
        }
    }

    /**
     * The gallery in computing form.
     *
     * @throws IllegalArgumentException if the series passage takes all of the pressure, the side flow exceeds the
     *     bearings' share, or the check valve would be shut at the reading
     */
    public Resolved resolve(Lubricant lubricant) {
        Fluid sump = lubricant.at(temperature);
        double pressure = gaugePressure - sump.dynamicViscosity() * seriesResistance * totalFlow;
        Require.positive("gauge pressure less the drop of the series passage", pressure, "Pa");
        double bearingFlow = bearingShare * totalFlow;
        double side = bearingShare == 0 ? 0 : bearingHabits.sideFlow() * speed;
        Require.notNegative("bearing flow less side flow", bearingFlow - side, "m3/s");
        double filmViscosity =
                bearingShare == 0 ? sump.dynamicViscosity() : filmViscosity(lubricant, sump, pressure, bearingFlow);
        double conductance = (bearingFlow - side) * filmViscosity / pressure;
        double jetFlow = totalFlow - bearingFlow;
        List<Restrictor> jets = List.of();
        if (jetFlow > 0) {
            double one = new Restrictor(jet, 1, crackPressure).flowRate(pressure, sump);
            Require.positive("flow of one jet at the hot reading", one, "m3/s");
            jets = List.of(new Restrictor(jet, jetFlow / one, crackPressure));
        }
        Bearings bearings = bearingShare == 0
                ? Bearings.NONE
                : new Bearings(
                        conductance,
                        bearingHabits.sideFlow(),
                        bearingHabits.friction(),
                        bearingHabits.metalConductance(),
                        bearingHabits.filmPosition());
        Gallery gallery = new Gallery(seriesResistance, bearings, jets);
        double ratio = filmViscosity / sump.dynamicViscosity();
        double creeping = gallery.creepingResistance(ratio) * sump.dynamicViscosity() * totalFlow;
        return new Resolved(gallery, creeping / gaugePressure, ratio);
    }

    /** Film viscosity [Pa s] at a known bearing flow: the heat balance with that flow has one film temperature. */
    private double filmViscosity(Lubricant lubricant, Fluid sump, double pressure, double flow) {
        double omega = 2 * Math.PI * speed;
        double friction = bearingHabits.friction() * omega * omega;
        FilmExchange exchange = new FilmExchange(bearingHabits.metalConductance(), bearingHabits.filmPosition());
        exchange.at(sump.density() * lubricant.heatCapacity(temperature) * flow);
        double pull = bearingHabits.metalConductance() * metalLead;
        double f = bearingHabits.filmPosition();
        BracketedNewton newton = new BracketedNewton(Math.min(0, metalLead), Double.POSITIVE_INFINITY, 1);
        double mu = sump.dynamicViscosity();
        for (int i = 0; i < 100 && f > 0; i++) {
            double excess = newton.point();
            mu = lubricant.at(temperature + excess).dynamicViscosity();
            double next = (pull + mu * friction + pressure * flow) / exchange.carried;
            if (Math.abs(next - excess) <= 1e-12 * (1 + Math.abs(excess)) || newton.isExhausted()) {
                break;
            }
            double ahead = lubricant.at(temperature + excess + 0.02).dynamicViscosity();
            newton.step(next - excess, friction * (ahead - mu) / 0.02 / exchange.carried - 1);
        }
        return mu;
    }
}
