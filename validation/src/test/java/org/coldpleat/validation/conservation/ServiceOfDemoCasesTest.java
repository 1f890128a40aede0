package org.coldpleat.validation.conservation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.model.verdict.service.ServiceResult.Moment;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for every service life whatever the data: no outside number. */
class ServiceOfDemoCasesTest {
    static List<Path> cases() throws IOException {
        Path at = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(at.resolve("demo-cases"))) {
            at = at.getParent();
        }
        try (Stream<Path> all = Files.walk(at.resolve("demo-cases"), 2)) {
            return all.filter(file -> file.endsWith("case.yaml")).sorted().toList();
        }
    }

    private static ResolvedCase resolved(Path file) {
        return Simulation.resolve(CaseReader.read(file).document().orElseThrow())
                .resolved()
                .orElseThrow();
    }

    @Test
    void aDemoCaseLoadsOneWay() throws IOException {
        loadsOneWay(halfTheArea());
    }

    @ParameterizedTest
    @Tag("nightly")
    @MethodSource("cases")
    void everyDemoCaseLoadsOneWay(Path file) {
        loadsOneWay(file);
    }

    private static Path halfTheArea() throws IOException {
        return cases().stream()
                .filter(one -> one.getParent().endsWith("half-the-area"))
                .findFirst()
                .orElseThrow();
    }

    private static void loadsOneWay(Path file) {
        ServiceResult result = Simulation.service(resolved(file), OptionalDouble.empty())
                .orElseThrow()
                .now();
        for (ServiceResult.Candidate candidate : result.candidates()) {
            String who = file.getParent().getFileName() + ", " + candidate.name();
            assertTrue(candidate.isComputed(), who);
            // rounding of some ten thousand sums
            assertTrue(candidate.massClosure() < 1e-9, () -> who + ": closure " + candidate.massClosure());
            // half a percent of the oil of a start
            assertTrue(candidate.startError() < 5e-3, () -> who + ": error of starts " + candidate.startError());
            List<Moment> moments = candidate.moments();
            for (int i = 1; i < moments.size(); i++) {
                Moment before = moments.get(i - 1);
                Moment now = moments.get(i);
                String at = who + " at " + now.time() / 3600 + " h";
                assertTrue(now.resistanceRatio() >= before.resistanceRatio(), at);
                assertTrue(now.retained() >= before.retained(), at);
                // the finder places an opening within 0.01 K
                assertTrue(now.openingTemperature() >= before.openingTemperature() - 0.02, at);
                assertTrue(now.winterUnfiltered() >= before.winterUnfiltered() * (1 - 1e-2) - 1e-6, at);
                assertTrue(!(now.ratioLow() > now.resistanceRatio() * (1 + 1e-3)), at);
                assertTrue(!(now.ratioHigh() < now.resistanceRatio() * (1 - 1e-3)), at);
                assertTrue(now.cleanliness().split("/", -1).length == 3, at);
            }
            assertTrue(candidate.last().resistanceRatio() > 2, () -> who + " loads at all");
            order(candidate, who);
        }
    }

    /** The valve opens in a winter start before it opens while warm. */
    private static void order(ServiceResult.Candidate candidate, String who) {
        if (candidate.hotBypass().isPresent() && candidate.winterBypass().isPresent()) {
            assertTrue(
                    candidate.winterBypass().get().time()
                            <= candidate.hotBypass().get().time(),
                    who);
        }
    }

    /** One medium, one bench, half the area: shorter life, and the reasons are said. */
    @Test
    void halfTheAreaFaresWorseForStatedReasons() throws IOException {
        ServiceResult result = Simulation.service(resolved(halfTheArea()), OptionalDouble.empty())
                .orElseThrow()
                .now();
        ServiceResult.Candidate full = named(result, "Full");
        ServiceResult.Candidate half = named(result, "Half");
        double ratio = half.hotBypass().orElseThrow().time()
                / full.hotBypass().orElseThrow().time();
        assertTrue(ratio < 0.5, () -> "life of half the area over that of the whole " + ratio);
        assertTrue(half.winterBypass().orElseThrow().time()
                < full.winterBypass().orElseThrow().time());
        // the full one would take more dirt than its blocking law reaches
        assertTrue(half.hotFactor().closedForm().orElseThrow()
                < full.hotFactor().closedForm().orElseThrow());
        List<String> codes = result.verdicts().stream().map(Verdict::code).toList();
        assertTrue(codes.contains("service.reason.area.earlier"), codes.toString());
        assertTrue(codes.stream().anyMatch(code -> code.startsWith("service.reason.headroom")), codes.toString());
        assertEquals(
                "Half",
                result.verdicts().stream()
                        .filter(one -> one.code().startsWith("service.first"))
                        .findFirst()
                        .orElseThrow()
                        .candidates()
                        .get(0));
    }

    private static ServiceResult.Candidate named(ServiceResult result, String name) {
        return result.candidates().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
