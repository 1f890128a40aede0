package org.coldpleat.shared.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class UnitsTest {
    // The table prints seven significant digits: at most 5 units in the eighth, 5e-7 of a value beginning with 1.
    private static final double SEVEN_DIGITS = 5.1e-7;

    record Row(Kind kind, String text, double si) {}

    static List<Row> rows() throws IOException {
        List<Row> rows = new ArrayList<>();
        try (InputStream in = UnitsTest.class.getResourceAsStream("units.csv")) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)) {
                if (!line.isBlank() && !line.startsWith("#")) {
                    String[] cell = line.split(";", -1);
                    rows.add(new Row(Kind.valueOf(cell[0]), cell[1], Double.parseDouble(cell[2])));
                }
            }
        }
        return rows;
    }

    @ParameterizedTest
    @MethodSource("rows")
    void unitHasThePublishedSize(Row row) {
        QuantityReading reading = QuantityText.parse(row.text(), row.kind(), Provenance.MEASURED);
        assertTrue(reading.value().isPresent(), () -> row + " " + reading.problem());
        assertEquals(row.si(), reading.value().get().value(), SEVEN_DIGITS * row.si());
    }

    @Test
    void tableOfPublishedSizesLeavesNoUnitOut() throws IOException {
        Set<String> covered = new HashSet<>();
        for (Row row : rows()) {
            String unit = row.text().replaceFirst("^[0-9]+ ?", "");
            covered.add(row.kind() + " "
                    + Units.find(row.kind(), unit).orElseThrow().symbol());
        }
        for (Kind kind : Kind.values()) {
            for (Unit unit : Units.of(kind)) {
                assertTrue(covered.contains(kind + " " + unit.symbol()), () -> kind + " " + unit.symbol());
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void firstUnitIsTheSiUnit(Kind kind) {
        Unit first = Units.of(kind).get(0);
        assertEquals(1, first.factor());
        assertEquals(0, first.offset());
        assertEquals(Units.key(kind.siUnit()), Units.key(first.symbol()));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void goingThereAndBackKeepsTheNumber(Kind kind) {
        for (Unit unit : Units.of(kind)) {
            // Two roundings of double arithmetic, and the offset of a temperature scale near 300 K.
            assertEquals(123.4, unit.fromSi(unit.toSi(123.4)), 1e-12 * 300, unit.symbol());
            assertEquals(7.5, unit.differenceFromSi(unit.differenceToSi(7.5)), 1e-14, unit.symbol());
        }
    }

    @Test
    void milliAndMegaStayApart() {
        assertTrue(Units.find(Kind.PRESSURE_DIFFERENCE, "MPa").isPresent());
        assertTrue(Units.find(Kind.PRESSURE_DIFFERENCE, "mPa").isEmpty());
        assertTrue(Units.find(Kind.DYNAMIC_VISCOSITY, "MPa s").isEmpty());
        assertTrue(Units.find(Kind.LENGTH, "Mm").isEmpty());
    }

    @Test
    void unitThatIsAskedForAndMissingIsNamed() {
        IllegalArgumentException thrown =
                assertThrows(IllegalArgumentException.class, () -> Units.require(Kind.LENGTH, "furlong"));
        assertTrue(thrown.getMessage().contains("furlong"));
    }

    @Test
    void bareOneIsNotOfferedAsAUnit() {
        assertEquals(List.of("%"), Units.symbols(Kind.FRACTION));
        assertEquals(List.of(), Units.symbols(Kind.COUNT));
    }
}
