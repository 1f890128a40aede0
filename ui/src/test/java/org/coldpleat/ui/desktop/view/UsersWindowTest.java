package org.coldpleat.ui.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.verdict.CandidateResult;
import org.coldpleat.ui.desktop.view.chart.PicturePane;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.testfx.framework.junit5.Start;

/** What people do at the bench and ask of the screen: areas by two ways, filters side by side, reading where curves cross. */
class UsersWindowTest extends HutWindow {
    private static final String COPPER = "candidates[1].";

    @Start
    void start(Stage given) throws IOException {
        begin(given);
    }

    private void choose(int filter) {
        robot.interact(() ->
                probe.node("#candidate", ChoiceBox.class).getSelectionModel().select(filter));
    }

    private String area() {
        return probe.node("#amount:" + COPPER + "pleats", Label.class).getText();
    }

    private String page() {
        return probe.node("#page", TextArea.class).getText();
    }

    /**
     * 55 pleats, 60 mm high, legs of 14 mm have 924 cm2; a strip of 1540 mm by 60 mm is the same, and of a count a
     * seam takes 0.6 %. Computed here. */
    @Test
    void areaIsThatOfThePleatsAndOfTheStripAndATypedHalfIsPointedOut() throws Exception {
        choose(1);
        // the strip with its allowances goes as one
        robot.interact(() -> window.bench().orElseThrow().edit(COPPER + "medium.strip", ""));
        probe.type("#field:" + COPPER + "element.length", "");
        probe.type("#field:" + COPPER + "pleats.count", "55");
        probe.type("#field:" + COPPER + "pleats.depth", "14 mm");
        probe.type("#field:" + COPPER + "pleats.height", "60 mm");
        assertTrue(
                area().contains("918.5"),
                area() + " " + window.bench().orElseThrow().problems());
        probe.type("#field:" + COPPER + "medium.strip.length", "1540 mm");
        probe.type("#field:" + COPPER + "medium.strip.width", "60 mm");
        assertTrue(
                area().contains("924"),
                area() + " " + window.bench().orElseThrow().problems());
        probe.type("#field:" + COPPER + "medium.statedArea", "71.6 in2");
        probe.ready();
        assertTrue(window.verdictWords().contains("factor two"), window.verdictWords());
    }

    @Test
    @Tag("nightly")
    void orderChangesNoNumberAndATwinHasTheSame() throws Exception {
        Set<String> before = rows(page());
        choose(0);
        robot.interact(() -> probe.node("#later", Button.class).fire());
        probe.ready();
        assertEquals(
                List.of("Copper", "Slate", "Fjord", "Moss"),
                window.bench().orElseThrow().candidates());
        assertEquals(before, rows(page()));
        choose(1);
        robot.interact(() -> probe.node("#copyFilter", Button.class).fire());
        probe.ready();
        String twin = window.bench().orElseThrow().candidates().get(4);
        List<CandidateResult> all = window.bench()
                .orElseThrow()
                .opened()
                .orElseThrow()
                .compare()
                .now()
                .candidates();
        assertEquals("Slate", all.get(1).name());
        assertEquals(twin, all.get(4).name());
        for (int s = 0; s < all.get(1).states().size(); s++) {
            StateResult one = all.get(1).states().get(s);
            StateResult other = all.get(4).states().get(s);
            assertTrue(Arrays.equals(one.curve().bypassShare(), other.curve().bypassShare()));
            assertEquals(one.openingTemperature(), other.openingTemperature());
        }
    }

    /** Lines of a page that tell of one filter, without the room between their words. */
    private static Set<String> rows(String page) {
        Set<String> rows = new TreeSet<>();
        page.lines()
                .map(String::strip)
                .filter(line -> line.matches("(Slate|Copper|Fjord|Moss) .*\\d.*"))
                .map(line -> line.replaceAll("\\s+", " "))
                .forEach(rows::add);
        return rows;
    }

    private void press(PicturePane chart, KeyCode key, int times) {
        robot.interact(() -> {
            for (int i = 0; i < times; i++) {
                chart.fireEvent(WindowProbe.key(key));
            }
        });
    }

    /** The reading line finds where the curve of a filter meets its opening pressure, within 1 % of the answer on the kelvin scale. */
    @Test
    @Tag("nightly")
    void whereTheValveOpensIsReadFromThePicture() {
        StateResult copper = window.bench()
                .orElseThrow()
                .opened()
                .orElseThrow()
                .compare()
                .now()
                .candidates()
                .get(1)
                .states()
                .get(1);
        robot.interact(
                () -> probe.node("#state", ChoiceBox.class).getSelectionModel().select(1));
        Pattern reading = Pattern.compile("At (-?[0-9.]+) .*?Copper (-?[0-9.]+) kPa");
        double opening = window.bench()
                        .orElseThrow()
                        .opened()
                        .orElseThrow()
                        .present("Copper")
                        .openingPressure()
                        .orElseThrow()
                / 1000;
        PicturePane chart = probe.node("#chart-pressure", PicturePane.class);
        press(chart, KeyCode.LEFT, 30);
        double read = Double.NaN;
        double[] before = {Double.NaN, Double.NaN};
        for (int i = 0; i < 60 && Double.isNaN(read); i++) {
            press(chart, KeyCode.RIGHT, 1);
            Matcher found = reading.matcher(
                    probe.node("#chart-pressure-readout", Label.class).getText());
            assertTrue(
                    found.find(),
                    probe.node("#chart-pressure-readout", Label.class).getText());
            double[] now = {Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2))};
            if (now[1] < opening) {
                // between two readings, as the eye does
                double part = (before[1] - opening) / (before[1] - now[1]);
                read = 273.15 + before[0] + part * (now[0] - before[0]);
            }
            before = now;
        }
        double told = copper.intervals().get(0)[1];
        assertEquals(told, read, 0.01 * told);
    }
}
