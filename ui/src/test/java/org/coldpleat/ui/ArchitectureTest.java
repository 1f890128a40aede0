package org.coldpleat.ui;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The arrows between the rooms of the house, and what each room may not touch. */
class ArchitectureTest {
    private static final String BASE = "org.coldpleat.";
    private static final String[] PURE = {
        BASE + "model..",
        BASE + "shared.quantity..",
        BASE + "shared.source..",
        BASE + "shared.notice..",
        BASE + "shared.table.."
    };

    /**
     * Which rooms of the model and the faces a room may know; every room may know itself and, below ui, shared; every room
     * of the model may know the numerics.
     */
    private static final Map<String, List<String>> ARROWS = Map.ofEntries(
            Map.entry("model.numerics", List.of()),
            Map.entry("model.flow", List.of()),
            Map.entry("model.oil", List.of("model.flow")),
            Map.entry("model.medium", List.of("model.flow")),
            Map.entry("model.valve", List.of("model.flow")),
            Map.entry("model.pleat", List.of("model.medium", "model.flow")),
            Map.entry("model.filter", List.of("model.pleat", "model.valve", "model.medium", "model.flow")),
            Map.entry("model.circuit", List.of("model.flow", "model.valve")),
            Map.entry(
                    "model.coldstart",
                    List.of("model.circuit", "model.filter", "model.valve", "model.oil", "model.flow")),
            Map.entry(
                    "model.loading",
                    List.of("model.circuit", "model.filter", "model.pleat", "model.medium", "model.oil", "model.flow")),
            Map.entry("model.evidence", List.of("model.pleat", "model.medium", "model.oil", "model.flow")),
            Map.entry("model.explain", List.of()),
            Map.entry("model.sizing", List.of("model.run", "model.confidence", "model.oil")),
            Map.entry(
                    "ui.service",
                    List.of("model.run", "model.explain", "model.confidence", "model.sizing", "model.evidence")),
            Map.entry("ui.chart", List.of("model.run", "model.explain", "model.confidence")),
            Map.entry("ui.report", List.of("ui.chart", "ui.service", "model.run", "model.explain", "model.coldstart")),
            Map.entry(
                    "ui.show",
                    List.of("ui.report", "ui.chart", "ui.service", "model.run", "model.explain", "model.coldstart")),
            Map.entry("ui.lesson", List.of("ui.service", "model.run")),
            Map.entry("ui.desktop.viewmodel", List.of("ui.service")),
            Map.entry(
                    "ui.desktop.view",
                    List.of(
                            "ui.desktop.viewmodel",
                            "ui.service",
                            "ui.lesson",
                            "ui.chart",
                            "ui.commandline",
                            "model.run",
                            "model.explain")),
            Map.entry(
                    "ui.commandline",
                    List.of(
                            "ui.service",
                            "ui.lesson",
                            "ui.chart",
                            "ui.report",
                            "ui.show",
                            "model.run",
                            "model.explain")));

    private static final JavaClasses ALL =
            new ClassFileImporter().withImportOption(new DoNotIncludeTests()).importPackages("org.coldpleat");

    @TestFactory
    Stream<DynamicTest> everyRuleHolds() {
        return Stream.of(
                        SHARED_KNOWS_NOTHING_ABOVE_IT,
                        MODEL_KNOWS_NO_FACE,
                        CASE_FILES_ARE_READ_BY_RUN_AND_FACES_ONLY,
                        NO_CYCLES_BETWEEN_ROOMS,
                        PURE_ROOMS_TOUCH_NO_FILES_AND_NO_CLOCK,
                        PURE_ROOMS_DO_NOT_PRINT_OR_READ_THE_CLOCK,
                        RANDOM_NUMBERS_ONLY_WHERE_CONFIDENCE_IS_WORKED_OUT,
                        NO_STATIC_STATE_THAT_CHANGES,
                        PUBLIC_SIGNATURES_SHOW_NO_THIRD_PARTY_TYPE,
                        COMMAND_LINE_LOADS_NO_WINDOW,
                        CHART_LIBRARY_STAYS_BEHIND_THE_PICTURES,
                        PICOCLI_STAYS_IN_THE_COMMAND_LINE,
                        NAMES_SAY_WHAT_A_CLASS_IS)
                .map(rule -> dynamicTest(rule.getDescription(), () -> rule.check(ALL)));
    }

    @Test
    void roomsKnowOnlyTheRoomsBelowThem() {
        ARROWS.forEach((room, known) -> {
            Stream<String> always = room.startsWith("model.") ? Stream.of(room, "model.numerics") : Stream.of(room);
            String[] allowed = Stream.concat(always, known.stream())
                    .map(name -> BASE + name + "..")
                    .toArray(String[]::new);
            noClasses()
                    .that()
                    .resideInAPackage(BASE + room + "..")
                    .should()
                    .dependOnClassesThat(
                            resideInAnyPackage(BASE + "model..", BASE + "ui..").and(not(resideInAnyPackage(allowed))))
                    .allowEmptyShould(true)
                    .because("the arrows of the house are one way: " + room + " -> " + known)
                    .check(ALL);
        });
    }

