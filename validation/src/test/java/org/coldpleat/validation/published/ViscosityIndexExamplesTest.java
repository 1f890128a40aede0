package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.coldpleat.model.oil.ViscosityIndex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Worked examples of ASTM D2270-10(2016) and indices on product sheets. */
class ViscosityIndexExamplesTest {
    @ParameterizedTest
    @CsvFileSource(
            resources = "/org/coldpleat/validation/oil/viscosity_index_examples.csv",
            useHeadersInDisplayName = true)
    void indexAgreesWithThePrintedOne(double kv40, double kv100, double expected, double tolerance, String source) {
        double index = ViscosityIndex.reported(kv40 * 1e-6, kv100 * 1e-6).orElseThrow();
        assertEquals(expected, index, tolerance, source);
    }
}
