package org.coldpleat.model.loading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.TreeSet;
import org.coldpleat.model.loading.multipass.MultiPassSetup;
import org.coldpleat.model.loading.multipass.MultiPassTest;
import org.coldpleat.model.loading.sump.Leak;
import org.coldpleat.model.loading.sump.SumpFlows;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.Shown;
import org.junit.jupiter.api.Test;

class LoadingNoticesTest {
    private static final ResourceBundle TEXTS =
            ResourceBundle.getBundle("org.coldpleat.shared.notice.notices", Locale.ROOT);

    @Test
    void everyFindingHasATextThatUsesAllItsValues() {
        for (Notice notice : notices()) {
            String pattern = TEXTS.getString(notice.code());
            for (int i = 0; i < notice.values().size(); i++) {
                assertTrue(pattern.contains("{" + i + "}"), notice.code() + " drops value " + i);
            }
            String text = new MessageFormat(pattern, Locale.ROOT)
                    .format(notice.values().stream().map(Shown::text).toArray());
            assertFalse(text.contains("{"), text);
        }
    }

    @Test
    void everyTextOfLoadingBelongsToAFinding() {
        TreeSet<String> codes = new TreeSet<>();
        notices().forEach(notice -> codes.add(notice.code()));
        TreeSet<String> keys = new TreeSet<>();
        TEXTS.keySet().stream().filter(key -> key.startsWith("loading.")).forEach(keys::add);
        assertEquals(codes, keys);
    }

    private static List<Notice> notices() {
        List<Notice> all = new ArrayList<>();
        all.add(TypicalCapacity.BLEND.notice("Blue can"));
        all.add(BlockingLaw.exponentAssumed("Blue can"));
        all.addAll(CaptureEstimate.from(new RatingPair(20e-6, 0.965)).notices("Blue can", 4e-6));
        BlockingLaw complete = new BlockingLaw(2, 20);
        all.addAll(ElementLoad.clean(0.1, 1).deposit(new double[] {0.0048}).notices(complete, "Blue can"));
        MultiPassSetup setup = new MultiPassSetup(
                SizeClasses.single(20e-6),
                new double[] {1},
                TestDust.GRAIN_DENSITY,
                new double[] {0.9},
                SumpFlows.of(0.01, 3e-4, 0),
                1e-6,
                complete,
                0.1,
                5e3,
                1e5,
                Leak.NONE,
                new double[] {19.99e-6});
        all.addAll(MultiPassTest.run(setup, 10, 100).notices("Blue can"));
        return all;
    }
}
