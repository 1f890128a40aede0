package org.coldpleat.model;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.resolve.Resolution;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.shared.casefile.CaseProblem;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.coldpleat.shared.casefile.reading.CaseReading;

/** Invented cases for tests, written as a user would. */
public final class Cases {
    /** Thin winter oil: 44.8 and 8.7 mm2/s at 40 and 100 degrees C. */
    public static final String OIL = """
            formatVersion: 1
            title: Test case
            invented: true
            oil:
              name: Test oil
              grade: 0W-20
              points:
                - {temperature: 40 °C, kinematic: 44.8 cSt}
                - {temperature: 100 °C, kinematic: 8.7 cSt}
              density: 841 kg/m3
            """;

    private Cases() {}

    public static String stand(String flow) {
        return OIL + """
                flowStand:
                  states:
                    - {name: stand, flow: %s}
                """.formatted(flow);
    }

    /** Lines of a sheet that leave nothing of a filter but a flat medium and a valve. */
    public static final String BARE = """
                outside: {present: false}
                basePlate: {inletHoles: {present: false}, outletBore: {present: false}}
                antiDrainFlap: {present: false}
                centerTube: {present: false}
                pleats: {present: false}
            """;

    /** A candidate that is a medium and a valve, nothing else. */
    public static String mediumOnly(String name, String opening) {
        return """
                  - name: %s
                    bypass: {position: dome, openingPressure: %s}
                    medium: {statedArea: 924 cm2, thickness: 0.8 mm, permeability: 2.2e-11 m2}
                """.formatted(name, opening) + BARE;
    }

    public static ResolvedCase resolve(String text) {
        CaseReading reading = CaseReader.read("test.yaml", text);
        assertTrue(reading.document().isPresent(), () -> said(reading.problems()));
        Resolution resolution = Simulation.resolve(reading.document().get());
        assertTrue(resolution.resolved().isPresent(), () -> said(resolution.problems()));
        return resolution.resolved().get();
    }

    private static String said(Iterable<CaseProblem> problems) {
        StringBuilder text = new StringBuilder();
        problems.forEach(problem -> text.append(problem.text()).append('\n'));
        return text.toString();
    }
}
