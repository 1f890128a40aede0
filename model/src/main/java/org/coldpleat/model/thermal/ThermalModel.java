package org.coldpleat.model.thermal;

import java.util.Optional;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Heat of a starting engine in three masses, and a fourth if it has coolant: oil of the sump, metal that carries the heat of combustion, and what the
 * filter element holds. The oil takes the pump work, the bearing films' friction (less what they pass to the metal), heat
 * of the phase, and what the metal gives; the element is flushed by the oil that goes through the medium and so keeps its
 * temperature while it is bypassed.
 *
 * <p>Balances, h the enthalpy of the oil:
 * {@code m cp dTo/dt = Wpump + Wfilm - Wfilm,metal + Woil + UAmo (Tm - To) - UAoa (To - Ta) - Wel},
 * {@code Cm dTm/dt = Wmetal + Wfilm,metal - UAmo (Tm - To) - UAma (Tm - Ta)},
 * with coolant {@code Cc dTc/dt = xc Wmetal + UAmc (Tm - Tc) - UAoc (Tc - To) - s(Tc) UArad (Tc - Ta)}, and its terms in the
 * two others,
 * {@code (me cp + Cs) dTe/dt = Wel = rho q_flush [h(To) - h(Te)]}.
 *
 * @param oilMass oil in sump and galleries, without the element's [kg], above 0
 * @param metalHeatCapacity of the metal that warms with the oil [J/K], above 0
 * @param elementVolume oil in the can, 0 for no hold-up: the element then has the temperature of the oil [m3]
 * @param elementHeatCapacity solid parts of element and can that follow its oil [J/K], at least 0
 * @param bypassFlush share of the element's bypass flow that flushes the can as well [1], 0 to 1; 0 for a valve at the
 *     thread end, towards 1 for a dome valve fed through the annulus
 * @param metalToOil UAmo [W/K], at least 0
 * @param metalToOilSpeed pump speed at which it holds [rev/s]; it grows with the speed to the power 0.7. 0 for a constant
 * @param oilLoss UAoa from the oil to the air [W/K], at least 0
 * @param metalLoss UAma from the metal to the air [W/K], at least 0
 * @param ambient Ta [K], above 0
 * @param coolant coolant, if there is any; what combustion heats is then the coolant and the metal
 */
@Source("lumped heat balances, textbook; derived here")
@Validity("each mass well mixed; conductances constant; oil of the gallery counted with the sump; dissipation in the "
        + "filter (0.1 K per 157 kPa) counted in the sump")
public record ThermalModel(
        double oilMass,
        double metalHeatCapacity,
        double elementVolume,
        double elementHeatCapacity,
        double bypassFlush,
        double metalToOil,
        double metalToOilSpeed,
        double oilLoss,
        double metalLoss,
        double ambient,
        Optional<Coolant> coolant) {
    @Source("turbulent heat transfer goes with about the 0.7th to 0.8th power of the flow, textbook")
    private static final double SPEED_EXPONENT = 0.7;

    public ThermalModel {
        Require.positive("oilMass", oilMass, "kg");
        Require.positive("metalHeatCapacity", metalHeatCapacity, "J/K");
        Require.notNegative("elementVolume", elementVolume, "m3");
        Require.notNegative("elementHeatCapacity", elementHeatCapacity, "J/K");
        Require.within("bypassFlush", bypassFlush, 0, 1, "1");
        Require.notNegative("metalToOil", metalToOil, "W/K");
        Require.notNegative("metalToOilSpeed", metalToOilSpeed, "rev/s");
        Require.notNegative("oilLoss", oilLoss, "W/K");
        Require.notNegative("metalLoss", metalLoss, "W/K");
        Require.positive("ambient", ambient, "K");
        if (elementVolume == 0 && elementHeatCapacity > 0) {
            throw new IllegalArgumentException(
                    "elementHeatCapacity must be 0 J/K when elementVolume is 0 m3, was " + elementHeatCapacity);
        }
    }

    /** Without coolant, whatever the speed. */
    public ThermalModel(
            double oilMass,
            double metalHeatCapacity,
            double elementVolume,
            double elementHeatCapacity,
            double bypassFlush,
            double metalToOil,
            double oilLoss,
            double metalLoss,
            double ambient) {
        this(
                oilMass,
                metalHeatCapacity,
                elementVolume,
                elementHeatCapacity,
                bypassFlush,
                metalToOil,
                0,
                oilLoss,
                metalLoss,
                ambient,
                Optional.empty());
    }

    /** Oil and metal only; the element has the temperature of the oil. */
    public static ThermalModel twoMass(
            double oilMass,
            double metalHeatCapacity,
            double metalToOil,
            double oilLoss,
            double metalLoss,
            double ambient) {
        return new ThermalModel(oilMass, metalHeatCapacity, 0, 0, 0, metalToOil, oilLoss, metalLoss, ambient);
    }

    /** The same with another air temperature [K]. */
    public ThermalModel withAmbient(double temperature) {
        return new ThermalModel(
                oilMass,
                metalHeatCapacity,
                elementVolume,
                elementHeatCapacity,
                bypassFlush,
                metalToOil,
                metalToOilSpeed,
                oilLoss,
                metalLoss,
                temperature,
                coolant);
    }

    /** UAmo at a pump speed [rev/s], in [W/K]. */
    public double metalToOilAt(double speed) {
        return metalToOilSpeed == 0 ? metalToOil : metalToOil * Math.pow(speed / metalToOilSpeed, SPEED_EXPONENT);
    }

    /** Whether the element has a temperature of its own. */
    public boolean hasHoldUp() {
        return elementVolume > 0;
    }
}
