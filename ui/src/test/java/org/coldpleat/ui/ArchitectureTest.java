package org.coldpleat.ui;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
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
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
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

    /** Packages of {@code shared} that every room above may know. */
    private static final List<String> KNOWN_TO_ALL =
            List.of("shared", "shared.source", "shared.notice", "shared.quantity", "shared.table");

    /** Files beyond which a package is a drawer, not a room. */
    private static final int MOST_FILES = 25;

    private static final JavaClasses ALL =
            new ClassFileImporter().withImportOption(new DoNotIncludeTests()).importPackages("org.coldpleat");

    @TestFactory
    Stream<DynamicTest> everyRuleHolds() {
        return Stream.of(
                        SHARED_KNOWS_NOTHING_ABOVE_IT,
                        MODEL_KNOWS_NO_FACE,
                        NO_CYCLES_BETWEEN_ROOMS,
                        PURE_ROOMS_TOUCH_NO_FILES_AND_NO_CLOCK,
                        PURE_ROOMS_DO_NOT_PRINT_OR_READ_THE_CLOCK,
                        RANDOM_NUMBERS_ONLY_WHERE_CERTAINTY_IS_WORKED_OUT,
                        NO_STATIC_STATE_THAT_CHANGES,
                        PUBLIC_SIGNATURES_SHOW_NO_THIRD_PARTY_TYPE,
                        COMMAND_LINE_LOADS_NO_WINDOW,
                        CHART_LIBRARY_STAYS_BEHIND_THE_PICTURES,
                        PICOCLI_STAYS_IN_THE_COMMAND_LINE,
                        NAMES_SAY_WHAT_A_CLASS_IS)
                .map(rule -> dynamicTest(rule.getDescription(), () -> rule.check(ALL)));
    }

    @TestFactory
    Stream<DynamicTest> roomsKnowOnlyWhatTheirLineSays() throws IOException {
        return rooms().entrySet().stream()
                .map(room -> dynamicTest(room.getKey(), () -> {
                    List<String> known = new ArrayList<>(room.getValue());
                    known.add(room.getKey());
                    if (!room.getKey().startsWith("shared")) {
                        known.addAll(KNOWN_TO_ALL);
                    }
                    classes()
                            .that()
                            .resideInAPackage(BASE + room.getKey())
                            .should()
                            .onlyDependOnClassesThat(DescribedPredicate.describe(
                                    "reside in " + known,
                                    one -> !one.getPackageName().startsWith(BASE) || known.contains(nameOf(one))))
                            .allowEmptyShould(true)
                            .check(ALL);
                }));
    }

    @Test
    void everyPackageHasItsLineAndEveryLineItsPackage() throws IOException {
        NavigableSet<String> packages = new TreeSet<>();
        ALL.stream().map(ArchitectureTest::nameOf).forEach(packages::add);
        assertEquals(packages, new TreeSet<>(rooms().keySet()));
    }

    @Test
    void noPackageIsADrawer() throws IOException {
        for (String module : List.of("shared", "model", "ui", "validation")) {
            try (Stream<Path> all = Files.walk(Path.of("..", module, "src", "main", "java"))) {
                Map<Path, Long> files = all.filter(one -> one.toString().endsWith(".java"))
                        .collect(groupingBy(Path::getParent, counting()));
                files.forEach((folder, count) -> assertTrue(count <= MOST_FILES, folder + " has " + count + " files"));
            }
        }
    }

    /** The lines of the table: room to all rooms it may know, stars written out. */
    private static Map<String, List<String>> rooms() throws IOException {
        Map<String, List<String>> rooms = new LinkedHashMap<>();
        for (String line : Files.readAllLines(Path.of("src/test/resources/org/coldpleat/ui/rooms.txt"))) {
            if (line.contains("->")) {
                String[] sides = line.split("->", -1);
                String known = sides[1].strip();
                rooms.put(sides[0].strip(), known.isEmpty() ? List.of() : List.of(known.split(" +")));
            }
        }
        Set<String> names = Set.copyOf(rooms.keySet());
        rooms.replaceAll((room, known) ->
                known.stream().flatMap(one -> writtenOut(one, names)).toList());
        return rooms;
    }

    private static Stream<String> writtenOut(String known, Set<String> names) {
        if (!known.endsWith("*")) {
            assertTrue(names.contains(known), known + " is no package");
            return Stream.of(known);
        }
        String top = known.substring(0, known.length() - 1);
        return names.stream().filter(one -> one.equals(top) || one.startsWith(top + "."));
    }

    private static String nameOf(JavaClass one) {
        return one.getPackageName().substring(BASE.length());
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

    private static final ArchRule NO_CYCLES_BETWEEN_ROOMS =
            slices().matching(BASE + "(**)").should().beFreeOfCycles().allowEmptyShould(true);

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

    private static final ArchRule RANDOM_NUMBERS_ONLY_WHERE_CERTAINTY_IS_WORKED_OUT = noClasses()
            .that()
            .resideInAPackage("org.coldpleat..")
            .and()
            .resideOutsideOfPackage(BASE + "model.certainty..")
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
            .areDeclaredInClassesThat()
            .resideOutsideOfPackage(BASE + "model.numerics..")
            .and()
            .arePublic()
            .should(showOnlyOwnAndPlatformTypes())
            .allowEmptyShould(true)
            .because("only the room of the numerics speaks to the numerics library");

    private static final ArchRule COMMAND_LINE_LOADS_NO_WINDOW = noClasses()
            .that()
            .resideInAnyPackage(
                    BASE + "ui.commandline..",
                    BASE + "ui.text..",
                    BASE + "ui.service..",
                    BASE + "ui.chart..",
                    BASE + "ui.report..",
                    BASE + "ui.show..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx..", BASE + "ui.desktop..");

    private static final ArchRule CHART_LIBRARY_STAYS_BEHIND_THE_PICTURES = noClasses()
            .that()
            .resideInAnyPackage(BASE + "ui.commandline..", BASE + "ui.text..")
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
