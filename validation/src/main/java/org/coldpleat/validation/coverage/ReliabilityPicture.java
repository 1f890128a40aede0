package org.coldpleat.validation.coverage;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.List;
import java.util.Locale;

/** Stated chances against what was found, as a drawing: on the diagonal the chances are right. */
final class ReliabilityPicture {
    private static final int SIDE = 520;
    private static final int LEFT = 80;
    private static final int TOP = 60;

    private ReliabilityPicture() {}

    /** The drawing of some tenths over a number of teardowns, in SVG 1.1. */
    static String of(List<Coverage.Tenth> tenths, int teardowns) {
        StringBuilder svg = new StringBuilder(4096);
        add(
                svg,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\" font-size=\"15\""
                        + " role=\"img\">",
                SIDE + LEFT + 40,
                SIDE + TOP + 110);
        add(svg, "<title>Stated chances against what was found</title>");
        add(svg, "<rect width=\"100%%\" height=\"100%%\" fill=\"#fff\"/>");
        text(svg, LEFT + SIDE / 2, 34, "middle", "Does \"opens warmer in 70 % of draws\" mean 70 %?");
        for (int i = 0; i <= 5; i++) {
            double part = i / 5.0;
            line(svg, x(part), y(0), x(part), y(1), "#d9d9d9", 1);
            line(svg, x(0), y(part), x(1), y(part), "#d9d9d9", 1);
            text(svg, x(part), y(0) + 22, "middle", Integer.toString(20 * i));
            text(svg, x(0) - 10, y(part) + 5, "end", Integer.toString(20 * i));
        }
        line(svg, x(0), y(0), x(1), y(1), "#1a1a1a", 1.5);
        for (Coverage.Tenth tenth : tenths) {
            if (tenth.count() > 0) {
                point(svg, tenth);
            }
        }
        text(svg, LEFT + SIDE / 2, SIDE + TOP + 48, "middle", "Stated chance that the first filter opens warmer, %");
        add(
                svg,
                "<text x=\"26\" y=\"%1$d\" text-anchor=\"middle\" transform=\"rotate(-90 26 %1$d)\" fill=\"#1a1a1a\">Found, %%"
                        + "</text>",
                TOP + SIDE / 2);
        text(
                svg,
                LEFT + SIDE / 2,
                SIDE + TOP + 76,
                "middle",
                teardowns + " made-up teardowns. Upright lines: where 95 of 100 points would lie");
        text(svg, LEFT + SIDE / 2, SIDE + TOP + 96, "middle", "if the chances were right. Small numbers: pairs.");
        return svg.append("</svg>\n").toString();
    }

    private static void point(StringBuilder svg, Coverage.Tenth tenth) {
        double reach = COVERAGE_95 * tenth.error();
        double low = Math.max(0, tenth.stated() - reach);
        double high = Math.min(1, tenth.stated() + reach);
        double at = x(tenth.stated());
        line(svg, at, y(low), at, y(high), "#0072b2", 2);
        line(svg, at - 6, y(low), at + 6, y(low), "#0072b2", 2);
        line(svg, at - 6, y(high), at + 6, y(high), "#0072b2", 2);
        add(svg, "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"6\" fill=\"#d55e00\"/>", at, y(tenth.found()));
        boolean toTheLeft = tenth.stated() > 0.9;
        add(
                svg,
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" font-size=\"12\" fill=\"#1a1a1a\">%d</text>",
                at + (toTheLeft ? -12 : 12),
                y(tenth.found()) + (toTheLeft ? 18 : 4),
                toTheLeft ? "end" : "start",
                tenth.count());
    }

    private static double x(double part) {
        return LEFT + SIDE * part;
    }

    private static double y(double part) {
        return TOP + SIDE * (1 - part);
    }

    private static void line(
            StringBuilder svg, double x1, double y1, double x2, double y2, String color, double width) {
        add(
                svg,
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\" stroke-width=\"%.1f\"/>",
                x1,
                y1,
                x2,
                y2,
                color,
                width);
    }

    private static void text(StringBuilder svg, double x, double y, String anchor, String words) {
        add(
                svg,
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" fill=\"#1a1a1a\">%s</text>",
                x,
                y,
                anchor,
                words.replace("\"", "&quot;"));
    }

    private static void add(StringBuilder svg, String pattern, Object... values) {
        svg.append(String.format(Locale.ROOT, pattern, values)).append('\n');
    }
}
