package org.coldpleat.model.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.coldpleat.model.medium.AirPermeability;
import org.coldpleat.model.medium.AirViscosity;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/** Medium resistance from a test with air on a flat sheet. */
public final class AirTestEvidence {
    /** Standard uncertainty of ln R from carrying a resistance over from air to oil [1]. */
    @Source(
            "common practice, no source; Cunningham, Broughton and Kraybill found that one constant did not fit air, water"
                    + " and oils in the same felt")
    public static final double TRANSFER_LN_SIGMA = 0.10;

    private static final double ATMOSPHERIC_PRESSURE = 101325;
    private static final double GAS_CONSTANT = 287.053;

    private AirTestEvidence() {}

    /**
     * Evidence from one face velocity at one pressure drop.
     *
     * @param label which test
     * @param pressureDrop [Pa]
     * @param faceVelocity [m/s]
     * @param temperature of the air [K]
     * @param meanFlowPore mean flow pore diameter for the slip correction [m]; empty for none
     * @param thickness for the inertia correction [m]; empty for none
     */
    @Validity("atmospheric pressure; corrections below about 15 %")
    public static ResistanceEvidence of(
            String label,
            Measured pressureDrop,
            Measured faceVelocity,
            double temperature,
            OptionalDouble meanFlowPore,
            OptionalDouble thickness) {
        double viscosity = AirViscosity.at(temperature);
        double apparent = AirPermeability.resistance(pressureDrop.value(), viscosity, faceVelocity.value());
        List<Ingredient> ingredients = new ArrayList<>();
        ingredients.add(ResistanceEvidence.ingredient("pressureDrop", pressureDrop));
        ingredients.add(ResistanceEvidence.ingredient("faceVelocity", faceVelocity));
        ingredients.add(new Ingredient("airViscosity", Kind.DYNAMIC_VISCOSITY, viscosity));
        ingredients.add(new Ingredient("apparentResistance", Kind.MEDIUM_RESISTANCE, apparent));
        double resistance = apparent;
        double correction = 0;
        if (thickness.isPresent()) {
            double density = ATMOSPHERIC_PRESSURE / (GAS_CONSTANT * temperature);
            resistance = AirPermeability.withoutInertia(
                    resistance,
                    thickness.getAsDouble(),
                    faceVelocity.value(),
                    density,
                    viscosity,
                    AirPermeability.WARD_COEFFICIENT / 2);
            // Half of an upper estimate, with the other half as its standard uncertainty
            correction = Math.log(apparent / resistance);
            ingredients.add(ResistanceEvidence.ratio("inertiaCorrection", resistance / apparent));
        }
        if (meanFlowPore.isPresent()) {
            double path = AirViscosity.meanFreePath(temperature, ATMOSPHERIC_PRESSURE);
            double slip = AirPermeability.withoutSlip(1, path, meanFlowPore.getAsDouble() / 2);
            resistance *= slip;
            ingredients.add(ResistanceEvidence.ratio("slipCorrection", slip));
        }
        double reading =
                Math.hypot(ResistanceEvidence.relative(pressureDrop), ResistanceEvidence.relative(faceVelocity));
        double lnSigma = Math.sqrt(reading * reading + TRANSFER_LN_SIGMA * TRANSFER_LN_SIGMA + correction * correction);
        return new ResistanceEvidence(EvidenceKind.AIR_TEST, label, resistance, lnSigma, ingredients);
    }
}
