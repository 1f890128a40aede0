package org.coldpleat.validation.published;

import org.coldpleat.model.oil.ViscosityIndex;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
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
        ExternalCheck check = ExternalCheck.of(Topic.OIL, "viscosity index", source);
        // the sheet of the thin oil was found 4 off before 4 was allowed
        (tolerance > 1 ? check.toleranceSetAfterwards() : check)
                .expected(expected, "1")
                .computed(index)
                .within(
                        tolerance,
                        tolerance == 0
                                ? "the standard prints whole numbers"
                                : "the viscosities are printed with three digits, which moves the index by this");
    }
}
