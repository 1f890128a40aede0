package org.coldpleat.model.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.ResourceBundle;
import java.util.stream.Stream;
import org.coldpleat.model.Cases;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.model.steady.PointResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The chains behind the numbers hold the numbers of the results, and close on themselves. */
class ExplainTest {
    private static final String VALVE =
            "dome, openingPressure: 12 psi, seatDiameter: 14 mm, springRate: 1.5 N/mm," + " maximumLift: 3 mm";
    private static final double COLD = 248.15;

    private static ResolvedCase resolved(String opening) {
        return Cases.resolve(Cases.stand("5 gpm") + "candidates:\n"
                + Cases.mediumOnly("One", opening).replace("dome, openingPressure: " + opening, VALVE));
    }

    private static Explanation explain(ResolvedCase resolved, ExplainRequest request) {
        return Simulation.explain(resolved, request).now();
    }

    private static Explanation link(Explanation chain, String key) {
        return all(chain).filter(one -> one.key().equals(key)).findFirst().orElseThrow();
    }

    private static Stream<Explanation> all(Explanation chain) {
        return Stream.concat(Stream.of(chain), chain.inputs().stream().flatMap(ExplainTest::all));
    }

    @Test
    void aShareIsThatOfThePointAndItsFlowsAddUp() {
        ResolvedCase resolved = resolved("12 psi");
        Explanation share =
                explain(resolved, ExplainRequest.of("One").about("bypassShare").at(COLD));
        PointResult point = Simulation.point(resolved, "One", "stand", COLD).now();
        assertEquals(point.bypass().orElseThrow().share(), share.value(), 1e-12);
        double flow = link(share, "filterFlow").value();
        double round = link(share, "valveFlow").value();
        assertEquals(flow, link(share, "mediumFlow").value() + round, 1e-9 * flow);
        assertEquals(share.value(), round / flow, 1e-12);
    }

    @Test
    void aLiftIsThatOfTheSpringBalanceOfItsChain() {
        Explanation share = explain(
                resolved("12 psi"),
                ExplainRequest.of("One").about("bypassShare").at(COLD));
        double area = Math.PI * 0.014 * 0.014 / 4;
        double force = area
                * (link(share, "openDifference").value()
                        - link(share, "openingPressure").value());
        double free = force / link(share, "valveSpringRate").value();
        assertTrue(free < 0.003, "free lift " + free);
        // the corner above the opening pressure is rounded within 0.015 % of it
        assertEquals(free, link(share, "valveLift").value(), 1.5e-4 * area * 82737 / 1500);
    }

    @Test
    void sharesOfTheVarianceAddUpToOne() {
        ResolvedCase resolved = resolved("12 psi");
        Explanation chance = explain(resolved, ExplainRequest.of("One").about("chanceOpen"));
        StateResult result =
                Simulation.compare(resolved).now().candidates().get(0).states().get(0);
        assertEquals(result.chanceOpen(), chance.value(), 1e-12);
        List<Explanation> parts = link(chance, "spreadOfRatio").inputs();
        assertEquals(1, parts.stream().mapToDouble(Explanation::value).sum(), 1e-9);
        assertTrue(parts.size() > 3, "parts " + parts.size());
    }

    @Test
    void onlyNumbersOfOneTemperatureTakeOne() {
        ResolvedCase resolved = resolved("12 psi");
        ExplainRequest area = ExplainRequest.of("One").about("mediumArea").at(COLD);
        assertThrows(IllegalArgumentException.class, () -> explain(resolved, area));
        double cold = explain(
                        resolved,
                        ExplainRequest.of("One").about("hotPressureDrop").at(COLD))
                .value();
        assertEquals(Simulation.point(resolved, "One", "stand", COLD).now().pressureDrop(), cold, 1e-9 * cold);
    }

    /** An explanation without words is none. */
    @ParameterizedTest
    @ValueSource(strings = {"openingTemperature", "bypassShare", "chanceOpen", "mediumArea", "resistanceRatio"})
    void everyLinkHasATitle(String quantity) {
        ResourceBundle texts = ResourceBundle.getBundle("org.coldpleat.model.explain.explanations");
        Explanation chain = explain(resolved("12 psi"), ExplainRequest.of("One").about(quantity));
        all(chain).forEach(one -> assertTrue(texts.containsKey(one.key() + ".title"), one.key()));
    }
}
