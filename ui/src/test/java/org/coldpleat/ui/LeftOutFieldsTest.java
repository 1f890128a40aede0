package org.coldpleat.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.coldpleat.model.certainty.Band;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.resolve.Resolution;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.casefile.catalog.Field;
import org.coldpleat.shared.casefile.catalog.FieldCatalog;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is left out of a sheet makes an answer less sure, never surer, and rarely another one. */
class LeftOutFieldsTest {
    private static final String CANDIDATE = "candidates[0]";

    /** Tests whose readings mean nothing without each other: they are left out whole. */
    private static final Set<String> WHOLE =
            Set.of(CANDIDATE + ".medium.airTest", CANDIDATE + ".medium.capacity", CANDIDATE + ".tests");

    /** A band from fewer readings may be a little narrower by what moves the middle, no more. */
    private static final double NARROWER = 0.9;

    /** Share of the answers that must stay within the band of the full sheet. */
    private static final double WITHIN = 0.8;

    @ParameterizedTest
    @MethodSource("org.coldpleat.ui.DemoCases#one")
    void ofTheCaseWorkedOutSoonest(Path file) throws IOException {
        eachFieldLeftOut(file);
    }

    @ParameterizedTest
    @Tag("nightly")
    @MethodSource("org.coldpleat.ui.DemoCases#others")
    void ofTheOthers(Path file) throws IOException {
        eachFieldLeftOut(file);
    }

    private static void eachFieldLeftOut(Path file) throws IOException {
        CaseDraft draft =
                CaseDraft.open(file.toString(), Files.readString(file)).draft();
        List<StateResult> full = answers(draft).orElseThrow();
        List<String> faults = new ArrayList<>();
        int within = 0;
        int all = 0;
        for (String path : optionalPaths(draft)) {
            Optional<List<StateResult>> less = answers(draft.clear(path));
            if (less.isEmpty()) {
                faults.add(path + ": no answer");
                continue;
            }
            for (int i = 0; i < full.size(); i++) {
                Band before = full.get(i).greatestRatio();
                Band after = less.get().get(i).greatestRatio();
                if (before.value() == 0) {
                    continue;
                }
                if (relative(after) < NARROWER * relative(before)) {
                    faults.add(path + ", " + full.get(i).state() + ": band of " + relative(after) + " instead of "
                            + relative(before));
                }
                all++;
                within += after.value() > before.lowByFactor() && after.value() < before.highByFactor() ? 1 : 0;
            }
        }
        assertEquals(List.of(), faults);
        assertTrue(within >= WITHIN * all, within + " of " + all + " answers within the band of the full sheet");
    }

    private static double relative(Band band) {
        return band.standardUncertainty() / band.value();
    }

    private static Optional<List<StateResult>> answers(CaseDraft draft) {
        Optional<CaseDocument> document =
                CaseReader.read("left-out.yaml", draft.text()).document();
        return document.map(Simulation::resolve)
                .flatMap(Resolution::resolved)
                .map(resolved ->
                        Simulation.compare(resolved).now().candidates().get(0).states());
    }

    /** Paths of the fields and groups of the first candidate that a sheet may leave out. */
    private static SortedSet<String> optionalPaths(CaseDraft draft) {
        SortedSet<String> paths = new TreeSet<>();
        for (String path : draft.values().keySet()) {
            if (path.startsWith(CANDIDATE + ".")) {
                String[] keys = path.substring(CANDIDATE.length() + 1).split("\\.", -1);
                Field field = FieldCatalog.candidate();
                StringBuilder at = new StringBuilder(CANDIDATE);
                for (String key : keys) {
                    if (key.contains("[")) {
                        break;
                    }
                    field = field.field(key);
                    at.append('.').append(key);
                    if (!field.required()) {
                        paths.add(at.toString());
                    }
                    if (WHOLE.contains(at.toString())) {
                        break;
                    }
                }
            }
        }
        paths.remove(CANDIDATE + ".medium");
        if (draft.value(CANDIDATE + ".tests.scaleTest.liftOff").isPresent()) {
            // a push on a plate is no pressure without the seat
            paths.removeAll(Set.of(CANDIDATE + ".bypass", CANDIDATE + ".bypass.seatDiameter"));
        }
        return paths;
    }
}
