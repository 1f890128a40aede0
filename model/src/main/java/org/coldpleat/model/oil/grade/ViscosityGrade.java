package org.coldpleat.model.oil.grade;

import java.util.Optional;

/** A grade as the trade writes it: of engine oils by SAE J300, of industrial oils by ISO 3448. */
public sealed interface ViscosityGrade permits SaeGrade, IsoGrade {
    /** The grade as the trade writes it: {@code 5W-30}, {@code 30}, {@code ISO VG 46}. */
    String label();

    /** True if the grade has a winter and a hot half: such an oil has viscosity improver. */
    boolean isMultigrade();

    /** Reads a grade; empty if neither standard has it. */
    static Optional<ViscosityGrade> parse(String text) {
        Optional<IsoGrade> iso = IsoGrade.parse(text);
        return iso.isPresent() ? Optional.of(iso.get()) : SaeGrade.parse(text).map(ViscosityGrade.class::cast);
    }
}
