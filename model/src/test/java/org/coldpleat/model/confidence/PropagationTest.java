package org.coldpleat.model.confidence;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicLong;
import org.coldpleat.model.run.Progress;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;

class PropagationTest {
    private static UncertainQuantity normal(String name, double mean, double sigma) {
        return UncertainQuantity.of(
                name, Measured.exact(Kind.RATIO, mean, Provenance.MEASURED).withSpread(sigma, Spread.NORMAL));
    }

    private static Propagation run(Model model, List<UncertainQuantity> unknowns, int draws) {
        return Propagation.run(model, unknowns, draws, 1, Progress.NONE).orElseThrow();
    }

    @Test
    void threadsDoNotChangeTheResult() throws Exception {
        List<UncertainQuantity> unknowns = List.of(normal("a", 1, 0.1), normal("b", 2, 0.3));
        Model model = x -> new double[] {x[0] * x[1], Math.exp(x[0])};
        double[] here = run(model, unknowns, 500).answers(1);
        ForkJoinPool single = new ForkJoinPool(1);
        try {
            double[] there =
                    single.submit(() -> run(model, unknowns, 500).answers(1)).get();
            assertArrayEquals(here, there);
        } finally {
            single.shutdown();
        }
    }

    @Test
    void cancelledRunGivesNoResult() {
        AtomicLong calls = new AtomicLong();
        Progress stop = new Progress() {
            @Override
            public void done(long evaluations, long total) {}

            @Override
            public boolean cancelled() {
                return calls.get() > 40;
            }
        };
        Model model = x -> {
            calls.incrementAndGet();
            return x;
        };
        assertTrue(Propagation.run(model, List.of(normal("a", 0, 1)), 4096, 1, stop)
                .isEmpty());
    }

    @Test
    void progressReachesTheTotal() {
        AtomicLong most = new AtomicLong();
        Progress watch = new Progress() {
            @Override
            public void done(long evaluations, long total) {
                most.accumulateAndGet(evaluations, Math::max);
                assertEquals(100, total);
            }

            @Override
            public boolean cancelled() {
                return false;
            }
        };
        Propagation.run(x -> x, List.of(normal("a", 0, 1)), 100, 1, watch);
        assertEquals(100, most.get());
    }

    @Test
    void neverAndAlwaysTakePartInQuantiles() {
        double never = Double.NEGATIVE_INFINITY;
        Outcomes outcomes = Outcomes.of(new double[] {never, never, never, 1, 2, 3, 4, Double.POSITIVE_INFINITY});
        assertEquals(3.0 / 8, outcomes.never());
        assertEquals(1.0 / 8, outcomes.always());
        assertEquals(never, outcomes.low());
        assertEquals(Double.POSITIVE_INFINITY, outcomes.high());
        assertEquals(1.5, outcomes.median());
        assertEquals(0.5, outcomes.probabilityAbove(1));
    }

    @Test
    void drawsWithoutAnswerAreCountedApart() {
        Outcomes outcomes = Outcomes.of(new double[] {1, Double.NaN, 3});
        assertEquals(1, outcomes.unanswered());
        assertEquals(2, outcomes.median());
        Outcomes none = Outcomes.of(new double[] {Double.NaN});
        assertEquals(0, none.count());
        assertTrue(Double.isNaN(none.median()) && Double.isNaN(none.never()));
    }

    @Test
    void sharedUnknownCancelsInAComparison() {
        List<UncertainQuantity> unknowns =
                List.of(normal("oil", 0, 10), normal("first", 0.5, 0.1), normal("second", 0, 0.1));
        Propagation both = run(x -> new double[] {x[0] + x[1], x[0] + x[2]}, unknowns, 4096);
        assertTrue(both.pair(0, 1).greater() > 0.999, "gap of 3.5 joint standard uncertainties");
        assertTrue(both.pair(0, 1).separated());
        assertTrue(both.outcomes(0).high() - both.outcomes(0).low() > 35);
    }

    @Test
    void identicalAnswersAreEqualAndNotSeparated() {
        Pair pair =
                Pair.compare(new double[] {Double.NEGATIVE_INFINITY, 2}, new double[] {Double.NEGATIVE_INFINITY, 2});
        assertEquals(new Pair(0, 1, 0), pair);
        assertFalse(pair.separated());
    }

