package org.coldpleat.ui.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.coldpleat.model.change.CandidateChange;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.progress.Run;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.junit.jupiter.api.Test;

/** No question is worked out twice as long as what it depends on stays the same. */
class KeptTest {
    private static final Path DEMO = Path.of("../demo-cases/ridge-hut-generator/case.yaml");
    private static final List<Object> QUESTION = List.of("case", "compare");

    private final Kept kept = new Kept();
    private final AtomicInteger worked = new AtomicInteger();

    private Run<String> counting(String answer) {
        return kept.run(QUESTION, progress -> {
            worked.incrementAndGet();
            return progress.cancelled() ? Optional.empty() : Optional.of(answer);
        });
    }

    private static Progress ended(AtomicBoolean end) {
        return new Progress() {
            @Override
            public void done(long evaluations, long total) {}

            @Override
            public boolean cancelled() {
                return end.get();
            }
        };
    }

    @Test
    void sameQuestionIsWorkedOutOnce() {
        assertEquals("first", counting("first").now());
        assertEquals("first", counting("second").now());
        assertEquals(1, worked.get());
    }

    @Test
    void endedRunIsNotKept() {
        assertEquals(Optional.empty(), counting("first").with(ended(new AtomicBoolean(true))));
        assertEquals("second", counting("second").now());
        assertEquals(2, worked.get());
    }

    @Test
    void whoAsksWhileItIsWorkedOutWaitsForItOrGivesUp() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        Run<String> slow = kept.run(QUESTION, progress -> {
            begun.countDown();
            try {
                go.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            return Optional.of("slow");
        });
        CompletableFuture<String> first = CompletableFuture.supplyAsync(slow::now);
        begun.await();
        assertEquals(Optional.empty(), counting("other").with(ended(new AtomicBoolean(true))));
        CompletableFuture<String> second = CompletableFuture.supplyAsync(counting("other")::now);
        go.countDown();
        assertEquals("slow", first.get());
        assertEquals("slow", second.get());
        assertEquals(0, worked.get());
    }

    @Test
    void undoneStepFindsTheAnswersOfBefore() throws Exception {
        CaseService service = CaseService.standard();
        CaseDraft draft =
                CaseDraft.open(DEMO.toString(), Files.readString(DEMO)).draft();
        OpenedCase before = opened(service, draft, Optional.empty());
        OpenedCase edited = opened(service, draft.set("title", "Another"), Optional.of(before));
        OpenedCase undone = opened(service, draft, Optional.of(edited));
        assertSame(before.compare().now(), undone.compare().now());
        assertNotSame(before.compare().now(), edited.compare().now());
        assertEquals("Another", edited.compare().now().title());
    }

    @Test
    void changedFilterHasAnswersOfItsOwn() {
        OpenedCase opened = CaseService.standard().open(DEMO).opened().orElseThrow();
        String name = opened.candidates().get(0);
        CandidateChange change = CandidateChange.NONE.timesOpening(1.5);
        OpenedCase changed = opened.changed(name, change).orElseThrow();
        assertNotSame(opened.map(name).now(), changed.map(name).now());
        assertSame(
                changed.map(name).now(),
                opened.changed(name, change).orElseThrow().map(name).now());
    }

    private static OpenedCase opened(CaseService service, CaseDraft draft, Optional<OpenedCase> before) {
        return service.openDraft(DEMO.toString(), draft, before).opened().orElseThrow();
    }
}
