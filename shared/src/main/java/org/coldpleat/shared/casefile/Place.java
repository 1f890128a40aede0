package org.coldpleat.shared.casefile;

/**
 * Where in a document something stands.
 *
 * @param path full path, such as {@code candidates[2].medium.thickness}
 * @param words the same for a reader, such as {@code candidates[2] "Gray can" medium.thickness}
 */
public record Place(String path, String words) {
    public static final Place ROOT = new Place("", "");

    /** The place of a key below this one. */
    public Place key(String key) {
        String joint = words.isEmpty() ? "" : words.endsWith("\"") ? " " : ".";
        return new Place(path.isEmpty() ? key : path + "." + key, words + joint + key);
    }

    /** The place of a list entry, with its name if it has one. */
    public Place item(int index, String name) {
        String number = "[" + index + "]";
        return new Place(path + number, words + number + (name.isEmpty() ? "" : " \"" + name + "\""));
    }
}
