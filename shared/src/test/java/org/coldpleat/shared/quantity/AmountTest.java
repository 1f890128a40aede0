package org.coldpleat.shared.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where an amount changes its unit or its digits, metric. */
class AmountTest {
    @Test
    void eachWayToStateAnAmountHasItsOwnLook() {
        assertEquals("18.0 K", Amount.difference(18).text());
        assertEquals("924 cm² (143 in²)", Amount.area(0.0924).text());
        assertEquals("15 g", Amount.mass(0.015).text());
        assertEquals("4.52 L", Amount.volume(0.00452).text());
        assertEquals("42 s", Amount.duration(42.4).text());
        assertEquals("2 h", Amount.hours(7200).text());
        assertEquals("1200 h", Amount.roughHours(4.44e6).text());
        assertEquals("46 %", Amount.percent(0.456).text());
        assertEquals("+12 %", Amount.change(0.12).text());
        assertEquals("4.2", Amount.ratio(4.23).text());
        assertEquals("2.50e7 1/m", Amount.resistance(2.5e7).text());
        assertEquals("800 rpm", Amount.speed(800.0 / 60).text());
        assertEquals(Kind.ROTATION, Amount.speed(1).kind());
        assertEquals("3", Shown.count(3).text());
        assertEquals(List.of("Moss", "Slate"), Shown.texts(Shown.words(List.of("Moss", "Slate")), UnitSystem.SI));
    }

    @ParameterizedTest
    @CsvSource({
        "VOLUME, 0, 0.00 L",
        "VOLUME, 99e-6, 99 mL",
        "VOLUME, 1e-4, 0.10 L",
        "VOLUME, 9.9e-3, 9.90 L",
        "VOLUME, 0.01, 10.0 L",
        "VOLUME, -0.0125, -12.5 L",
        "DURATION, 9.94, 9.9 s",
        "DURATION, 9.95, 10 s",
        "DURATION, 59.4, 59 s",
        "DURATION, 59.5, 1 min 00 s",
        "DURATION, 3599.4, 59 min 59 s",
        "DURATION, 3599.5, 1 h 00 min",
        "DURATION, 7319, 2 h 02 min",
        "ROUGH_HOURS, 0, 0 h",
        "ROUGH_HOURS, 35640, 9.9 h",
        "ROUGH_HOURS, 36000, 10 h",
        "ROUGH_HOURS, 446400, 120 h",
        "SHARP_PRESSURE, 999, 999 Pa",
        "SHARP_PRESSURE, 1000, 1 kPa",
        "SHARP_PRESSURE, -1540, -1.54 kPa",
        "PERCENT, 0, 0 %",
        "PERCENT, 0.0099, 0.99 %",
        "PERCENT, 6e-5, 0.01 %",
        "PERCENT, 4e-5, <0.01 %",
        "PERCENT, 0.01, 1 %",
        "PERCENT, -0.005, -1 %",
        "CHANGE, 0.0049, 0 %",
        "CHANGE, -0.0049, 0 %",
        "CHANGE, 0.005, +1 %",
        "CHANGE, -0.12, -12 %",
        "TEMPERATURE, 283.15, 10 °C (50 °F)",
        "PLAIN_TEMPERATURE, 283.15, 10 °C",
        "PLAIN_TEMPERATURE, 283.65, 10.5 °C",
        "DIFFERENCE, -0.01, 0.0 K",
        "PLAIN_RATIO, 12345, 12300",
    })
    void unitAndDigitsChangeWithTheSize(Look look, double value, String metric) {
        assertEquals(metric, new Amount(look, value).text());
    }

    @ParameterizedTest
    @CsvSource({
        "DIFFERENCE, 4.99, 9.0 °F",
        "DIFFERENCE, 5, 9 °F",
        "SHARP_PRESSURE, 500, 0.0725 psi",
        "VOLUME, 9e-5, 3.04 fl oz",
        "VOLUME, 2e-4, 0.21 qt"
    })
    void amountsOfTheUsTradeChangeTheirDigitsInTheirOwnPlaces(Look look, double value, String us) {
        assertEquals(us, new Amount(look, value).text(UnitSystem.US));
    }

    @ParameterizedTest
    @CsvSource({
        // the band to two digits, the number to the same place
        "TEMPERATURE, 273.94, 0, 0.8 °C (33 °F)",
        "TEMPERATURE, 273.94, 1.4, 0.8 °C (33 °F)",
        "TEMPERATURE, 273.94, 14.2, 1 °C (33 °F)",
        "TEMPERATURE, 268.15, 1.4, -5.0 °C (23 °F)",
        "TEMPERATURE, 273.35, 140, 0 °C (30 °F)",
        "VOLUME, 4.52e-3, 0.04e-3, 4.52 L",
        "VOLUME, 4.52e-3, 2.4e-3, 4.5 L",
        "VOLUME, 4.52e-3, 12e-3, 5 L",
        "VOLUME, 152e-3, 130e-3, 150 L",
        "DURATION, 5.26, 1.3, 5.3 s",
        "DURATION, 5.26, 15, 5 s",
        "DURATION, 332, 94, 5 min 32 s",
        "DURATION, 332, 210, 5 min 30 s",
        "DURATION, 1336, 1500, 22 min",
        "DURATION, 8000, 1500, 2 h 13 min",
        "DURATION, 8000, 20000, 2 h 10 min",
        "ROUGH_HOURS, 446400, 360000, 120 h",
        "ROUGH_HOURS, 446400, 3600000, 100 h",
        "PLAIN_RATIO, 12345, 2, 12300",
        "PLAIN_RATIO, 1.2345, 0.12, 1.23",
        "PLAIN_RATIO, 1.2345, 2, 1.2",
        "CHANGE, 0.126, 4, +10 %",
    })
    void aBandTakesDigitsAwayAndAddsNone(Look look, double value, double band, String metric) {
        assertEquals(metric, new Amount(look, value).withBand(band).text());
    }

    @Test
    void theFirstDigitOfASizeStaysWhateverItsBand() {
        assertEquals("0.03 L", Amount.volume(3e-5).withBand(1).text());
        assertEquals("0.0 s", Amount.duration(0).withBand(1.6).text());
        assertThrows(IllegalArgumentException.class, () -> Amount.volume(1).withBand(-1));
    }

    @Test
    void whatIsNoNumberIsReadAsSuch() {
        assertEquals("Infinity h", Amount.roughHours(Double.POSITIVE_INFINITY).text());
        assertEquals("NaN", new Amount(Look.PLAIN_RATIO, Double.NaN).text());
    }
}
