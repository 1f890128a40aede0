package org.coldpleat.ui.desktop.view.part;

/**
 * Turns a picture for light ground into one for dark ground. Every color keeps its hue and its distance from gray and
 * changes its lightness for the opposite one, so that what was told apart stays apart and white paper becomes the ground
 * of the dark window.
 */
public final class DarkPicture {
    private static final int FULL = 255;

    /** The ground, which white becomes. */
    private static final int[] GROUND = {29, 32, 35};

    /** What black becomes. */
    private static final int BRIGHTEST = 240;

    private DarkPicture() {}

    /** Turns all pixels (alpha, red, green, blue from the highest byte) that are not empty. */
    public static void turn(int[] pixels) {
        int last = FULL << 24 | FULL << 16 | FULL << 8 | FULL;
        int turned = turned(last);
        for (int i = 0; i < pixels.length; i++) {
            if (pixels[i] != last) {
                last = pixels[i];
                turned = turned(last);
            }
            pixels[i] = turned;
        }
    }

    /** One color turned; empty stays empty. */
    static int turned(int argb) {
        if (argb >>> 24 == 0) {
            return argb;
        }
        int red = argb >> 16 & FULL;
        int green = argb >> 8 & FULL;
        int blue = argb & FULL;
        // lightness is the mean of the greatest and the least, so this exchanges it for its opposite
        int shift = FULL - Math.max(red, Math.max(green, blue)) - Math.min(red, Math.min(green, blue));
        return (argb & FULL << 24)
                | (onGround(red + shift, 0) << 16)
                | (onGround(green + shift, 1) << 8)
                | onGround(blue + shift, 2);
    }

    private static int onGround(int value, int channel) {
        return GROUND[channel] + value * (BRIGHTEST - GROUND[channel]) / FULL;
    }
}
