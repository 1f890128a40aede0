package org.coldpleat.model.oil.grade;

import org.coldpleat.shared.table.CsvTable;

/**
 * One hot grade of SAE J300.
 *
 * @param name such as {@code 30}
 * @param minViscosity100 least kinematic viscosity at 100 degrees C [m2/s], inclusive
 * @param limitViscosity100 limit of the kinematic viscosity at 100 degrees C [m2/s], exclusive
 * @param minHighShearCold least high-shear viscosity at 150 degrees C of oils that are 0W, 5W or 10W too [Pa s]
 * @param minHighShear least high-shear viscosity at 150 degrees C of all others [Pa s]
 */
public record HotGrade(
        String name, double minViscosity100, double limitViscosity100, double minHighShearCold, double minHighShear) {
    static HotGrade of(CsvTable.Row row) {
        return new HotGrade(
                row.text("grade"),
                row.number("kv100_min") / 1e6,
                row.number("kv100_below") / 1e6,
                row.number("hths_min_cold_grades") / 1000,
                row.number("hths_min") / 1000);
    }

    /** True if a kinematic viscosity at 100 degrees C [m2/s] lies in the range of the grade. */
    public boolean holds(double viscosity100) {
        return viscosity100 >= minViscosity100 && viscosity100 < limitViscosity100;
    }
}
