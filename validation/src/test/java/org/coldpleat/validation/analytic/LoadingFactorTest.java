package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.coldpleat.model.circuit.ClosedForms;
import org.coldpleat.model.loading.LoadingFactor;
import org.junit.jupiter.api.Test;

/** Loading factor until bypass, derived here: checks of arithmetic. */
class LoadingFactorTest {
    @Test
    void hotFactorIsOpeningPressureOverCleanDrop() {
        // 157/14 = 11.2, rounded to three digits
        assertEquals(11.2, LoadingFactor.hot(157e3, 14e3), 0.05);
    }

    @Test
    void coldFactorIsCriticalOverCleanRatio() {
        // 0.4715/0.156 = 3.02, rounded to two digits
        assertEquals(3.0, LoadingFactor.cold(0.4715, 0.156), 0.05);
        // the critical ratio of a 157 kPa valve under a 490 kPa relief is 157/333 = 0.4715
        assertEquals(0.4715, ClosedForms.criticalRatio(157e3, 490e3), 5e-5);
    }
}
