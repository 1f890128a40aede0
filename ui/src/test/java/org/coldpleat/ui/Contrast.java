package org.coldpleat.ui;

import java.awt.Color;

/** Contrast of two colors. Source: W3C, Web Content Accessibility Guidelines 2.1, relative luminance and contrast ratio. */
public final class Contrast {
    /** Least contrast of text. Source: W3C, Web Content Accessibility Guidelines 2.1, criterion 1.4.3, level AA. */
    public static final double TEXT = 4.5;

    /** Least contrast of what is no text. Source: W3C, Web Content Accessibility Guidelines 2.1, criterion 1.4.11. */
    public static final double OTHER = 3;

    private Contrast() {}

    /** Contrast ratio, from 1 to 21. */
    public static double of(Color one, Color other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    /** A color that lies over a ground with an opacity [0..1]. */
    public static Color over(Color color, Color ground, double opacity) {
        return new Color(
                mixed(color.getRed(), ground.getRed(), opacity),
                mixed(color.getGreen(), ground.getGreen(), opacity),
                mixed(color.getBlue(), ground.getBlue(), opacity));
    }

    private static int mixed(int color, int ground, double opacity) {
        return (int) Math.round(opacity * color + (1 - opacity) * ground);
    }

    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
