package org.coldpleat.model.oil.grade;

import org.coldpleat.shared.table.CsvTable;

/**
 * Typical new oil of a grade, for the user who knows no more than the grade.
 *
 * @param grade label, such as {@code 5W-30}
 * @param viscosity40 kinematic viscosity at 40 degrees C [m2/s]
 * @param viscosity100 kinematic viscosity at 100 degrees C [m2/s]
 * @param density [kg/m3] at {@code densityTemperature}
 * @param densityTemperature [K]
 * @param lnSigma standard uncertainty of ln(viscosity) between oils of the grade from 40 to 100 degrees C [1]
 * @param source where the row comes from
 */
public record TypicalOil(
        String grade,
        double viscosity40,
        double viscosity100,
        double density,
        double densityTemperature,
        double lnSigma,
        String source) {
    static TypicalOil of(CsvTable.Row row) {
        return new TypicalOil(
                row.text("grade"),
                row.number("kv40") / 1e6,
                row.number("kv100") / 1e6,
                row.number("density"),
                row.number("density_temperature") + 273.15,
                row.number("ln_sigma"),
                row.text("source"));
    }
}
