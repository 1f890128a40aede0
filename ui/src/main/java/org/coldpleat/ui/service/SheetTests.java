package org.coldpleat.ui.service;

import java.util.List;
import org.coldpleat.shared.casefile.Section;

/**
 * What a bench sheet tells of its medium by tests. With another area, pleat count or thickness the tests of a whole filter
 * would be tests of another filter; then what came of them stands in their place, the resistance of the medium.
 */
public final class SheetTests {
    /** Everything that tells how open the medium is, by its path from the sheet on. */
    public static final List<String> OF_MEDIUM = List.of(
            ".medium.permeability",
            ".medium.flowBench",
            ".medium.airTest",
            ".medium.layers",
            ".medium.fiberDiameter",
            ".tests.flowBench",
            ".tests.drainTest",
            ".tests.airTest",
            ".tests.bubblePoint",
            ".tests.fiberSizing");

    /** Those of them that were made on a filter as a whole. */
    public static final List<String> OF_WHOLE_FILTER = List.of(".tests.flowBench", ".tests.drainTest");

    /** Tells what the bypass valve opens at. */
    public static final List<String> OF_VALVE = List.of(".tests.scaleTest");

    private SheetTests() {}

    /** Full paths of those that stand on a sheet. */
    public static List<String> on(Section sheet, List<String> tests) {
        return tests.stream()
                .filter(test -> stands(sheet, test.substring(1).split("\\.", -1)))
                .map(test -> sheet.path() + test)
                .toList();
    }

    private static boolean stands(Section sheet, String[] steps) {
        return sheet.section(steps[0]).map(one -> one.has(steps[1])).orElse(false);
    }
}
