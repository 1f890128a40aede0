package org.coldpleat.ui.desktop.view.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.temperature.RunCharts;
import org.coldpleat.ui.chart.temperature.StateSheet;
import org.coldpleat.ui.chart.temperature.TemperatureCharts;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;

/**
 * Works a case out and draws it once for nobody while the toolkit of the window starts. What takes long the first time, such
 * as reading classes and fonts, is done then, and the first chart in the window comes sooner.
 */
public final class FirstDrawing {
    private static final int WIDTH = 800;
    private static final int HEIGHT = 600;

    private FirstDrawing() {}

    /** Begins beside whatever else is done; what goes wrong is met again by the window, which has words for it. */
    public static void begin(CaseService service, Path file) {
        Thread drawing =
                new Thread(() -> service.open(file).opened().ifPresent(opened -> draw(opened)), "first drawing");
        drawing.setDaemon(true);
        drawing.setUncaughtExceptionHandler((thread, problem) -> {});
        drawing.start();
    }

    private static void draw(OpenedCase opened) {
        StateSheet sheet =
                RunCharts.sheet(opened.quickCurves(opened.states().get(0)).now());
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g2 = image.createGraphics();
        Rectangle2D area = new Rectangle2D.Double(0, 0, WIDTH, HEIGHT);
        TemperatureCharts.pressure(sheet, UnitSystem.METRIC).draw(g2, area);
        TemperatureCharts.share(sheet, UnitSystem.METRIC).draw(g2, area);
        g2.dispose();
    }
}
