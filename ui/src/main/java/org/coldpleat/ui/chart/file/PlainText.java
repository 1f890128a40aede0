package org.coldpleat.ui.chart.file;

/** Makes text of a case fit to be shown. */
public final class PlainText {
    private PlainText() {}

    /**
     * Text without characters that steer a reader or a display instead of being read: control characters, marks that
     * override the direction of writing, halves of characters.
     */
    public static String of(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            boolean plain = c == '\n' || c == '\t' || !Character.isISOControl(c);
            boolean half = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
            boolean noCharacter = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
            if (!plain || half || noCharacter) {
                kept.append('\uFFFD');
            } else if (!steers(c)) {
                kept.appendCodePoint(c);
            }
        });
        return kept.toString();
    }

    private static boolean steers(int c) {
        return (c >= 0x202A && c <= 0x202E)
                || (c >= 0x2066 && c <= 0x2069)
                || c == 0x200E
                || c == 0x200F
                || c == 0x061C;
    }
}
