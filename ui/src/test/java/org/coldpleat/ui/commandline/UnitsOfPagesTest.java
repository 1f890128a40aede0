package org.coldpleat.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.service.CaseService;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The units that are asked for reach every number of every page, and no number loses its unit. */
class UnitsOfPagesTest {
    private static final int CONTEXT = 12;
    private static final String HUT = "ridge-hut-generator";
    private static final String VAN = "clinic-van";
    private static final String LAUNCH = "harbour-launch";
    private static final String LESSON = "half-the-area";

    private static String run(CaseService service, String words, UnitSystem units) {
        List<String> all = new ArrayList<>();
        for (String word : words.split(" ", -1)) {
            all.add(word.replace('_', ' '));
        }
        all.add("--units");
        all.add(units.name().toLowerCase(java.util.Locale.ROOT));
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = CommandLineFace.run(all, service, new PrintWriter(out), new PrintWriter(err));
        assertTrue(code == ExitCode.DONE || code == ExitCode.NO_ANSWER, err::toString);
        return out + "\n" + err;
    }

    private static void check(String demo, String command) {
        Map<UnitSystem, UnitPage> pages = pages(demo, command);
        assertPure(pages);
        List<String> us = pages.get(UnitSystem.US).words();
        List<String> si = pages.get(UnitSystem.SI).words();
        for (int i = 0; i < Math.max(us.size(), si.size()); i++) {
            assertEquals(around(us, i), around(si, i), "a number without its unit");
        }
    }

    private static Map<UnitSystem, UnitPage> pages(String demo, String command) {
        CaseService service = CaseService.standard();
        String words = command + " ../demo-cases/" + demo + "/case.yaml";
        Map<UnitSystem, UnitPage> pages = new EnumMap<>(UnitSystem.class);
        for (UnitSystem units : UnitSystem.values()) {
            pages.put(units, new UnitPage(run(service, words, units)));
        }
        return pages;
    }

    private static void assertPure(Map<UnitSystem, UnitPage> pages) {
        List<String> wrong = new ArrayList<>();
        pages.forEach((units, page) -> page.foreign(units).forEach(place -> wrong.add(units + ": " + place)));
        assertEquals(List.of(), wrong);
    }

    private static String around(List<String> words, int i) {
        return String.join(
                " ", words.subList(Math.min(words.size(), Math.max(0, i - CONTEXT)), Math.min(words.size(), i + 1)));
    }

    @ParameterizedTest
    @CsvSource({
        HUT + ", compare",
        VAN + ", compare",
        LAUNCH + ", compare",
        LESSON + ", compare",
        HUT + ", point --candidate=Moss --state=running --temperature=-10C",
        LAUNCH + ", point --candidate=Gull --state=cruising --temperature=8C",
        HUT + ", explain --candidate=Slate",
        HUT + ", evidence",
        VAN + ", evidence",
        LAUNCH + ", evidence",
        HUT + ", multipass --candidate=Fjord",
        LESSON + ", lesson --step=7",
        LESSON + ", service --hours=30",
        LESSON + ", settings --candidate=Half",
        LESSON + ", size --candidate=Half --for=area --target=never_open_at_0_C_in_running --draws=64",
    })
    void pagesHaveTheUnitsAskedForAndNoOthers(String demo, String command) {
        check(demo, command);
    }

    @ParameterizedTest
    @ValueSource(strings = {"flowBench", "drainTest", "airTest", "scaleTest", "bubblePoint", "fiberSizing"})
    void plansHaveNoOtherUnits(String test) {
        // a number and its unit may stand on two lines of a cell, so that words are not compared
        assertPure(pages(HUT, "plan --candidate=Moss " + test));
    }

    @Tag("nightly")
    @ParameterizedTest
    @CsvSource({
        HUT + ", coldstart",
        LAUNCH + ", coldstart",
        VAN + ", coldstart --sweep",
        VAN + ", coldstart --candidate=Short",
        HUT + ", service",
        VAN + ", settings",
        VAN + ", confidence --draws=16",
        LESSON + ", confidence --draws=16",
        LESSON + ", lesson",
    })
    void longPagesHaveTheUnitsAskedForAndNoOthers(String demo, String command) {
        check(demo, command);
    }

    @Tag("nightly")
    @ParameterizedTest
    @ValueSource(strings = {HUT, LESSON})
    void reportsHaveTheUnitsAskedForAndNoOthers(String demo, @TempDir Path made) throws Exception {
        CaseService service = CaseService.standard();
        Map<UnitSystem, UnitPage> pages = new EnumMap<>(UnitSystem.class);
        for (UnitSystem units : List.of(UnitSystem.US, UnitSystem.SI)) {
            Path file = made.resolve(units + ".html");
            run(service, "report ../demo-cases/" + demo + "/case.yaml --draws=16 --out=" + file, units);
            Document report = Jsoup.parse(Files.readString(file));
            report.select("svg, .quoted").remove();
            pages.put(units, new UnitPage(report.wholeText()));
        }
        assertPure(pages);
    }
}