    private static final ArchRule SHARED_KNOWS_NOTHING_ABOVE_IT = noClasses()
            .that()
            .resideInAPackage(BASE + "shared..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(BASE + "model..", BASE + "ui..", BASE + "validation..");

    private static final ArchRule MODEL_KNOWS_NO_FACE = noClasses()
            .that()
            .resideInAPackage(BASE + "model..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(BASE + "ui..", BASE + "validation..");

    private static final ArchRule CASE_FILES_ARE_READ_BY_RUN_AND_FACES_ONLY = noClasses()
            .that()
            .resideInAPackage(BASE + "model..")
            .and()
            .resideOutsideOfPackages(BASE + "model.run..", BASE + "model.explain..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage(BASE + "shared.casefile..");

    private static final ArchRule NO_CYCLES_BETWEEN_ROOMS =
            slices().matching(BASE + "(*.*)..").should().beFreeOfCycles().allowEmptyShould(true);

    private static final ArchRule PURE_ROOMS_TOUCH_NO_FILES_AND_NO_CLOCK = noClasses()
            .that()
            .resideInAnyPackage(PURE)
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.nio.file..", "java.net..", "java.time..")
                    .or(forbiddenInputOutput()))
            .because("the model computes; class-path tables are the only thing it reads");

    private static final ArchRule PURE_ROOMS_DO_NOT_PRINT_OR_READ_THE_CLOCK = noClasses()
            .that()
            .resideInAnyPackage(PURE)
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime");

    private static final ArchRule RANDOM_NUMBERS_ONLY_WHERE_CONFIDENCE_IS_WORKED_OUT = noClasses()
            .that()
            .resideInAPackage("org.coldpleat..")
            .and()
            .resideOutsideOfPackage(BASE + "model.confidence..")
            .should()
            .dependOnClassesThat(DescribedPredicate.describe(
                    "make random numbers",
                    c -> c.getName().startsWith("java.util.random.")
                            || c.getName().equals("java.util.Random")
                            || c.getName().equals("java.util.SplittableRandom")
                            || c.getName().equals("java.util.concurrent.ThreadLocalRandom")
                            || c.getName().startsWith("org.hipparchus.random.")));

    private static final ArchRule NO_STATIC_STATE_THAT_CHANGES = noFields()
            .that()
            .areStatic()
            .and()
            .areDeclaredInClassesThat()
            .resideInAnyPackage(BASE + "model..", BASE + "shared..", BASE + "ui.service..", BASE + "ui.chart..")
            .should()
            .notBeFinal();

    private static final ArchRule PUBLIC_SIGNATURES_SHOW_NO_THIRD_PARTY_TYPE = methods()
            .that()
            .areDeclaredInClassesThat()
            .resideInAnyPackage(BASE + "model..", BASE + "shared..")
            .and()
            .arePublic()
            .should(showOnlyOwnAndPlatformTypes())
            .allowEmptyShould(true);

    private static final ArchRule COMMAND_LINE_LOADS_NO_WINDOW = noClasses()
            .that()
            .resideInAnyPackage(
                    BASE + "ui.commandline..",
                    BASE + "ui.service..",
                    BASE + "ui.chart..",
                    BASE + "ui.report..",
                    BASE + "ui.show..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx..", BASE + "ui.desktop..");

    private static final ArchRule CHART_LIBRARY_STAYS_BEHIND_THE_PICTURES = noClasses()
            .that()
            .resideInAPackage(BASE + "ui.commandline..")
            .and()
            .doNotHaveSimpleName("Pictures")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.jfree..", "org.apache.batik..", "java.awt..")
            .because("a run without pictures must start fast");

    private static final ArchRule PICOCLI_STAYS_IN_THE_COMMAND_LINE = noClasses()
            .that(not(resideInAPackage(BASE + "ui.commandline..")))
            .should()
            .dependOnClassesThat()
            .resideInAPackage("picocli..");

    private static final ArchRule NAMES_SAY_WHAT_A_CLASS_IS = classes()
            .that()
            .resideInAPackage("org.coldpleat..")
            .should()
            .haveSimpleNameNotEndingWith("Utils")
            .andShould()
            .haveSimpleNameNotEndingWith("Util")
            .andShould()
            .haveSimpleNameNotEndingWith("Manager")
            .andShould()
            .haveSimpleNameNotEndingWith("Helper");

    private static DescribedPredicate<JavaClass> forbiddenInputOutput() {
        List<String> reading = List.of(
                "java.io.InputStream",
                "java.io.InputStreamReader",
                "java.io.BufferedReader",
                "java.io.Reader",
                "java.io.IOException",
                "java.io.UncheckedIOException",
                "java.io.Serializable");
        return DescribedPredicate.describe(
                "do input or output beyond reading a class-path table",
                c -> c.getPackageName().equals("java.io") && !reading.contains(c.getName()));
    }

    private static ArchCondition<JavaMethod> showOnlyOwnAndPlatformTypes() {
        return new ArchCondition<>("show only own and platform types") {
            @Override
            public void check(JavaMethod method, ConditionEvents events) {
                if (!isSeen(method)) {
                    return;
                }
                List<JavaClass> shown = new ArrayList<>(method.getRawParameterTypes());
                shown.add(method.getRawReturnType());
                for (JavaClass type : shown) {
                    String name = type.getBaseComponentType().getPackageName();
                    boolean own = name.isEmpty() || name.startsWith("java.") || name.startsWith("org.coldpleat.");
                    if (!own) {
                        events.add(SimpleConditionEvent.violated(
                                method, method.getFullName() + " shows " + type.getName()));
                    }
                }
            }
        };
    }

    private static boolean isSeen(JavaMember member) {
        return member.getOwner().getModifiers().contains(JavaModifier.PUBLIC)
                && !member.getModifiers().contains(JavaModifier.SYNTHETIC);
    }
}
