package org.coldpleat.ui.desktop.viewmodel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import org.coldpleat.model.explain.ExplainRequest;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Opening;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A case that was edited step by step is the case that its text is, to the last digit. */
class EditedCaseTest {
    private static final String NAME = "edited.yaml";
    private static final CaseService SERVICE = CaseService.standard();

    /** A change at random: of a sheet, of what all share, of the order; now and then one that is not understood. */
    private static void change(CaseBench bench, Random random) {
        int count = bench.candidates().size();
        String filter = "candidates[" + random.nextInt(count) + "].";
        switch (random.nextInt(13)) {
            case 0 -> bench.edit(filter + "pleats.count", Integer.toString(45 + random.nextInt(12)));
            case 1 -> bench.edit(filter + "bypass.openingPressure", 60 + random.nextInt(80) + " kPa");
            case 2 -> bench.edit(filter + "medium.thickness", 0.6 + 0.01 * random.nextInt(20) + " mm");
            case 3 -> bench.edit(filter + "notes", "step " + random.nextInt());
            case 4 -> bench.edit("oil.pourPoint", -40 + random.nextInt(8) + " °C");
            case 5 -> bench.edit("oil.density", 860 + random.nextInt(20) + " kg/m3");
            case 6 -> bench.edit("temperatures.named[0].temperature", -25 + random.nextInt(10) + " °C");
            case 7 -> bench.edit("engine.states[0].speed", 150 + random.nextInt(200) + " rpm");
            case 8 -> bench.moveCandidate(random.nextInt(count), random.nextInt(count));
            case 9 -> bench.edit(filter + "pleats.count", "plenty");
            case 10 -> bench.undo();
            case 11 -> bench.edit("story", "Told anew, " + random.nextInt(9) + " times.");
            default -> {
                if (count < 6) {
                    bench.copyCandidate(random.nextInt(count));
                } else {
                    bench.removeCandidate(random.nextInt(count));
                }
            }
        }
    }

    private static Opening afresh(CaseBench bench) {
        CaseDraft draft = CaseDraft.open(NAME, bench.draft().text()).draft();
        return SERVICE.openDraft(NAME, draft, Optional.empty());
    }

    @Test
    void afterAnyEditsTheNumbersAreThoseOfTheText() throws Exception {
        edit(1, 20);
    }

    @ParameterizedTest
    @Tag("nightly")
    @ValueSource(longs = {1, 2})
    void afterManyEditsTheNumbersAreThoseOfTheText(long seed) throws Exception {
        edit(seed, 40);
    }

    private static void edit(long seed, int steps) throws Exception {
        CaseBench bench = CaseBench.recovered(
                SERVICE,
                Optional.of(Path.of(NAME)),
                Files.readString(Path.of("../demo-cases/ridge-hut-generator/case.yaml")));
        Random random = new Random(seed);
        int understood = 0;
        for (int i = 0; i < steps; i++) {
            change(bench, random);
            Opening fresh = afresh(bench);
            assertEquals(fresh.problems(), bench.problems());
            if (bench.isUnderstood()) {
                understood++;
                OpenedCase edited = bench.opened().orElseThrow();
                OpenedCase read = fresh.opened().orElseThrow();
                assertEquals(read.understood(), edited.understood());
                String state = read.states().get(random.nextInt(read.states().size()));
                assertEquals(
                        RecordText.of(read.quickCurves(state).now()),
                        RecordText.of(edited.quickCurves(state).now()));
            }
        }
        assertTrue(understood > steps / 4, "steps that were understood: " + understood);
        while (!bench.isUnderstood()) {
            bench.undo();
        }
        OpenedCase edited = bench.opened().orElseThrow();
        OpenedCase read = afresh(bench).opened().orElseThrow();
        assertEquals(
                RecordText.of(read.compare().now()),
                RecordText.of(edited.compare().now()));
        String candidate = read.candidates().get(0);
        assertEquals(
                RecordText.of(read.explain(ExplainRequest.of(candidate)).now()),
                RecordText.of(edited.explain(ExplainRequest.of(candidate)).now()));
    }

    @Test
    void linesOfProblemsAreThoseOfTheTextAfterLinesWereAddedAboveThem() throws IOException {
        CaseBench bench = CaseBench.open(SERVICE, Path.of("../demo-cases/half-the-area/case.yaml"));
        long lines = bench.draft().text().lines().count();
        bench.edit("oil.pourPoint", bench.draft().value("oil.pourPoint").isPresent() ? "" : "-30 °C");
        assertNotEquals(lines, bench.draft().text().lines().count());
        bench.edit("candidates[1].element.insideDiameter", "500 mm");
        assertFalse(bench.isUnderstood());
        assertEquals(afresh(bench).problems(), bench.problems());
    }
}
