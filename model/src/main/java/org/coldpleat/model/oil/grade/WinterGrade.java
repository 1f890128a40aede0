package org.coldpleat.model.oil.grade;

import org.coldpleat.shared.table.CsvTable;

/**
 * One winter grade of SAE J300.
 *
 * @param name such as {@code 5W}
 * @param crankingLimit greatest cranking viscosity (CCS, high shear) [Pa s]
 * @param crankingTemperature its temperature [K]
 * @param pumpingLimit greatest pumping viscosity (MRV, low shear, no yield stress) [Pa s]
 * @param pumpingTemperature its temperature [K]
 * @param minViscosity100 least kinematic viscosity at 100 degrees C [m2/s]
 */
public record WinterGrade(
        String name,
        double crankingLimit,
        double crankingTemperature,
        double pumpingLimit,
        double pumpingTemperature,
        double minViscosity100) {
    static WinterGrade of(CsvTable.Row row) {
        return new WinterGrade(
                row.text("grade"),
                row.number("ccs_max") / 1000,
                row.number("ccs_temperature") + 273.15,
                row.number("mrv_max") / 1000,
                row.number("mrv_temperature") + 273.15,
                row.number("kv100_min") / 1e6);
    }

    /** True for the coldest grade, 0W: an oil may pass its tests with ease and still be called no colder. */
    public boolean isColdest() {
        return name.equals("0W");
    }

    /** True for 0W, 5W and 10W, which allow grade 40 a lower high-shear viscosity. */
    boolean isColdGrade() {
        return name.equals("0W") || name.equals("5W") || name.equals("10W");
    }
}
