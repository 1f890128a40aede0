package org.coldpleat.ui.desktop.viewmodel;

import java.util.regex.Pattern;

/** A number that was typed without a unit into a field beside which one stands. */
public final class BareNumber {
    /** What may stand between the numbers of a range, and the sign of a power of ten. */
    private static final Pattern WORDS = Pattern.compile("\\bto\\b|(?<=\\d)[eE](?=[-+]?\\d)");

    /** Numbers with signs, spreads and lists, and nothing else. */
    private static final Pattern BARE = Pattern.compile("[-+±/\\[\\]().,;:\\s\\d]*");

    private static final Pattern DIGIT = Pattern.compile("\\d");

    private BareNumber() {}

    /**
     * The text with the unit behind it if it is bare; otherwise the text as it is.
     *
     * @param typed what was typed
     * @param unit that stands beside the field; blank if none does
     */
    public static String completed(String typed, String unit) {
        boolean bare = !unit.isBlank()
                && DIGIT.matcher(typed).find()
                && BARE.matcher(WORDS.matcher(typed).replaceAll(" ")).matches();
        return bare ? typed.strip() + " " + unit : typed;
    }
}
