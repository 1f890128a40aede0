package org.coldpleat.ui.desktop.view.study;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.desktop.view.chart.ChartNumbers;
import org.coldpleat.ui.desktop.view.chart.NumberRow;
import org.coldpleat.ui.desktop.viewmodel.CaseView;
import org.jfree.chart.JFreeChart;

/**
 * A question to a case that takes long to answer.
 *
 * @param key by which its words and its parts in the window are found
 * @param inputs what can be typed into the question
 * @param about what an answer belongs to besides the case, such as the chosen filter; blank if nothing else
 * @param answer the answer; called off the thread of the window
 */
record Study(String key, List<Input> inputs, Function<CaseView, String> about, Asking answer) {
    /**
     * Something that can be typed into a question.
     *
     * @param key by which its words are found
     * @param proposed what stands there first
     */
    record Input(String key, Function<CaseView, String> proposed) {}

    /** Answers a question. */
    interface Asking {
        /**
         * Gives the answer.
         *
         * @param typed what was typed, in the order of the inputs
         * @param progress told how far it is; may end the work
         */
        Answer of(CaseView view, List<String> typed, Progress progress);
    }

    /**
     * A picture of an answer.
     *
     * @param name what to choose it by
     * @param chart draws it anew
     * @param description what it shows, for readers who cannot see it
     * @param numbers what stands in the table behind it
     */
    record Drawn(
            String name,
            Supplier<JFreeChart> chart,
            String description,
            Function<JFreeChart, List<NumberRow>> numbers) {
        /** A picture of curves. */
        Drawn(String name, Supplier<JFreeChart> chart, String description) {
            this(name, chart, description, ChartNumbers::rows);
        }
    }

    /**
     * What came of a question.
     *
     * @param pictures in the units that are asked for; none if there is nothing to draw
     * @param words sentences about the pictures in the units that are asked for, or why there are none
     */
    record Answer(Function<UnitSystem, List<Drawn>> pictures, Function<UnitSystem, String> words) {
        /** Why there is nothing to show. */
        static Answer none(String why) {
            return new Answer(units -> List.of(), units -> why);
        }
    }
}
