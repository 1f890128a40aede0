package org.coldpleat.model.oil;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.oil.curve.BiasedWaltherCurve;
import org.coldpleat.shared.source.Source;

/**
 * The curve through two points by the class of the oil, and the curves of the other classes it may belong to. The class is
 * told by the viscosity index: mineral below 120, with polymer to 250, very high above. The index is taken with a doubt of
 * 5, and with points below 40 degrees C with that of the class itself, since such points tell it poorly: a heavy mineral
 * oil and a multigrade can have the same two cold viscosities.
 *
 * @param members the classes with their curves, the likeliest first; at least one
 */
record ClassedLine(List<ClassCurve> members) {
    @Source("derived here; limits chosen with the oils of the classes in view")
    private static final double POLYMER_FROM = 120;

    /** The same of an oil that its maker calls mineral without improver: some are refined to 130. */
    @Source("common practice, no source")
    private static final double POLYMER_FROM_IF_MINERAL = 130;

    @Source("derived here; limits chosen with the oils of the classes in view")
    private static final double HIGH_FROM = 250;

    /** Index by which an oil may lie beyond the limit of its class [1]. */
    @Source("common practice, no source")
    private static final double INDEX_DOUBT = 5;

    ClassedLine {
        members = List.copyOf(members);
        if (members.isEmpty()) {
            throw new IllegalArgumentException("a line needs at least one class");
        }
    }

    /** A class with the indices it reaches from and to [1]. */
    private record Range(ColdClass coldClass, double from, double to) {
        boolean has(double index) {
            return index >= from && index < to;
        }

        boolean touches(double least, double greatest) {
            return greatest >= from && least < to;
        }
    }

    /** The line by the index of the points and what is said of the oil. */
    static ClassedLine of(LinePair pair, ColdHint hint) {
        List<ClassCurve> members = new ArrayList<>();
        boolean sure = false;
        for (Range range : ranges(hint)) {
            Optional<ClassCurve> member = ClassCurve.of(pair, range.coldClass());
            OptionalDouble index =
                    member.isPresent() ? StatedIndex.of(member.get().curve()) : OptionalDouble.empty();
            if (index.isPresent() && reaches(range, member.get(), index.getAsDouble())) {
                boolean own = range.has(index.getAsDouble());
                members.add(own && !sure ? 0 : members.size(), member.get());
                sure |= own;
            }
        }
        if (hint.isMultigrade() && members.stream().anyMatch(member -> member.coldClass() == ColdClass.POLYMER)) {
            members.removeIf(member -> member.coldClass() == ColdClass.MINERAL);
        }
        return members.isEmpty() ? ofUnknown(pair) : new ClassedLine(members);
    }

    /** The line of an oil of which no class is known. */
    static ClassedLine ofUnknown(LinePair pair) {
        return new ClassedLine(List.of(ClassCurve.of(pair, ColdClass.UNKNOWN).orElseThrow()));
    }

    private static List<Range> ranges(ColdHint hint) {
        Range high = new Range(ColdClass.HIGH_INDEX, HIGH_FROM, Double.POSITIVE_INFINITY);
        if (hint.isStraight(OilBase.SYNTHETIC)) {
            return List.of(new Range(ColdClass.SYNTHETIC, Double.NEGATIVE_INFINITY, HIGH_FROM), high);
        }
        double polymer = hint.isStraight(OilBase.MINERAL) ? POLYMER_FROM_IF_MINERAL : POLYMER_FROM;
        return List.of(
                new Range(ColdClass.MINERAL, Double.NEGATIVE_INFINITY, polymer),
                new Range(ColdClass.POLYMER, polymer, HIGH_FROM),
                high);
    }

    private static boolean reaches(Range range, ClassCurve member, double index) {
        double least = index;
        double greatest = index;
        for (BiasedWaltherCurve beside : member.besides()) {
            double other = StatedIndex.of(beside).orElse(index);
            least = Math.min(least, other);
            greatest = Math.max(greatest, other);
        }
        return range.touches(least - INDEX_DOUBT, greatest + INDEX_DOUBT);
    }

    /** Curve of the likeliest class. */
    BiasedWaltherCurve curve() {
        return members.get(0).curve();
    }

    /** Half-width of ln(n) toward thicker oil [1] at a temperature [K]: as far as any class reaches. */
    double thicker(double temperature) {
        return reach(temperature, 1);
    }

    /** Half-width of ln(n) toward thinner oil [1] at a temperature [K]. */
    double thinner(double temperature) {
        return reach(temperature, -1);
    }

    private double reach(double temperature, int side) {
        double lnCentral = Math.log(curve().kinematicViscosity(temperature));
        double reach = 0;
        for (ClassCurve member : members) {
            double apart = side * (Math.log(member.curve().kinematicViscosity(temperature)) - lnCentral);
            reach = Math.max(reach, apart + member.halfWidth(temperature, side));
        }
        return reach;
    }
}
