package org.coldpleat.model.oil;

/** Why no oil could be made from what was stated. The code is the key of the text in the notice bundle. */
public enum OilFault {
    /** Fewer than two low-shear points, no index to make the second of, and not grade only. */
    TOO_FEW_POINTS("oil.fault.tooFewPoints"),
    /** Two points less than 1 K apart. */
    SAME_TEMPERATURE("oil.fault.sameTemperature"),
    /** A warmer point is not thinner. */
    NOT_FALLING("oil.fault.notFalling"),
    /** A point outside -60 to 200 degrees C. */
    TEMPERATURE_OUT_OF_RANGE("oil.fault.temperatureOutOfRange"),
    /** A kinematic viscosity outside 0.21 mm2/s to 20 m2/s. */
    VISCOSITY_OUT_OF_RANGE("oil.fault.viscosityOutOfRange"),
    /** No sound Vogel curve goes through the three points: the cold one does not fit the others. */
    COLD_POINT_UNFIT("oil.fault.coldPointUnfit"),
    /** One point and a viscosity index that no falling line through it has. */
    INDEX_UNFIT("oil.fault.indexUnfit"),
    /** No density stated and no grade to take a typical one from. */
    DENSITY_MISSING("oil.fault.densityMissing"),
    /** A density that means less than 800 or more than 1164 kg/m3 at 15 degrees C. */
    DENSITY_OUT_OF_RANGE("oil.fault.densityOutOfRange"),
    /** No typical oil of this grade on file. */
    NO_TYPICAL_OIL("oil.fault.noTypicalOil"),
    /** Neither points nor grade. */
    NOTHING_KNOWN("oil.fault.nothingKnown");

    private final String code;

    OilFault(String code) {
        this.code = code;
    }

    /** Key of the text in the notice bundle. */
    public String code() {
        return code;
    }
}
