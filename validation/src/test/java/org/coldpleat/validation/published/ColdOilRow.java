package org.coldpleat.validation.published;

import java.util.List;
import java.util.stream.Collectors;
import org.coldpleat.model.oil.Anchor;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.OilResolver;
import org.coldpleat.model.oil.OilSpec;
import org.coldpleat.model.oil.curve.WaltherCurve;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.table.CsvTable;
import org.coldpleat.validation.reference.MineralBias;

/**
 * Two points of an oil and a third one that is to be predicted from them.
 *
 * @param name of the oil
 * @param inFit true if the law was fitted to this oil
 * @param celsius1 temperature of the colder of the two [degrees C]
 * @param viscosity1 kinematic viscosity there [mm2/s]
 * @param celsius2 temperature of the warmer of the two [degrees C]
 * @param viscosity2 kinematic viscosity there [mm2/s]
 * @param celsius temperature of the third [degrees C]
 * @param viscosity kinematic viscosity there [mm2/s]
 */
record ColdOilRow(
        String name,
        boolean inFit,
        double celsius1,
        double viscosity1,
        double celsius2,
        double viscosity2,
        double celsius,
        double viscosity) {
    private static final double K = 273.15;

    /** Any density does: nothing here is dynamic [kg/m3]. */
    private static final double DENSITY = 880;

    static List<ColdOilRow> minerals() {
        return read("cold_mineral_oils.csv");
    }

    static List<ColdOilRow> coldPairs() {
        return read("two_cold_points.csv");
    }

    private static List<ColdOilRow> read(String file) {
        return CsvTable.read(
                ColdOilRow.class,
                "/org/coldpleat/validation/oil/" + file,
                row -> new ColdOilRow(
                        row.text("oil"),
                        row.text("fit").equals("yes"),
                        row.number("celsius1"),
                        row.number("viscosity1"),
                        row.number("celsius2"),
                        row.number("viscosity2"),
                        row.number("celsius"),
                        row.number("viscosity")));
    }

    /** Least squares over the biases of single oils. */
    static MineralBias bias(List<ColdOilRow> rows) {
        List<List<ColdOilRow>> oils = List.copyOf(
                rows.stream().collect(Collectors.groupingBy(ColdOilRow::name)).values());
        double[] viscosities40 = oils.stream()
                .mapToDouble(oil -> 1e6 * oil.get(0).line().kinematicViscosity(40 + K))
                .toArray();
        double[] biases = oils.stream()
                .mapToDouble(oil -> MineralBias.ofOil(
                        oil.stream().mapToDouble(ColdOilRow::celsius).toArray(),
                        oil.stream().mapToDouble(ColdOilRow::lnMissed).toArray()))
                .toArray();
        return MineralBias.fittedTo(viscosities40, biases);
    }

    String place() {
        return name + ", " + celsius + " °C";
    }

    double temperature() {
        return celsius + K;
    }

    /** The oil of the two points as the program understands them. */
    Oil oil() {
        return OilResolver.resolve(OilSpec.ofPoints(
                                name,
                                Anchor.of(
                                        Anchor.Method.KINEMATIC, celsius1 + K, viscosity1 * 1e-6, Provenance.PUBLISHED),
                                Anchor.of(
                                        Anchor.Method.KINEMATIC, celsius2 + K, viscosity2 * 1e-6, Provenance.PUBLISHED))
                        .withDensity(DENSITY, 15 + K))
                .orThrow();
    }

    /** The plain Walther line through the two points. */
    WaltherCurve line() {
        return WaltherCurve.through(celsius1 + K, viscosity1 * 1e-6, celsius2 + K, viscosity2 * 1e-6);
    }

    /** Kinematic viscosity [mm2/s] at a temperature [degrees C] by the two points with a bias taken off and put on again. */
    double readUpward(double beta, double at) {
        WaltherCurve unbiased = WaltherCurve.through(
                celsius1 + K,
                viscosity1 * 1e-6 * Math.exp(beta * MineralBias.growth(celsius1)),
                celsius2 + K,
                viscosity2 * 1e-6 * Math.exp(beta * MineralBias.growth(celsius2)));
        return 1e6 * unbiased.kinematicViscosity(at + K) * Math.exp(-beta * MineralBias.growth(at));
    }

    /** ln of what the plain line gives over what was measured [1]. */
    double lnMissed() {
        return Math.log(line().kinematicViscosity(temperature()) * 1e6 / viscosity);
    }

    /** 95 % half-width of ln viscosity of an oil at this temperature, toward the side on which the value lies [1]. */
    double reach(Oil oil) {
        boolean thicker = viscosity * 1e-6 > oil.kinematicViscosity(temperature());
        return 1.96 * (thicker ? oil.band().thicker(temperature()) : oil.band().thinner(temperature()));
    }
}
