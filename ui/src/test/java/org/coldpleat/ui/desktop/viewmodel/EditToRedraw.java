package org.coldpleat.ui.desktop.viewmodel;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.IntFunction;
import org.coldpleat.model.change.CandidateChange;
import org.coldpleat.model.steady.QuickCurves;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.temperature.CandidateCurve;
import org.coldpleat.ui.chart.temperature.RunCharts;
import org.coldpleat.ui.chart.temperature.StateSheet;
import org.coldpleat.ui.chart.temperature.TemperatureCharts;
import org.coldpleat.ui.chart.temperature.TriedCurve;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Trials;
import org.coldpleat.ui.service.TriedOut;
import org.jfree.chart.JFreeChart;

/**
 * Measures the way from a typed value to both redrawn charts: reading and resolving the case, the curves, two drawings
 * of 1280 by 800 pixels in software; and the same for a slider that tries a value on the first candidate. Run with the test class path of this module; the argument is a case file.
 */
final class EditToRedraw {
    private static final int WARM_UP = 150;
    private static final int EDITS = 300;
    private static final int WIDTH = 1280;
    private static final int HEIGHT = 800;
    private static final double MILLISECOND = 1e6;
    private static final double HOURS = 100 * 3600.0;
    private static final String[] EDIT = {"read and resolve", "curves", "two charts", "all"};
    private static final String[] DRAG = {"turn", "change and curves", "two charts", "all"};

    private EditToRedraw() {}

    public static void main(String[] arguments) throws IOException {
        CaseBench bench = CaseBench.open(CaseService.standard(), Path.of(arguments[0]));
        System.out.println("a typed value");
        measure(EDIT, i -> edit(bench, 40 + Math.floorMod(i, 30)));
        Trials trials = new Trials();
        OpenedCase opened = bench.opened().orElseThrow();
        String state = opened.states().get(0);
        WhatIf whatIf = WhatIf.of(opened, 0, opened.present(opened.candidates().get(0)), state);
        StateSheet sheet = RunCharts.sheet(opened.quickCurves(state).now());
        for (Knob knob : whatIf.knobs()) {
            System.out.println("a slider: " + knob.key());
            measure(DRAG, i -> drag(trials, bench, whatIf, knob, sheet, Math.floorMod(i, 30) / 29.0));
        }
    }

    private static void measure(String[] names, IntFunction<double[]> change) {
        double[][] times = new double[names.length][EDITS];
        for (int i = -WARM_UP; i < EDITS; i++) {
            double[] one = change.apply(i);
            for (int part = 0; i >= 0 && part < names.length; part++) {
                times[part][i] = one[part];
            }
        }
        double whole = Arrays.stream(times[names.length - 1]).sum();
        for (int part = 0; part < names.length; part++) {
            double share = Arrays.stream(times[part]).sum() / whole;
            Arrays.sort(times[part]);
            System.out.printf(
                    Locale.ROOT,
                    "  %-18s median %6.2f ms   95th percentile %6.2f ms   share %3.0f %%%n",
                    names[part],
                    times[part][EDITS / 2],
                    times[part][EDITS * 95 / 100],
                    100 * share);
        }
    }

    private static double[] drag(
            Trials trials, CaseBench bench, WhatIf whatIf, Knob knob, StateSheet sheet, double part) {
        OpenedCase opened = bench.opened().orElseThrow();
        long begun = System.nanoTime();
        // a range that the element survives, else there would be no curve to draw
        boolean hours = knob.key().equals(WhatIf.HOURS);
        WhatIf tried = whatIf.turn(knob.key(), hours ? part * HOURS : (0.7 + 0.6 * part) * knob.base());
        CandidateChange moved = tried.change();
        long written = System.nanoTime();
        TriedOut out =
                trials.out(opened, moved, opened.candidates().get(0), sheet.state(), sheet.from(), tried.inService());
        long worked = System.nanoTime();
        CandidateCurve curve = RunCharts.curve(0, out.after().orElseThrow().curve(), sheet.from(), sheet.to());
        JFreeChart pressure = TemperatureCharts.pressure(sheet, UnitSystem.METRIC);
        TriedCurve.pressure(pressure, curve, UnitSystem.METRIC);
        draw(pressure);
        JFreeChart share = TemperatureCharts.share(sheet, UnitSystem.METRIC);
        TriedCurve.share(share, curve, UnitSystem.METRIC);
        draw(share);
        long drawn = System.nanoTime();
        return parts(begun, written, worked, drawn);
    }

    private static double[] parts(long begun, long first, long second, long end) {
        return new double[] {
            (first - begun) / MILLISECOND,
            (second - first) / MILLISECOND,
            (end - second) / MILLISECOND,
            (end - begun) / MILLISECOND
        };
    }

    private static double[] edit(CaseBench bench, int pleats) {
        long begun = System.nanoTime();
        bench.edit("candidates[0].pleats.count", Integer.toString(pleats));
        if (!bench.isUnderstood()) {
            throw new IllegalStateException(bench.problems().toString());
        }
        OpenedCase opened = bench.opened().orElseThrow();
        long read = System.nanoTime();
        QuickCurves quickCurves = opened.quickCurves(opened.states().get(0)).now();
        long curves = System.nanoTime();
        StateSheet sheet = RunCharts.sheet(quickCurves);
        draw(TemperatureCharts.pressure(sheet, UnitSystem.METRIC));
        draw(TemperatureCharts.share(sheet, UnitSystem.METRIC));
        long drawn = System.nanoTime();
        return parts(begun, read, curves, drawn);
    }

    private static void draw(JFreeChart chart) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g2 = image.createGraphics();
        chart.draw(g2, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
        g2.dispose();
    }
}
