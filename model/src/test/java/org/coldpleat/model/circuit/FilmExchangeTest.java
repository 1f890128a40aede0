package org.coldpleat.model.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FilmExchangeTest {
    private static FilmExchange at(double conductance, double position, double capacityFlow) {
        FilmExchange exchange = new FilmExchange(conductance, position);
        exchange.at(capacityFlow);
        return exchange;
    }

    @Test
    void filmMovesFromTheMiddleTowardsTheOutletAsTheMetalTakesMore() {
        // f = 1/(1 - exp(-N)) - 1/N
        double[] n = {0.1, 1, 3, 10};
        double[] position = {0.50833, 0.58198, 0.71906, 0.90005};
        for (int i = 0; i < n.length; i++) {
            assertEquals(position[i], 1 / at(n[i], 0.5, 1).outlet, 1e-5);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-9, 0.9e-3, 1.1e-3, 0.5, 8, 300})
    void slopeIsThatOfTheCurve(double conductance) {
        for (double position : new double[] {0.5, 0.8, 1}) {
            double h = 1e-5;
            double numeric =
                    (at(conductance, position, 1 + h).carried - at(conductance, position, 1 - h).carried) / (2 * h);
            assertEquals(numeric, at(conductance, position, 1).slope, 1e-8);
        }
    }

    @Test
    void seriesMeetTheClosedForms() {
        FilmExchange below = at(0.9999e-3, 0.5, 1);
        FilmExchange above = at(1.0001e-3, 0.5, 1);
        assertEquals(below.carried, above.carried - 2e-7 * below.slope / 3, 1e-10);
        assertEquals(below.outlet, above.outlet, 1e-7);
    }

    @Test
    void filmAtRestIsHeldByTheMetal() {
        FilmExchange rest = at(40, 0.5, 0);
        assertEquals(40, rest.carried);
        assertEquals(40, at(40, 0.5, 1e-9).carried, 1e-8);
    }
}
