package org.coldpleat.model.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Lubricant;
import org.junit.jupiter.api.Test;

class BearingFilmTest {
    private static final double SUMP = 300;
    private static final double SPEED = 20;
    private static final double SIDE = 1e-6;

    /** 0.3 Pa s at 300 K, 3 % less a kelvin; 870 kg/m3, 1900 J/(kg K). */
    private static final Lubricant OIL = new Lubricant() {
        @Override
        public Fluid at(double temperature) {
            return new Fluid(viscosity(temperature), 870);
        }

        @Override
        public double heatCapacity(double temperature) {
            return 1900;
        }
    };

    private static final Bearings BEARINGS = new Bearings(4e-12, 5e-8, 0.2, 8, 0.5);

    private static double viscosity(double temperature) {
        return 0.3 * Math.exp(-0.03 * (temperature - SUMP));
    }

    private static BearingFilm film(Bearings bearings) {
        return film(bearings, OIL, SPEED);
    }

    private static BearingFilm film(Bearings bearings, Lubricant oil, double speed) {
        BearingFilm film = new BearingFilm(bearings, oil);
        film.enter(SUMP, oil.at(SUMP), speed, SUMP);
        return film;
    }

    private static BearingFilm solved(double pressure) {
        BearingFilm film = film(BEARINGS);
        film.look(pressure, SIDE, true);
        return film;
    }

    @Test
    void oilCarriesOffWhatFrictionAndPressureHeat() {
        for (double pressure : new double[] {0, 1e3, 100e3, 2e6}) {
            BearingFilm film = solved(pressure);
            double mu = viscosity(film.filmTemperature());
            double flow = pressure * 4e-12 / mu + SIDE;
            double n = 8 / (870 * 1900 * flow);
            double e1 = -Math.expm1(-n) / n;
            double rise = (film.filmTemperature() - SUMP) * e1 / ((1 - e1) / n);
            double omega = 2 * Math.PI * SPEED;
            double heat = mu * 0.2 * omega * omega + pressure * flow;
            assertEquals(flow, film.flow, 1e-12 * flow);
            assertEquals(mu, film.viscosity, 1e-12 * mu);
            assertEquals(heat, 870 * 1900 * flow * rise + film.toMetal(), 1e-10 * heat);
            assertEquals(8 * (film.filmTemperature() - SUMP), film.toMetal(), 1e-10 * heat);
            assertTrue(film.miss() <= 1e-13);
            assertTrue(rise > 10);
        }
    }

    @Test
    void slopeCountsThatTheFilmWarmsWithThePressure() {
        for (double pressure : new double[] {1e3, 100e3, 2e6}) {
            double h = 1e-3 * pressure;
            double numeric = (solved(pressure + h).flow - solved(pressure - h).flow) / (2 * h);
            // second-order difference of a smooth curve
            assertEquals(numeric, solved(pressure).flowSlope, 1e-5 * numeric);
        }
    }

    @Test
    void slopeDoesNotDependOnWhereTheSearchBegan() {
        double slope = solved(100e3).flowSlope;
        for (double start : new double[] {280, 300.5, 330, 590}) {
            BearingFilm film = film(BEARINGS);
            film.startAt(start - SUMP);
            film.look(100e3, SIDE, true);
            assertEquals(slope, film.flowSlope, 1e-7 * slope);
            film.look(101e3, SIDE, true);
            film.look(100e3, SIDE, true);
            assertEquals(slope, film.flowSlope, 1e-7 * slope);
        }
    }

    @Test
    void searchBeginsAtTheStatedFilm() {
        BearingFilm film = film(BEARINGS);
        film.startAt(330 - SUMP);
        assertEquals(330, film.filmTemperature());
    }

    @Test
    void metalWarmsOrCoolsTheFilmAndHoldsItInTheEnd() {
        double colder = Double.NEGATIVE_INFINITY;
        for (double metal : new double[] {260, 290, SUMP, 320, 360}) {
            BearingFilm film = new BearingFilm(BEARINGS, OIL);
            film.enter(SUMP, OIL.at(SUMP), SPEED, metal);
            film.look(100e3, SIDE, true);
            assertTrue(film.converged && film.filmTemperature() > colder);
            colder = film.filmTemperature();
            BearingFilm held = new BearingFilm(new Bearings(4e-12, 5e-8, 0.2, 1e9, 0.5), OIL);
            held.enter(SUMP, OIL.at(SUMP), SPEED, metal);
            held.look(100e3, SIDE, true);
            assertEquals(metal, held.filmTemperature(), 1e-4);
        }
    }

    @Test
    void filmThatIsNotWarmedHasTheViscosityOfTheSump() {
        BearingFilm film = film(Bearings.isothermal(4e-12));
        film.look(100e3, SIDE, true);
        assertEquals(100e3 * 4e-12 / 0.3 + SIDE, film.flow, 1e-20);
        assertEquals(4e-12 / 0.3, film.flowSlope, 1e-26);
        assertEquals(SUMP, film.filmTemperature());
    }

    @Test
    void nothingHeatsJournalsAtRestWithoutPressure() {
        BearingFilm film = film(new Bearings(4e-12, 5e-8, 0.2, 0, 0.4), OIL, 0);
        film.look(0, SIDE, true);
        assertEquals(SUMP, film.filmTemperature());
        assertEquals(0, film.miss());
    }

    @Test
    void filmHotterThan600KelvinIsReportedAsNotFound() {
        // 100 times the friction in an oil that does not thin: no balance below 600 K
        Lubricant stiff = new Lubricant() {
            @Override
            public Fluid at(double temperature) {
                return new Fluid(0.3, 870);
            }

            @Override
            public double heatCapacity(double temperature) {
                return 1900;
            }
        };
        BearingFilm film = film(new Bearings(4e-12, 5e-8, 20, 8, 0.4), stiff, SPEED);
        film.look(100e3, SIDE, true);
        assertEquals(600, film.filmTemperature(), 1e-9);
        assertTrue(film.miss() > 0.1);
        assertFalse(film.converged);
    }
}
