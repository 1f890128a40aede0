package org.coldpleat.shared.quantity;

import java.util.List;

/** Carries a problem out of the depths of the quantity grammar; never leaves this package. */
final class Misread extends Exception {
    private final transient QuantityProblem problem;

    Misread(String code, String... values) {
        super(code, null, false, false);
        problem = new QuantityProblem(code, List.of(values));
    }

    QuantityProblem problem() {
        return problem;
    }
}
