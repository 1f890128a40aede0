package org.coldpleat.ui.desktop.viewmodel;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import org.coldpleat.model.run.Glance;
import org.coldpleat.ui.chart.RunCharts;
import org.coldpleat.ui.chart.StateSheet;
import org.coldpleat.ui.chart.TemperatureCharts;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.jfree.chart.JFreeChart;

/**
 * Measures the way from a typed value to both redrawn charts: reading and resolving the case, the curves, two drawings
 * of 1280 by 800 pixels in software. Run with the test class path of this module; the argument is a case file.
 */
final class EditToRedraw {
    private static final int WARM_UP = 150;
    private static final int EDITS = 300;
    private static final int WIDTH = 1280;
    private static final int HEIGHT = 800;
    private static final double MILLISECOND = 1e6;
    private static final String[] PARTS = {"read and resolve", "curves", "two charts", "all"};

    private EditToRedraw() {}

    public static void main(String[] arguments) throws IOException {
        CaseService service = CaseService.standard();
        CaseBench bench = CaseBench.open(service, Path.of(arguments[0]));
        double[][] times = new double[PARTS.length][EDITS];
        for (int i = -WARM_UP; i < EDITS; i++) {
            double[] one = edit(service, bench, 40 + Math.floorMod(i, 30));
            for (int part = 0; i >= 0 && part < PARTS.length; part++) {
                times[part][i] = one[part];
            }
        }
        double whole = Arrays.stream(times[PARTS.length - 1]).sum();
        for (int part = 0; part < PARTS.length; part++) {
            double share = Arrays.stream(times[part]).sum() / whole;
            Arrays.sort(times[part]);
            System.out.printf(
                    Locale.ROOT,
                    "%-18s median %6.2f ms   95th percentile %6.2f ms   share %3.0f %%%n",
                    PARTS[part],
                    times[part][EDITS / 2],
                    times[part][EDITS * 95 / 100],
                    100 * share);
        }
    }

    private static double[] edit(CaseService service, CaseBench bench, int pleats) {
        long begun = System.nanoTime();
        bench.edit("candidates[0].pleats.count", Integer.toString(pleats));
        if (!bench.isUnderstood()) {
            throw new IllegalStateException(bench.problems().toString());
        }
        OpenedCase opened = bench.opened().orElseThrow();
        long read = System.nanoTime();
        Glance glance = service.glance(opened, opened.states().get(0));
        long curves = System.nanoTime();
        StateSheet sheet = RunCharts.sheet(glance);
        draw(TemperatureCharts.pressure(sheet));
        draw(TemperatureCharts.share(sheet));
        long drawn = System.nanoTime();
        return new double[] {
            (read - begun) / MILLISECOND,
            (curves - read) / MILLISECOND,
            (drawn - curves) / MILLISECOND,
            (drawn - begun) / MILLISECOND
        };
    }

    private static void draw(JFreeChart chart) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g2 = image.createGraphics();
        chart.draw(g2, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
        g2.dispose();
    }
}
