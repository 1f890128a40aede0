package org.coldpleat.shared.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people write it at the start of a text: {@code 1.45}, {@code 60,5}, {@code 2.5e8}, {@code 3/8},
 * {@code 2-3/8}, {@code 2 3/8}.
 *
 * <p>{@code 2-3/8} is a mixed fraction when a whole number, a plain hyphen without spaces and a fraction below 1 follow
 * each other; any other hyphen between numbers stands for a range. A comma is a decimal comma, unless exactly three
 * digits follow it and the part before is no lone zero: then it might be a thousands separator, and nothing is guessed.
 *
 * @param value the number
 * @param end index behind its last character
 */
record NumberText(double value, int end) {
    private static final Pattern SIGN = Pattern.compile("\\s*(?:([+-])\\s*(?=[\\d.,]))?");
    private static final Pattern NOT_FINITE =
            Pattern.compile("[+-]?(?:nan|inf(?:inity)?)(?![a-z])|[+-]?\u221e", Pattern.CASE_INSENSITIVE);
    private static final Pattern MIXED = Pattern.compile("(\\d+)(?:-|\\s+)(\\d+)/(\\d+)(?![\\d.,])");
    private static final Pattern FRACTION = Pattern.compile("(\\d+)/(\\d+)(?![\\d.,])");
    private static final Pattern DECIMAL =
            Pattern.compile("((?:\\d++(?:[.,]\\d+)*+(?:\\.(?![.\\d]))?|[.,]\\d+))(?:[eE]([+-]?\\d+)(?![\\d.,]))?");
    private static final Pattern SPACED_THOUSANDS = Pattern.compile("\\d{1,3}(?:[ '\u00a0\u2009\u202f]\\d{3})+(?!\\d)");

    /** Reads the number that starts at {@code start}, spaces skipped. */
    static NumberText at(String text, int start) throws Misread {
        Matcher bad = NOT_FINITE.matcher(text);
        Matcher sign = SIGN.matcher(text);
        int position = start;
        double factor = 1;
        if (sign.region(start, text.length()).lookingAt()) {
            position = sign.end();
            factor = "-".equals(sign.group(1)) ? -1 : 1;
        }
        if (bad.region(position, text.length()).lookingAt()) {
            throw new Misread("quantity.notFinite", bad.group());
        }
        Matcher mixed = MIXED.matcher(text).region(position, text.length());
        if (mixed.lookingAt() && isProper(mixed.group(2), mixed.group(3))) {
            double value = Double.parseDouble(mixed.group(1)) + quotient(mixed.group(2), mixed.group(3));
            return new NumberText(factor * value, mixed.end());
        }
        Matcher fraction = FRACTION.matcher(text).region(position, text.length());
        if (fraction.lookingAt()) {
            if (Double.parseDouble(fraction.group(2)) == 0) {
                throw new Misread("quantity.notFinite", fraction.group());
            }
            return new NumberText(factor * quotient(fraction.group(1), fraction.group(2)), fraction.end());
        }
        Matcher spaced = SPACED_THOUSANDS.matcher(text).region(position, text.length());
        if (spaced.lookingAt()) {
            throw new Misread(
                    "quantity.thousands", spaced.group(), spaced.group().replaceAll("\\D", ""));
        }
        Matcher decimal = DECIMAL.matcher(text).region(position, text.length());
        if (!decimal.lookingAt()) {
            throw new Misread("quantity.number", text.strip());
        }
        String exponent = decimal.group(2) == null ? "" : "e" + decimal.group(2);
        double value = Double.parseDouble(plain(decimal.group(1)) + exponent);
        if (Double.isInfinite(value)) {
            throw new Misread("quantity.notFinite", decimal.group());
        }
        return new NumberText(factor * value, decimal.end());
    }

    private static boolean isProper(String numerator, String denominator) {
        return Double.parseDouble(numerator) < Double.parseDouble(denominator);
    }

    private static double quotient(String numerator, String denominator) {
        return Double.parseDouble(numerator) / Double.parseDouble(denominator);
    }

    private static String plain(String digits) throws Misread {
        int comma = digits.indexOf(',');
        int point = digits.indexOf('.');
        if (comma < 0 && point == digits.lastIndexOf('.')) {
            return digits;
        }
        if (comma >= 0 && comma == digits.lastIndexOf(',') && point < 0) {
            boolean threeDigits = digits.length() - comma - 1 == 3;
            boolean canBeThousands = comma >= 1 && comma <= 3 && digits.charAt(0) != '0';
            if (!(threeDigits && canBeThousands)) {
                return digits.replace(',', '.');
            }
            throw new Misread("quantity.thousandsOrDecimal", digits, digits.replace(",", ""), digits.replace(',', '.'));
        }
        throw new Misread("quantity.thousands", digits, digits.replaceAll("[.,](?=\\d{3}(?:\\D|$))", ""));
    }
}
