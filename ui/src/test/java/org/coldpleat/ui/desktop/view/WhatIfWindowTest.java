package org.coldpleat.ui.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import javafx.scene.AccessibleAttribute;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TableView;
import javafx.scene.control.TextArea;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.desktop.view.chart.NumberRow;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The sliders that try values out. */
class WhatIfWindowTest extends HutWindow {
    private static final String TRIED = "Copper, what if";

    @Start
    void start(Stage given) throws IOException {
        begin(given);
    }

    @BeforeEach
    void tryCopper() {
        robot.interact(() -> {
            probe.node("#candidate", ChoiceBox.class).getSelectionModel().select(1);
            probe.node("#temperature", Slider.class).setValue(-20);
            probe.node("#whatIf", TitledPane.class).setExpanded(true);
            probe.node("#chart-pressure-table", ToggleButton.class).fire();
        });
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void slide(String key, double factor) {
        robot.interact(() -> {
            Slider slider = probe.node("#whatIf:" + key, Slider.class);
            slider.setValue(factor * slider.getValue());
        });
        WaitForAsyncUtils.waitForFxEvents();
    }

    private String words() {
        return probe.node("#whatIf-words", Label.class).getText();
    }

    private void said(String words) throws Exception {
        WindowProbe.until(30, () -> words().contains(words));
    }

    private List<NumberRow> rows(String series) {
        TableView<?> table = probe.node("#chart-pressure-numbers", TableView.class);
        return table.getItems().stream()
                .map(row -> (NumberRow) row)
                .filter(row -> row.series().equals(series))
                .toList();
    }

    @Test
    void faintCopyMovesAndTheFilterItselfStays() throws Exception {
        List<NumberRow> before = rows("Copper");
        String page = probe.node("#page", TextArea.class).getText();
        assertEquals(List.of(), rows(TRIED));
        slide("opening", 1.4);
        said("the valve is open below");
        assertTrue(words().startsWith("Valve opens at 55."), words());
        assertTrue(words().contains("At -20.0 °C the valve sees"), words());
        assertEquals(before, rows("Copper"));
        List<NumberRow> one = rows(TRIED);
        assertFalse(one.isEmpty());
        slide("area", 1.2);
        WindowProbe.until(
                30, () -> words().contains("Unfolded medium") && !rows(TRIED).equals(one));
        assertEquals(before, rows("Copper"));
        assertEquals(page, probe.node("#page", TextArea.class).getText());
        assertFalse(stage.getTitle().startsWith("*"));
        robot.interact(
                () -> probe.node("#chart-pressure-table", ToggleButton.class).fire());
        probe.picture("what-if");
        robot.interact(() -> probe.node("#dark", ToggleButton.class).fire());
        probe.picture("what-if-dark");
    }

    /** One after the other in one window, which takes seconds to open; each leaves nothing that the next minds. */
    @TestFactory
    List<DynamicTest> sliderByNameUnitAndReset() {
        return List.of(
                DynamicTest.dynamicTest(
                        "slidersHaveNamesAndFollowTheKeyboard", () -> slidersHaveNamesAndFollowTheKeyboard()),
                DynamicTest.dynamicTest("resetTakesTheCopyAway", () -> resetTakesTheCopyAway()),
                DynamicTest.dynamicTest("hoursInServiceLoadTheCopy", () -> hoursInServiceLoadTheCopy()),
                DynamicTest.dynamicTest("anotherFilterStartsAfresh", () -> anotherFilterStartsAfresh()));
    }

    private void resetTakesTheCopyAway() throws Exception {
        slide("thickness", 1.3);
        said("Thickness");
        robot.interact(() -> probe.node("#whatIf-reset", Button.class).fire());
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals(List.of(), rows(TRIED));
        assertEquals(WindowTexts.get("whatIf.nothing"), words());
        assertTrue(probe.node("#whatIf-keep", Button.class).isDisabled());
    }

    @Test
    void whatWasTriedBecomesAFilterOfItsOwn() throws Exception {
        slide("opening", 1.4);
        said("the valve is");
        List<NumberRow> tried = rows(TRIED);
        robot.interact(() -> probe.node("#whatIf-keep", Button.class).fire());
        WindowProbe.until(60, () -> !rows("Copper 2").isEmpty());
        assertEquals(
                tried.stream().map(NumberRow::y).toList(),
                rows("Copper 2").stream().map(NumberRow::y).toList());
        assertEquals(List.of(), rows(TRIED));
        assertTrue(stage.getTitle().startsWith("*"));
        robot.interact(() -> probe.node("#undo", Button.class).fire());
        WindowProbe.until(60, () -> rows("Copper 2").isEmpty());
    }

    private void hoursInServiceLoadTheCopy() throws Exception {
        robot.interact(() -> probe.node("#whatIf:hours", Slider.class).setValue(60 * 3600.0));
        said("Hours in service");
        assertFalse(rows(TRIED).isEmpty());
        assertTrue(probe.node("#whatIf-keep", Button.class).isDisabled());
    }

    @Test
    @Tag("nightly")
    void valuesAreInTheChosenUnits() throws Exception {
        Label value = probe.node("#whatIf-value:opening", Label.class);
        assertTrue(value.getText().contains("kPa"), value.getText());
        slide("opening", 1.4);
        said("kPa");
        robot.interact(() -> {
            @SuppressWarnings("unchecked")
            ChoiceBox<UnitSystem> box = probe.node("#units", ChoiceBox.class);
            box.setValue(UnitSystem.US);
        });
        said("psi");
        assertFalse(words().contains("kPa") || words().contains("°C"), words());
        assertTrue(value.getText().contains("psi"), value.getText());
    }

    private void anotherFilterStartsAfresh() throws Exception {
        slide("opening", 1.4);
        said("the valve is");
        robot.interact(() ->
                probe.node("#candidate", ChoiceBox.class).getSelectionModel().select(0));
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals(WindowTexts.get("whatIf.nothing"), words());
        assertEquals(List.of(), rows(TRIED));
    }

    private void slidersHaveNamesAndFollowTheKeyboard() {
        for (String key : List.of("opening", "area", "thickness", "speed", "hours")) {
            Slider slider = probe.node("#whatIf:" + key, Slider.class);
            assertTrue(slider.isFocusTraversable());
            assertFalse(String.valueOf(slider.queryAccessibleAttribute(AccessibleAttribute.TEXT))
                    .isBlank());
        }
        Slider slider = probe.node("#whatIf:opening", Slider.class);
        double before = slider.getValue();
        robot.interact(slider::increment);
        assertNotEquals(before, slider.getValue());
    }
}