    @Test
    void quantilesOfEachShape() {
        Measured one = Measured.exact(Kind.RATIO, 2, Provenance.MEASURED);
        assertEquals(2, UncertainQuantity.of("n", one).quantile(0.9));
        assertEquals(
                2.8,
                UncertainQuantity.of("r", Measured.between(Kind.RATIO, 1, 3, Provenance.MEASURED))
                        .quantile(0.9),
                1e-12);
        // 1.281552: 90 % point of the normal distribution, Abramowitz and Stegun 1964, table 26.5
        assertEquals(
                2 + 0.5 * 1.281552,
                UncertainQuantity.of("s", one.withSpread(0.5, Spread.NORMAL)).quantile(0.9),
                1e-6);
        assertEquals(
                2 * Math.exp(0.5 * 1.281552),
                UncertainQuantity.of("l", one.withSpread(0.5, Spread.LOG_NORMAL))
                        .quantile(0.9),
                1e-5);
        assertThrows(
                IllegalArgumentException.class,
                () -> UncertainQuantity.of("n", one).quantile(0));
    }

    @Test
    void duplicateNamesAreRefused() {
        assertThrows(
                IllegalArgumentException.class, () -> run(x -> x, List.of(normal("a", 0, 1), normal("a", 0, 1)), 8));
    }

    /** For a sum the expected variance after a measurement is V - (1 - r^2) V_i, exactly. */
    @Test
    void gainOfAMeasurementMatchesTheSumRule() {
        List<UncertainQuantity> unknowns = List.of(normal("a", 0, 3), normal("b", 0, 2), normal("c", 0, 1));
        List<NextMeasurement.Gain> gains = NextMeasurement.rank(
                        x -> new double[] {x[0] + x[1] + x[2]},
                        Answer.finite(),
                        unknowns,
                        Map.of("a", 1.0, "b", 0.5, "c", 0.0),
                        8192,
                        1,
                        Progress.NONE)
                .orElseThrow();
        assertEquals("b", gains.get(0).group());
        assertEquals("c", gains.get(1).group());
        assertEquals("a", gains.get(2).group());
        // tolerances: about four sampling errors of 8192 draws
        assertEquals(Math.sqrt(14), gains.get(0).spreadNow(), 0.05);
        assertEquals(Math.sqrt(14 - 0.75 * 4), gains.get(0).spreadAfter(), 0.05);
        assertEquals(Math.sqrt(13), gains.get(1).spreadAfter(), 0.05);
        assertEquals(0, gains.get(2).reduction(), 4 * gains.get(2).error() + 1e-3);
    }

    @Test
    void groupOfUnknownsIsTakenTogether() {
        Measured unit = Measured.exact(Kind.RATIO, 0, Provenance.MEASURED).withSpread(1, Spread.NORMAL);
        List<UncertainQuantity> unknowns = List.of(
                new UncertainQuantity("x", unit, false, "pair"),
                new UncertainQuantity("y", unit, false, "pair"),
                UncertainQuantity.of("z", unit));
        SobolIndices indices = SobolIndices.estimate(
                        x -> new double[] {x[0] * x[1] + x[2]}, Answer.finite(), unknowns, 8192, 1, Progress.NONE)
                .orElseThrow();
        assertEquals(2, indices.shares().size());
        // x*y and z have variance 1 each; the group explains its interaction alone
        assertEquals(0.5, indices.shares().get(0).first(), 0.05);
        assertEquals(0.5, indices.shares().get(1).total(), 0.05);
    }

    @Test
    void infiniteAnswersAreCountedAtTheStatedEnds() {
        Model model = x -> new double[] {x[0] > 0 ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY};
        SobolIndices indices = SobolIndices.estimate(
                        model, new Answer(0, -1, 1), List.of(normal("a", 0, 1)), 4096, 1, Progress.NONE)
                .orElseThrow();
        assertEquals(1, indices.variance(), 0.01);
        assertEquals(1, indices.shares().get(0).first(), 1e-9);
    }

    @Test
    void answerThatDoesNotVaryHasNoShares() {
        SobolIndices indices = SobolIndices.estimate(
                        x -> new double[] {Double.NEGATIVE_INFINITY},
                        new Answer(0, -40, 150),
                        List.of(normal("a", 0, 1)),
                        64,
                        1,
                        Progress.NONE)
                .orElseThrow();
        assertEquals(0, indices.variance());
        assertEquals(0, indices.shares().get(0).total());
    }

    @Test
    void rowsWithoutAnswerAreLeftOutAndCounted() {
        Model model = x -> new double[] {x[0] > 1.5 ? Double.NaN : x[0]};
        SobolIndices indices = SobolIndices.estimate(
                        model, Answer.finite(), List.of(normal("a", 0, 1), normal("b", 0, 1)), 1024, 1, Progress.NONE)
                .orElseThrow();
        assertTrue(indices.discarded() > 50 && indices.discarded() < 200);
        assertEquals(1, indices.shares().get(0).first(), 0.05);
        assertEquals(0, indices.shares().get(1).total(), 1e-12);
    }
}
