package org.coldpleat.shared.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTextTest {
    // A few roundings of double arithmetic.
    private static final double ROUNDING = 1e-14;

    private static Measured read(String text, Kind kind) {
        QuantityReading reading = QuantityText.parse(text, kind, Provenance.MEASURED);
        assertTrue(reading.value().isPresent(), () -> text + ": " + reading.problem());
        return reading.value().get();
    }

    private static QuantityProblem problem(String text, Kind kind) {
        QuantityReading reading = QuantityText.parse(text, kind, Provenance.MEASURED);
        assertTrue(reading.problem().isPresent(), () -> text + ": " + reading.value());
        return reading.problem().get();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "2-3/8\" | LENGTH | 0.060325",
                "2 3/8 in | LENGTH | 0.060325",
                "2⅜ in | LENGTH | 0.060325",
                "3/8\" | LENGTH | 0.009525",
                "⅜\" | LENGTH | 0.009525",
                "0.055in | LENGTH | 0.001397",
                ".055 in | LENGTH | 0.001397",
                "1.45in | LENGTH | 0.03683",
                "60,5 mm | LENGTH | 0.0605",
                "1234,567 mm | LENGTH | 1.234567",
                "0,055 in | LENGTH | 0.001397",
                "31 thou | LENGTH | 7.874e-4",
                "5. mm | LENGTH | 0.005",
                "-10 °C | TEMPERATURE | 263.15",
                "−10 °C | TEMPERATURE | 263.15",
                "+ 10 °C | TEMPERATURE | 283.15",
                "41F | TEMPERATURE | 278.15",
                "-40 °F | TEMPERATURE | 233.15",
                "12 psi | PRESSURE_DIFFERENCE | 82737.08751801996",
                "5 gpm | FLOW_RATE | 3.15450982e-4",
                "2.5e8 Pa·s/m3 | OVERRIDE | 2.5e8",
                "2.5 x 10^8 1/m | MEDIUM_RESISTANCE | 2.5e8",
                "2.5·10⁸ 1/m | MEDIUM_RESISTANCE | 2.5e8",
                "1e7 1/m | MEDIUM_RESISTANCE | 1e7",
                "800 1/min | ROTATION | 13.333333333333334",
                "48 | COUNT | 48",
                "168 g/m2 | BASIS_WEIGHT | 0.168",
                "70 % | FRACTION | 0.7",
                "0.7 | FRACTION | 0.7",
                "104 | RATIO | 104",
            })
    void readsSingleNumbers(String text, Kind kind, double si) {
        Measured measured = read(text, kind);
        // The expected numbers are worked out by hand; twelve digits are written where the quotient has no end.
        assertEquals(si, measured.value(), 1e-11 * Math.abs(si));
        assertEquals(Spread.NONE, measured.spread());
        assertEquals(text, measured.written());
    }

    @ParameterizedTest
    @CsvSource({
        "36.8 mm ± 0.2 mm, LENGTH, 0.0368, 0.0002",
        "36.8 ± 0.2 mm, LENGTH, 0.0368, 0.0002",
        "36.8 mm ± 0.2, LENGTH, 0.0368, 0.0002",
        "36.8 mm +- 0.2 mm, LENGTH, 0.0368, 0.0002",
        "36.8 mm +/- 0.2 mm, LENGTH, 0.0368, 0.0002",
        "36.8 mm ± 1 %, LENGTH, 0.0368, 0.000368",
        "1 in ± 0.5 mm, LENGTH, 0.0254, 0.0005",
        "48 ± 1, COUNT, 48, 1",
        "50 ± 5 %, FRACTION, 0.5, 0.05",
        "50 % ± 5 %, FRACTION, 0.5, 0.05",
        "130 ± 10 %, RATIO, 130, 13",
        "40 °C ± 2 °C, TEMPERATURE, 313.15, 2",
        "40 ± 2 °C, TEMPERATURE, 313.15, 2",
        "40 °C ± 2 K, TEMPERATURE, 313.15, 2",
        "50 °F ± 9 °F, TEMPERATURE, 283.15, 5",
        "50 ± 9 °F, TEMPERATURE, 283.15, 5",
        "-10 °C ± 2 °C, TEMPERATURE, 263.15, 2",
    })
    void readsPlusMinusAsInterval(String text, Kind kind, double value, double halfWidth) {
        Measured measured = read(text, kind);
        assertEquals(value, measured.value(), ROUNDING * 1000 * value);
        assertEquals(halfWidth, measured.halfWidth(), ROUNDING * 1000 * halfWidth);
        assertEquals(Spread.RECTANGULAR, measured.spread());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "12 to 15 psi",
                "12-15 psi",
                "12 - 15 psi",
                "12–15 psi",
                "12...15 psi",
                "12…15 psi",
                "12 psi to 15 psi",
                "12psi-15psi"
            })
    void readsRangesAsIntervals(String text) {
        Measured measured = read(text, Kind.PRESSURE_DIFFERENCE);
        assertEquals(12 * 6894.757293168361, measured.low(), 1e-8);
        assertEquals(15 * 6894.757293168361, measured.high(), 1e-8);
        assertEquals(Spread.RECTANGULAR, measured.spread());
    }

    @Test
    void hyphenBeforeProperFractionMakesMixedFractionElseRange() {
        assertEquals(2.375 * 0.0254, read("2-3/8\"", Kind.LENGTH).value(), 1e-16);
        Measured mixedRange = read("2-3/8 to 2-1/2 in", Kind.LENGTH);
        assertEquals(2.375 * 0.0254, mixedRange.low(), 1e-15);
        assertEquals(2.5 * 0.0254, mixedRange.high(), 1e-15);
        Measured fractions = read("3/8-1/2 in", Kind.LENGTH);
        assertEquals(0.375 * 0.0254, fractions.low(), 1e-15);
        assertEquals("quantity.reversed", problem("2 - 3/8 in", Kind.LENGTH).code());
        assertEquals("quantity.reversed", problem("12-15/8 in", Kind.LENGTH).code());
        assertEquals("quantity.reversed", problem("2-3/3 in", Kind.LENGTH).code());
    }

    @Test
    void readsRangesOfNegativeNumbers() {
        Measured range = read("-10 to -5 °C", Kind.TEMPERATURE);
        assertEquals(263.15, range.low(), 1e-12);
        assertEquals(268.15, range.high(), 1e-12);
        assertEquals(265.65, read("-10--5 °C", Kind.TEMPERATURE).value(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[36.7, 36.9, 36.8] mm",
                "[36.7 mm, 36.9 mm, 36.8 mm]",
                "[36,7; 36,9; 36,8] mm",
                "[36,7, 36,9, 36,8] mm",
                "[36.7,36.9,36.8] mm"
            })
    void bandOfRepeatsIsTheStudentInterval(String text) {
        Measured mean = read(text, Kind.LENGTH);
        assertEquals(3, mean.repeats());
        assertEquals(Spread.NORMAL, mean.spread());
        assertEquals(36.8e-3, mean.value(), 1e-16);
        // s = 0.1 mm, n = 3, t = 4.303 (JCGM 100:2008, table G.2: 4.30): 4.303 * 0.1/sqrt(3) = 0.2484 mm.
        assertEquals(0.2484e-3, mean.high() - mean.value(), 5e-8);
    }

    @Test
    void bandOfTwoReadingsIsNineTimesTheStandardDeviation() {
        // n = 2: t/sqrt(2) = 12.706/1.4142 = 8.98 standard deviations.
        Measured mean = read("[10, 11] mm", Kind.LENGTH);
        double standardDeviation = 1e-3 / Math.sqrt(2);
        assertEquals(8.985, (mean.high() - mean.value()) / standardDeviation, 0.001);
    }

    @Test
    void marksOverrideTheDefaultProvenance() {
        assertEquals(
                Provenance.TYPICAL, read("55 to 85 % (typical)", Kind.FRACTION).provenance());
        assertEquals(Provenance.GUESSED, read("0.76 mm (guessed)", Kind.LENGTH).provenance());
        assertEquals(
                Provenance.PUBLISHED,
                read("[1.0, 1.1] mm (Published)", Kind.LENGTH).provenance());
        assertEquals(Provenance.MEASURED, read("1 oz(fl)", Kind.VOLUME).provenance());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "1,234 mm | LENGTH | quantity.thousandsOrDecimal",
                "123,456 mm | LENGTH | quantity.thousandsOrDecimal",
                "1,234.5 mm | LENGTH | quantity.thousands",
                "1.234,5 mm | LENGTH | quantity.thousands",
                "1 540 mm | LENGTH | quantity.thousands",
                "1'540 mm | LENGTH | quantity.thousands",
                "36.8 | LENGTH | quantity.unitMissing",
                "[36.8, 36.9] | LENGTH | quantity.unitMissing",
                "12-15 | PRESSURE_DIFFERENCE | quantity.unitMissing",
                "36.8 ± 1 % | LENGTH | quantity.unitMissing",
                "36.8 mn | LENGTH | quantity.unitUnknown.near",
                "36.8 furlong | LENGTH | quantity.unitUnknown",
                "104 mPa·s | KINEMATIC_VISCOSITY | quantity.unitOfOtherKind",
                "104 cSt | DYNAMIC_VISCOSITY | quantity.unitOfOtherKind",
                "12 mm | PRESSURE_DIFFERENCE | quantity.unitOfOtherKind",
                "12 psig | PRESSURE_DIFFERENCE | quantity.unitOfOtherKind",
                "48 mm | COUNT | quantity.unitUnwanted",
                "48.5 | COUNT | quantity.whole",
                "NaN mm | LENGTH | quantity.notFinite",
                "-Infinity mm | LENGTH | quantity.notFinite",
                "1e999 mm | LENGTH | quantity.notFinite",
                "3/0 in | LENGTH | quantity.notFinite",
                "mm | LENGTH | quantity.number",
                "about 5 mm | LENGTH | quantity.number",
                "<5 mm | LENGTH | quantity.number",
                "1.2.3 mm | LENGTH | quantity.thousands",
                "36.8 mm wide | LENGTH | quantity.trailing",
                "36.8 mm (wet) | LENGTH | quantity.mark",
                "15 to 12 psi | PRESSURE_DIFFERENCE | quantity.reversed",
                "36.8 mm ± -0.2 mm | LENGTH | quantity.spreadNegative",
                "36.8 mm ± | LENGTH | quantity.number",
                "-300 °C | TEMPERATURE | quantity.absoluteZero",
                "-500 °F | TEMPERATURE | quantity.absoluteZero",
                "-1 K | TEMPERATURE | quantity.absoluteZero",
                "1 ± 2 K | TEMPERATURE | quantity.absoluteZero",
                "40 °C ± 5 % | TEMPERATURE | quantity.spreadPercentOfTemperature",
                "0.55 ± 5 % | FRACTION | quantity.spreadAmbiguous",
                "[36,37] mm | LENGTH | quantity.listComma",
                "[0,8 mm] | LENGTH | quantity.listComma",
                "[36.7, , 36.9] mm | LENGTH | quantity.listGap",
                "[36.7, 36.9 mm | LENGTH | quantity.listOpen",
                "[36.7, 36.9] | LENGTH | quantity.unitMissing",
                "[] mm | LENGTH | quantity.listGap",
                "(typical) | LENGTH | quantity.empty",
                "5' 3\" | LENGTH | quantity.trailing",
                "5 mPa | PRESSURE_DIFFERENCE | quantity.unitUnknown.near",
            })
    void saysWhyTextIsNotUnderstood(String text, Kind kind, String code) {
        assertEquals(code, problem(text, kind).code(), () -> problem(text, kind).toString());
    }

    @Test
    void missingUnitListsWhatIsAllowedAndGuessesNothing() {
        QuantityProblem missing = problem("12", Kind.PRESSURE_DIFFERENCE);
        assertTrue(missing.values().get(2).contains("psi"));
        assertTrue(missing.values().get(2).contains("kPa"));
    }

    @Test
    void wrongKindNamesBothKinds() {
        QuantityProblem wrong = problem("104 mPa·s", Kind.KINEMATIC_VISCOSITY);
        assertEquals("dynamic viscosity", wrong.values().get(1));
        assertEquals("kinematic viscosity", wrong.values().get(2));
    }

    @Test
    void unknownUnitOfACountIsToldThatABareNumberWillDo() {
        QuantityProblem unknown = problem("48 furlong", Kind.COUNT);
        assertEquals("quantity.unitUnknown", unknown.code());
        assertEquals("1", unknown.values().get(2));
    }

    @Test
    void rangeWhoseEndsAreEqualIsOneValue() {
        assertEquals(Spread.NONE, read("5 to 5 mm", Kind.LENGTH).spread());
        assertEquals(0.005, read("5 to 5 mm", Kind.LENGTH).value(), 1e-17);
    }

    @Test
    void plusMinusNothingIsNoSpread() {
        assertEquals(Spread.NONE, read("36.8 mm ± 0 mm", Kind.LENGTH).spread());
    }

    @Test
    void oneReadingInBracketsIsOneValue() {
        Measured one = read("[36] mm", Kind.LENGTH);
        assertEquals(0.036, one.value(), 1e-17);
        assertEquals(Spread.NONE, one.spread());
        assertEquals(1, one.repeats());
    }

    @Test
    void commaSeparatesReadingsAsSoonAsOneOfThemHasADecimalPoint() {
        Measured mean = read("[36.7,37] mm", Kind.LENGTH);
        assertEquals(2, mean.repeats());
        assertEquals(36.85e-3, mean.value(), 1e-16);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.5 to 3", "1 to 2.5", "2.5 ± 1", "[1, 2.5]"})
    void thingsAreCountedInWholeNumbersInEveryWayOfWriting(String text) {
        assertEquals("quantity.whole", problem(text, Kind.COUNT).code());
    }

    @Test
    void shareOfOneLeavesOpenWhatItsPercentMean() {
        assertEquals(
                "quantity.spreadAmbiguous", problem("1 ± 5 %", Kind.FRACTION).code());
    }

    @Test
    void absoluteZeroItselfIsATemperature() {
        assertEquals(0, read("0 K", Kind.TEMPERATURE).value());
        assertEquals(0, read("1 ± 1 K", Kind.TEMPERATURE).low());
    }

    @Test
    void raisedDigitsAfterTenMayBeSeveral() {
        assertEquals(2.5e10, read("2.5·10¹⁰ 1/m", Kind.MEDIUM_RESISTANCE).value(), 1);
    }

    @Test
    void everyFractionSignIsRead() {
        double[] value = {1.5, 1.25, 1.75, 1.125, 1.375, 1.625, 1.875};
        for (int i = 0; i < value.length; i++) {
            String text = "1" + "½¼¾⅛⅜⅝⅞".charAt(i) + " in";
            assertEquals(value[i] * 0.0254, read(text, Kind.LENGTH).value(), 1e-16, text);
        }
    }

    @Test
    void neverThrowsForAnyText() {
        Random random = new Random(7);
        List<Kind> kinds = List.of(Kind.values());
        String alphabet = "0123456789.,-+±/%[]();' \"mpsiKCF°e–to²µ½⁸xNaN";
        for (int i = 0; i < 50_000; i++) {
            StringBuilder text = new StringBuilder();
            int length = random.nextInt(14);
            for (int k = 0; k < length; k++) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            Kind kind = kinds.get(random.nextInt(kinds.size()));
            QuantityReading reading = QuantityText.parse(text.toString(), kind, Provenance.MEASURED);
            assertTrue(reading.value().isPresent() != reading.problem().isPresent());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"150 kPa x/÷ 1.9", "150 kPa x/ 1.9", "150 kPa × / ÷ 1.9", "150 kPa x÷1.9 (typical)"})
    void factorIsABandOfNinetyFiveInAHundred(String text) {
        Measured value = read(text, Kind.GAUGE_PRESSURE);
        assertEquals(150e3, value.value(), 1e-9);
        assertEquals(Spread.LOG_NORMAL, value.spread());
        assertEquals(150e3 * 1.9, value.high(), 1e-6);
        assertEquals(150e3 / 1.9, value.low(), 1e-6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"150 kPa x/÷ 0.9", "150 kPa x/÷ 1.9 kPa", "-150 kPa x/÷ 2"})
    void factorThatIsNoneIsSaidToBeNone(String text) {
        assertEquals("quantity.factor", problem(text, Kind.GAUGE_PRESSURE).code());
    }

    @Test
    void temperaturesHaveNoFactor() {
        assertEquals("quantity.factor", problem("10 °C x/÷ 2", Kind.TEMPERATURE).code());
    }
}
