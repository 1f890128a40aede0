package org.coldpleat.ui.desktop.view.chart;

import java.awt.BasicStroke;
import java.util.List;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.shape.Line;
import javafx.scene.shape.StrokeLineCap;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.style.ChartTheme;
import org.coldpleat.ui.chart.temperature.CandidateCurve;
import org.coldpleat.ui.chart.temperature.TemperatureCharts;
import org.coldpleat.ui.desktop.view.part.PictureLook;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.viewmodel.ShownCandidates;

/** One button a candidate, with a piece of its line, that shows its curve or leaves it out. */
public final class CandidateLegend extends FlowPane {
    private static final double SAMPLE = 30;

    private final ShownCandidates shown;
    private final Runnable changed;
    private final PictureLook look;
    private List<String> names = List.of();

    /**
     * @param changed told when other candidates are to be shown
     * @param look of the pictures
     */
    public CandidateLegend(String id, ShownCandidates shown, Runnable changed, PictureLook look) {
        super(4, 4);
        this.shown = shown;
        this.changed = changed;
        this.look = look;
        setId(id);
    }

    /** Offers the candidates of a chart. The buttons stay, with the keyboard on them, while the names do. */
    public void offer(List<CandidateCurve> curves, UnitSystem units) {
        List<String> fresh = curves.stream().map(CandidateCurve::name).toList();
        if (!fresh.equals(names)) {
            names = fresh;
            getChildren().setAll(curves.stream().map(this::button).toList());
        }
        for (int i = 0; i < names.size(); i++) {
            ((ToggleButton) getChildren().get(i)).setText(TemperatureCharts.legend(curves.get(i), units));
        }
        for (int i = 0; i < names.size(); i++) {
            ((ToggleButton) getChildren().get(i)).setSelected(shown.isShown(names.get(i)));
        }
    }

    private ToggleButton button(CandidateCurve curve) {
        ToggleButton button = new ToggleButton(curve.name(), sample(curve.index()));
        button.setId(getId() + ":" + curve.name());
        button.setAccessibleText(WindowTexts.get("legend.show", curve.name()));
        button.setTooltip(new Tooltip(WindowTexts.get("legend.show", curve.name())));
        button.setOnAction(event -> {
            shown.toggle(curve.name());
            changed.run();
        });
        return button;
    }

    private Line sample(int index) {
        BasicStroke stroke = (BasicStroke) ChartTheme.line(index);
        Line line = new Line(0, 0, SAMPLE, 0);
        line.strokeProperty().bind(look.shown(ChartTheme.color(index)));
        line.setStrokeWidth(stroke.getLineWidth());
        line.setStrokeLineCap(StrokeLineCap.BUTT);
        if (stroke.getDashArray() != null) {
            for (float dash : stroke.getDashArray()) {
                line.getStrokeDashArray().add((double) dash);
            }
        }
        return line;
    }
}
