package org.coldpleat.ui.show;

import java.awt.image.IndexColorModel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The colors of a GIF: those that cover most first, then the middles of the most common shades between them. */
final class Palette {
    private static final int SIZE = 256;
    private static final int EXACT = 160;
    private static final int SHADE_MASK = 0xF0F0F0;
    private static final int OPAQUE = 0xFF000000;

    private final int[] colors;
    private final Map<Integer, Integer> nearest = new HashMap<>();

    private Palette(int[] colors) {
        this.colors = colors;
    }

    IndexColorModel model() {
        return new IndexColorModel(8, colors.length, colors, 0, false, -1, java.awt.image.DataBuffer.TYPE_BYTE);
    }

    /** Place of the color nearest to one. */
    int index(int rgb) {
        return nearest.computeIfAbsent(rgb | OPAQUE, this::search);
    }

    private int search(int rgb) {
        int best = 0;
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < colors.length; i++) {
            int distance = distance(rgb, colors[i]);
            if (distance < least) {
                least = distance;
                best = i;
            }
        }
        return best;
    }

    /** At most 7 x 255 squared, far below the range of an int. */
    private static int distance(int a, int b) {
        int red = ((a >> 16) & 255) - ((b >> 16) & 255);
        int green = ((a >> 8) & 255) - ((b >> 8) & 255);
        int blue = (a & 255) - (b & 255);
        return 2 * red * red + 4 * green * green + blue * blue;
    }

    /** Counts the colors of pictures. */
    static final class Census {
        private final Map<Integer, Integer> counts = new HashMap<>();

        void add(int[] pixels) {
            for (int pixel : pixels) {
                counts.merge(pixel | OPAQUE, 1, Integer::sum);
            }
        }

        Palette palette() {
            List<Integer> chosen =
                    new ArrayList<>(mostCommon(counts).stream().limit(EXACT).toList());
            Map<Integer, Integer> shades = new HashMap<>();
            counts.forEach(
                    (color, count) -> shades.merge((color & SHADE_MASK) | OPAQUE | 0x080808, count, Integer::sum));
            chosen.forEach(color -> shades.remove((color & SHADE_MASK) | OPAQUE | 0x080808));
            mostCommon(shades).stream().limit(SIZE - chosen.size()).forEach(chosen::add);
            return new Palette(chosen.stream().mapToInt(Integer::intValue).toArray());
        }

        private static List<Integer> mostCommon(Map<Integer, Integer> counts) {
            return counts.entrySet().stream()
                    .sorted(Comparator.comparing((Map.Entry<Integer, Integer> one) -> -one.getValue())
                            .thenComparing(Map.Entry::getKey))
                    .map(Map.Entry::getKey)
                    .toList();
        }
    }
}
