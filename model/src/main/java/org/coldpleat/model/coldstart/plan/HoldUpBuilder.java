package org.coldpleat.model.coldstart.plan;

import java.util.Optional;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/** Reads what a filter holds: oil by the room in its can, sheet steel by its mass. */
final class HoldUpBuilder {
    /** Specific heat of the sheet steel of can and element [J/(kg K)]. */
    @Source("iron at 25 degrees C: 449 J/(kg K); CRC Handbook of Chemistry and Physics")
    private static final double STEEL_HEAT = 449;

    /** Mass of a spun-on filter for each volume of room in its can [kg/m3]. */
    @Source("common practice, no source: cans of 0.2 to 1 L")
    private static final double[] CAN_MASS = {700, 1300};

    /** Mass of element and housing for each volume of the element where no can is described [kg/m3]. */
    @Source("common practice, no source: from a bare cartridge to one in a steel bowl")
    private static final double[] CARTRIDGE_MASS = {200, 1300};

    private HoldUpBuilder() {}

    /**
     * What a candidate holds.
     *
     * @param oilShare share of the room in the can that oil fills [1]
     * @param inputs of that candidate
     */
    static HoldUp of(Section sheet, double oilShare, Inputs inputs) {
        Optional<Section> can = sheet.section("outside").filter(one -> one.has("diameter") && one.has("length"));
        double room = can.map(HoldUpBuilder::inCan).orElseGet(() -> aroundElement(sheet));
        if (room == 0) {
            return new HoldUp(0, 0);
        }
        return new HoldUp(
                oilShare * room, STEEL_HEAT * mass(sheet, can.isPresent() ? CAN_MASS : CARTRIDGE_MASS, room, inputs));
    }

    private static double mass(Section sheet, double[] perVolume, double room, Inputs inputs) {
        Optional<Section> stated = sheet.section("outside").filter(outside -> outside.has("mass"));
        if (stated.isPresent()) {
            return inputs.value(stated.get(), "mass").orElseThrow();
        }
        Measured typical = Measured.between(Kind.MASS, perVolume[0] * room, perVolume[1] * room, Provenance.TYPICAL);
        return inputs.assumed(sheet.pathOf("outside") + ".mass", typical, "assumption.typicalFilterMass")
                .value();
    }

    private static double inCan(Section can) {
        double wall = value(can, "wallThickness");
        double bore = can.has("insideDiameter") ? value(can, "insideDiameter") : value(can, "diameter") - 2 * wall;
        return cylinder(bore, value(can, "length") - 2 * wall);
    }

    private static double aroundElement(Section sheet) {
        return sheet.section("element")
                .map(element -> cylinder(value(element, "outsideDiameter"), value(element, "length")))
                .orElse(0.0);
    }

    private static double cylinder(double diameter, double length) {
        return Math.max(0, Math.PI / 4 * diameter * diameter * length);
    }

    private static double value(Section section, String key) {
        return section.quantity(key).map(Measured::value).orElse(0.0);
    }
}
