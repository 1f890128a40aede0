package org.coldpleat.shared.casefile;

import java.util.List;
import java.util.Objects;
import org.coldpleat.shared.notice.NoticeText;
import org.coldpleat.shared.notice.Wording;

/**
 * Something wrong in a case file.
 *
 * @param file name of the file as given
 * @param line line in the file from 1; 0 if the whole file is meant
 * @param column column in the line from 1; 0 if the whole line or file is meant
 * @param field full path of the field, such as {@code candidates[2].medium.thickness}; empty for the whole file
 * @param place the field for a reader, with the names of list entries
 * @param code key of the text, such as {@code quantity.unitMissing}
 * @param values values for the placeholders of the text
 */
public record CaseProblem(
        String file, int line, int column, String field, String place, String code, List<String> values) {
    private static final Wording WORDING = Wording.beside(CaseProblem.class, "problems");

    public CaseProblem {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(code, "code");
        values = List.copyOf(values);
    }

    /**
     * What was found, what is allowed and how to mend it, without the place. Problems that only the model finds have their
     * words among the notices.
     */
    public String sentence() {
        return WORDING.has(code) ? WORDING.text(code, values) : NoticeText.text(code, values);
    }

    /** The whole message: file, line, field and sentence. */
    public String text() {
        String where = line > 0 ? file + ":" + line : file;
        return (place.isEmpty() ? where : where + " " + place) + ": " + sentence();
    }

    /** Words for a column of a table as the place of a problem. */
    public static String columnWords(int column, String name) {
        return WORDING.text("sheet.columnPlace", List.of(column + "", name));
    }

    static Wording wording() {
        return WORDING;
    }
}
