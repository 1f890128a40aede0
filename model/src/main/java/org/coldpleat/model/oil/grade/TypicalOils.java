package org.coldpleat.model.oil.grade;

import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.table.CsvTable;

/** Typical oils by grade, each row with its source and its band. */
public final class TypicalOils {
    private static final List<TypicalOil> ROWS = CsvTable.read(TypicalOils.class, "typical_oils.csv", TypicalOil::of);

    private TypicalOils() {}

    /** All rows, in the order of the table. */
    public static List<TypicalOil> all() {
        return ROWS;
    }

    /** The typical oil of a grade, if the table has it. */
    public static Optional<TypicalOil> of(ViscosityGrade grade) {
        return ROWS.stream().filter(row -> row.grade().equals(grade.label())).findFirst();
    }
}
