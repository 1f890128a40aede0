package org.coldpleat.model.oil.grade;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coldpleat.shared.source.Source;

/**
 * A viscosity grade of industrial oils, such as {@code ISO VG 46}: the middle of its range of kinematic viscosity at 40
 * degrees C, which reaches 10 % to either side.
 *
 * @param middle viscosity that names it [mm2/s], one of the series
 */
@Source("ISO 3448 (from memory)")
public record IsoGrade(int middle) implements ViscosityGrade {
    private static final Set<Integer> SERIES =
            Set.of(2, 3, 5, 7, 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200, 3200);

    private static final Pattern WRITTEN = Pattern.compile("(?:ISO-?VG|ISO|VG)-?(\\d{1,4})");

    /** How far the range reaches to either side, as a share of the middle [1]. */
    private static final double REACH = 0.10;

    private static final double ROUNDING = 1e-9;

    public IsoGrade {
        if (!SERIES.contains(middle)) {
            throw new IllegalArgumentException("ISO 3448 has no grade " + middle);
        }
    }

    /** Reads a grade; {@code ISO VG 46}, {@code iso-vg46}, {@code VG 46} are the same. Empty if the series lacks it. */
    public static Optional<IsoGrade> parse(String text) {
        Matcher matcher = WRITTEN.matcher(text.toUpperCase(Locale.ROOT).replaceAll("\\s", ""));
        return matcher.matches()
                ? Optional.of(Integer.valueOf(matcher.group(1)))
                        .filter(SERIES::contains)
                        .map(IsoGrade::new)
                : Optional.empty();
    }

    /** Least kinematic viscosity at 40 degrees C [m2/s], inclusive. */
    public double minViscosity40() {
        return middle * (1 - REACH) / 1e6;
    }

    /** Greatest kinematic viscosity at 40 degrees C [m2/s], inclusive. */
    public double maxViscosity40() {
        return middle * (1 + REACH) / 1e6;
    }

    /** True if a kinematic viscosity at 40 degrees C [m2/s] lies in the range of the grade, but for rounding. */
    public boolean holds(double viscosity40) {
        return viscosity40 >= minViscosity40() * (1 - ROUNDING) && viscosity40 <= maxViscosity40() * (1 + ROUNDING);
    }

    @Override
    public String label() {
        return "ISO VG " + middle;
    }

    @Override
    public boolean isMultigrade() {
        return false;
    }
}
