package org.coldpleat.ui.desktop.view.part;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import org.coldpleat.ui.Contrast;
import org.coldpleat.ui.chart.style.ChartTheme;
import org.junit.jupiter.api.Test;

/** A picture turned for dark ground can be read like the one on paper. */
class DarkPictureTest {
    private static Color turned(Color color) {
        return new Color(DarkPicture.turned(color.getRGB()));
    }

    @Test
    void paperBecomesTheGroundOfTheDarkWindow() {
        assertEquals(new Color(0x1d2023), turned(Color.WHITE));
    }

    @Test
    void inkStandsOutAsText() {
        double contrast = Contrast.of(turned(Color.BLACK), turned(Color.WHITE));
        assertTrue(contrast >= Contrast.TEXT, "contrast " + contrast);
    }

    @Test
    void everyCandidateStandsOutFromTheGround() {
        for (int i = 0; i < 8; i++) {
            double contrast = Contrast.of(turned(ChartTheme.color(i)), turned(Color.WHITE));
            assertTrue(contrast >= Contrast.OTHER, "candidate " + i + ": " + contrast);
        }
    }

    @Test
    void hueStaysAndLightnessIsExchanged() {
        // pure hues are as light as they are dark, so turning moves them only onto the ground
        Color blue = turned(new Color(0x0072B2));
        assertTrue(blue.getBlue() > blue.getGreen() && blue.getGreen() > blue.getRed(), blue.toString());
        assertTrue(turned(new Color(0x202020)).getRed()
                > turned(new Color(0x404040)).getRed());
    }

    @Test
    void emptyStaysEmptyAndRunsOfOneColorAreTurnedAsSingleOnes() {
        int[] pixels = {0, -1, -1, 0xFF0072B2, 0xFF0072B2, 0, 0x800072B2};
        int[] expected = new int[pixels.length];
        for (int i = 0; i < pixels.length; i++) {
            expected[i] = DarkPicture.turned(pixels[i]);
        }
        DarkPicture.turn(pixels);
        assertArrayEquals(expected, pixels);
        assertEquals(0, pixels[0]);
        assertEquals(0x80, pixels[6] >>> 24);
    }
}
