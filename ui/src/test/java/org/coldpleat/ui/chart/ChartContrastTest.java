package org.coldpleat.ui.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.Arrays;
import org.coldpleat.ui.Contrast;
import org.coldpleat.ui.chart.style.ChartTheme;
import org.junit.jupiter.api.Test;

/** Charts can be read: their text stands out, and no candidate is told by its color alone. */
class ChartContrastTest {
    @Test
    void contrastIsThatOfTheGuidelines() {
        // black on white is 21, a color on itself 1: W3C, Web Content Accessibility Guidelines 2.1
        assertEquals(21, Contrast.of(Color.BLACK, Color.WHITE), 1e-9);
        assertEquals(1, Contrast.of(Color.PINK, Color.PINK), 1e-9);
        assertTrue(Contrast.of(new Color(0x777777), Color.WHITE) < Contrast.TEXT);
    }

    @Test
    void textOfChartsStandsOut() {
        assertTrue(Contrast.of(ChartTheme.INK, ChartTheme.PAPER) >= Contrast.TEXT);
        Color ground =
                Contrast.over(ChartTheme.LABEL_GROUND, ChartTheme.shade(7), ChartTheme.LABEL_GROUND.getAlpha() / 255.0);
        assertTrue(Contrast.of(ChartTheme.INK, ground) >= Contrast.TEXT, ground.toString());
    }

    @Test
    void everyCandidateStandsOutFromThePaper() {
        for (int i = 0; i < 8; i++) {
            double contrast = Contrast.of(ChartTheme.color(i), ChartTheme.PAPER);
            assertTrue(contrast >= Contrast.OTHER, "candidate " + i + ": " + contrast);
        }
    }

    @Test
    void neighborsDifferInDashAndMarker() {
        for (int i = 0; i < 40; i++) {
            float[] one = ((BasicStroke) ChartTheme.line(i)).getDashArray();
            float[] other = ((BasicStroke) ChartTheme.line(i + 1)).getDashArray();
            assertTrue(!Arrays.equals(one, other), "line " + i);
            assertNotEquals(ChartTheme.marker(i), ChartTheme.marker(i + 1), "marker " + i);
        }
    }
}
