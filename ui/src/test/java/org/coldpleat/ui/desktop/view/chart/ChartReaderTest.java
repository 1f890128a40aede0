package org.coldpleat.ui.desktop.view.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.temperature.RunCharts;
import org.coldpleat.ui.chart.temperature.TemperatureCharts;
import org.coldpleat.ui.desktop.view.WindowProbe;
import org.coldpleat.ui.desktop.view.part.PictureLook;
import org.coldpleat.ui.service.FixtureCase;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.junit.jupiter.api.Test;

class ChartReaderTest {
    @Test
    void axesThatFollowEachOtherAreNarrowedOnce() {
        JFreeChart chart = TemperatureCharts.share(
                RunCharts.sheets(FixtureCase.comparison(false)).get(0), UnitSystem.METRIC);
        PicturePane picture = new PicturePane("picture", new PictureLook());
        ChartReader reader = new ChartReader(picture, words -> {}, () -> {});
        reader.take(Optional.of(chart));
        reader.draw(
                new BufferedImage(600, 400, BufferedImage.TYPE_INT_RGB).createGraphics(),
                new Rectangle2D.Double(0, 0, 600, 400));
        picture.getOnKeyPressed().handle(WindowProbe.key(KeyCode.PLUS));
        XYPlot plot = chart.getXYPlot();
        double[] ends = {
            plot.getDomainAxis(0).getLowerBound(), plot.getDomainAxis(0).getUpperBound()
        };
        // of -40 to 120 °C, 80 % round the middle
        assertEquals(-24, ends[0], 1e-9);
        assertEquals(104, ends[1], 1e-9);
        assertEquals(1.8 * ends[0] + 32, plot.getDomainAxis(1).getLowerBound(), 1e-9);
        assertEquals(1.8 * ends[1] + 32, plot.getDomainAxis(1).getUpperBound(), 1e-9);
    }
}
