package org.coldpleat.ui.commandline.explain;

import java.util.OptionalDouble;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.lesson.Lesson;
import org.coldpleat.ui.lesson.LessonStep;
import org.coldpleat.ui.lesson.Turned;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.CompareText;
import org.coldpleat.ui.text.Table;
import org.coldpleat.ui.text.Texts;

/** The lesson as a page for a terminal, in pieces, so that a prediction can be made in between. */
final class LessonText {
    private static final String INDENT = "   ";

    private LessonText() {}

    static String head(OpenedCase opened) {
        String title = Texts.get(opened.invented() ? "lesson.headInvented" : "lesson.head", opened.title());
        return title + System.lineSeparator();
    }

    static String question(int place, Lesson.Told told) {
        StringBuilder text = new StringBuilder();
        line(text, place + ". " + told.title());
        wrapped(text, told.question());
        return text.toString();
    }

    static String turned(LessonStep step, Turned range, double value, UnitSystem units) {
        StringBuilder text = new StringBuilder();
        wrapped(text, Lesson.turned(step, range, value, units));
        return text.toString();
    }

    static String answer(Lesson.Told told, OptionalDouble guess) {
        StringBuilder text = new StringBuilder();
        if (guess.isPresent() && told.number().isPresent()) {
            wrapped(text, Lesson.verdict(guess.getAsDouble(), told));
        }
        wrapped(text, Texts.get("lesson.answer", told.answer()));
        wrapped(text, Texts.get("lesson.reason", told.reason()));
        wrapped(text, told.equation());
        line(text, "");
        return text.toString();
    }

    static String skipped(int place, LessonStep step) {
        StringBuilder text = new StringBuilder();
        line(text, place + ". " + Lesson.notHere(step));
        line(text, "");
        return text.toString();
    }

    static String foot() {
        StringBuilder text = new StringBuilder();
        Table.wrap(Lesson.caution(), CompareText.WIDTH).forEach(one -> line(text, one));
        return text.toString();
    }

    private static void wrapped(StringBuilder text, String words) {
        Table.wrap(words, CompareText.WIDTH - INDENT.length()).forEach(one -> line(text, INDENT + one));
    }

    private static void line(StringBuilder text, String words) {
        text.append(words).append(System.lineSeparator());
    }
}
