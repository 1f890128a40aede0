package org.coldpleat.model.loading;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;
import org.coldpleat.shared.table.CsvTable;

/**
 * Grades of the standard test dust made from Arizona sand. The three tables come from two kinds of instrument: do not read
 * a small difference between grades as one of the dust.
 */
@Source("ISO 12103-1; where the numbers of each grade come from stands in the head of its table")
@Validity("sizes as the stated instrument saw them; sizes from optical counters calibrated to ISO 11171, um(c), differ")
public enum TestDust {
    /** Fine; limits of the standard from memory, mid values. */
    A2,
    /** Medium, the dust of the multi-pass tests; one measured batch. */
    A3,
    /** Coarse; limits of the standard from memory, mid values. */
    A4;

    /** Density of the grains [kg/m3]. */
    @Source("data sheet of a test-dust maker for grade A1 of ISO 12103-1: substance density 2.65 g/cm3")
    public static final double GRAIN_DENSITY = 2650;

    /** Micrometers in a meter. */
    private static final double MICROMETERS = 1e6;

    /** The size distribution by volume. */
    public ParticleSizes sizes() {
        return Tables.SIZES.get(this);
    }

    /** Read when first asked for. */
    private static final class Tables {
        private static final Map<TestDust, ParticleSizes> SIZES =
                Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Function.identity(), Tables::read));

        private static ParticleSizes read(TestDust grade) {
            double[][] table = CsvTable.columns(
                    TestDust.class,
                    "iso12103_" + grade.name().toLowerCase(Locale.ROOT) + ".csv",
                    "size_um",
                    "passing_percent");
            double[] size = Arrays.stream(table[0]).map(um -> um / MICROMETERS).toArray();
            double[] finer =
                    Arrays.stream(table[1]).map(percent -> percent / 100).toArray();
            return new ParticleSizes(size, finer);
        }
    }
}
