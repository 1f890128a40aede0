package org.coldpleat.validation.analytic;

import org.coldpleat.model.circuit.ClosedForms;
import org.coldpleat.model.loading.LoadingFactor;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** Loading factor until bypass, derived here: checks of arithmetic. */
class LoadingFactorTest {
    private static final String SOURCE = "derived here";

    @Test
    void hotFactorIsOpeningPressureOverCleanDrop() {
        // 157/14 = 11.2, rounded to three digits
        check("hot loading factor")
                .expected(11.2, "1")
                .computed(LoadingFactor.hot(157e3, 14e3))
                .within(0.05, "half the last digit");
    }

    @Test
    void coldFactorIsCriticalOverCleanRatio() {
        // 0.4715/0.156 = 3.02, rounded to two digits
        check("cold loading factor")
                .expected(3.0, "1")
                .computed(LoadingFactor.cold(0.4715, 0.156))
                .within(0.05, "half the last digit");
        // the critical ratio of a 157 kPa valve under a 490 kPa relief is 157/333 = 0.4715
        check("critical ratio of a 157 kPa valve under a 490 kPa relief")
                .expected(0.4715, "1")
                .computed(ClosedForms.criticalRatio(157e3, 490e3))
                .within(5e-5, "half the last digit");
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.LOADING, quantity, SOURCE);
    }
}
