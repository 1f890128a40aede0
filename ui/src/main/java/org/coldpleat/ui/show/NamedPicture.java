package org.coldpleat.ui.show;

import java.util.Objects;
import org.coldpleat.ui.chart.file.Picture;

/**
 * A picture of the set.
 *
 * @param name name of its file without ending: letters, digits, hyphens
 * @param picture what to paint
 */
public record NamedPicture(String name, Picture picture) {
    public NamedPicture {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(picture, "picture");
    }
}
