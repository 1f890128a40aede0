package org.coldpleat.model.oil.grade;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A grade as printed on a bottle, such as {@code 5W-30} or {@code SAE 30}. At least one half is there.
 *
 * @param winter winter half
 * @param hot hot half
 */
public record SaeGrade(Optional<WinterGrade> winter, Optional<HotGrade> hot) implements ViscosityGrade {
    private static final Pattern WRITTEN = Pattern.compile("(?:SAE)?(?:(\\d+W)-?)?(\\d+)?");

    public SaeGrade {
        Objects.requireNonNull(winter, "winter");
        Objects.requireNonNull(hot, "hot");
        if (winter.isEmpty() && hot.isEmpty()) {
            throw new IllegalArgumentException("a grade needs a winter or a hot half");
        }
    }

    /** Reads a grade; {@code 5w30}, {@code 5W-30}, {@code SAE 5W-30} are the same. Empty if J300 has no such grade. */
    public static Optional<SaeGrade> parse(String text) {
        Matcher matcher = WRITTEN.matcher(text.toUpperCase(Locale.ROOT).replaceAll("[\\s/]", ""));
        if (!matcher.matches() || (matcher.group(1) == null && matcher.group(2) == null)) {
            return Optional.empty();
        }
        Optional<WinterGrade> winter = Optional.ofNullable(matcher.group(1)).flatMap(SaeJ300::winter);
        Optional<HotGrade> hot = Optional.ofNullable(matcher.group(2)).flatMap(SaeJ300::hot);
        boolean unknown = (matcher.group(1) != null && winter.isEmpty()) || (matcher.group(2) != null && hot.isEmpty());
        return unknown ? Optional.empty() : Optional.of(new SaeGrade(winter, hot));
    }

    /** The grade as the trade writes it: {@code 5W-30}, {@code 5W}, {@code 30}. */
    @Override
    public String label() {
        String cold = winter.map(WinterGrade::name).orElse("");
        String warm = hot.map(HotGrade::name).orElse("");
        return cold.isEmpty() || warm.isEmpty() ? cold + warm : cold + "-" + warm;
    }

    @Override
    public boolean isMultigrade() {
        return winter.isPresent() && hot.isPresent();
    }
}
