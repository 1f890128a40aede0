package org.coldpleat.model.oil.grade;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.table.CsvTable;

/** Grades of engine oils and their limits. Limits are fences, never points of a viscosity curve. */
@Source("SAE J300 (2015 table; same numbers in the 2021 and 2024 editions where seen)")
public final class SaeJ300 {
    private static final double TEMPERATURE_MATCH = 0.05;

    private static final List<WinterGrade> WINTER =
            CsvTable.read(SaeJ300.class, "sae_j300_winter.csv", WinterGrade::of);
    private static final List<HotGrade> HOT = CsvTable.read(SaeJ300.class, "sae_j300_hot.csv", HotGrade::of);

    private SaeJ300() {}

    /** Hot grades, thinnest first. */
    public static List<HotGrade> hotGrades() {
        return HOT;
    }

    /** Winter grade by name, such as {@code 5W}. */
    public static Optional<WinterGrade> winter(String name) {
        return WINTER.stream().filter(grade -> grade.name().equals(name)).findFirst();
    }

    /** Hot grade by name, such as {@code 30}. */
    public static Optional<HotGrade> hot(String name) {
        return HOT.stream().filter(grade -> grade.name().equals(name)).findFirst();
    }

    /** The cold limits of a grade, to draw beside a viscosity curve; none for a grade without winter half. */
    public static List<ColdTest> coldLimits(SaeGrade grade) {
        return grade.winter()
                .map(winter -> List.of(
                        new ColdTest(ColdTest.Method.CRANKING, winter.crankingTemperature(), winter.crankingLimit()),
                        new ColdTest(ColdTest.Method.PUMPING, winter.pumpingTemperature(), winter.pumpingLimit())))
                .orElse(List.of());
    }

    /**
     * Coldest winter grade that an oil passes: both cold tests at the temperatures of the grade within its limits, and
     * enough viscosity at 100 degrees C. Empty if no grade has both tests, or none is passed.
     *
     * @param viscosity100 kinematic viscosity at 100 degrees C [m2/s]
     * @param tests cold tests at hand
     */
    public static Optional<WinterGrade> classifyWinter(double viscosity100, List<ColdTest> tests) {
        return WINTER.stream()
                .filter(grade -> viscosity100 >= grade.minViscosity100()
                        && passes(tests, ColdTest.Method.CRANKING, grade.crankingTemperature(), grade.crankingLimit())
                        && passes(tests, ColdTest.Method.PUMPING, grade.pumpingTemperature(), grade.pumpingLimit()))
                .findFirst();
    }

    /**
     * Hot grades that an oil passes; none, one, or two where the ranges overlap.
     *
     * @param viscosity100 kinematic viscosity at 100 degrees C [m2/s]
     * @param highShear high-shear viscosity at 150 degrees C [Pa s], if known
     * @param winter winter grade of the same oil, if any: grade 40 asks less of 0W, 5W and 10W
     */
    public static List<HotGrade> classifyHot(
            double viscosity100, OptionalDouble highShear, Optional<WinterGrade> winter) {
        boolean cold = winter.isPresent() && winter.get().isColdGrade();
        return HOT.stream()
                .filter(grade -> grade.holds(viscosity100))
                .filter(grade -> highShear.isEmpty()
                        || highShear.getAsDouble() >= (cold ? grade.minHighShearCold() : grade.minHighShear()))
                .toList();
    }

    private static boolean passes(List<ColdTest> tests, ColdTest.Method method, double temperature, double limit) {
        return tests.stream()
                .anyMatch(test -> test.method() == method
                        && Math.abs(test.temperature() - temperature) <= TEMPERATURE_MATCH
                        && test.dynamicViscosity() <= limit);
    }
}
