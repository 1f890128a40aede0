package org.coldpleat.shared.quantity;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import org.coldpleat.shared.source.Source;

/** Finds the known word that a mistyped one was meant to be. */
public final class NearestWord {
    private NearestWord() {}

    /** The known word nearest to what was typed, if near enough to be worth naming; of equals the one
     * nearest in length, then the first. */
    public static Optional<String> to(String typed, Collection<String> known) {
        String wanted = plain(typed);
        int limit = wanted.length() <= 2 ? 1 : Math.max(2, wanted.length() / 3);
        Optional<String> best = Optional.empty();
        int least = Integer.MAX_VALUE;
        for (String word : known) {
            String candidate = plain(word);
            int distance = distance(wanted, candidate);
            boolean sharesNothing = distance >= Math.max(wanted.length(), candidate.length());
            // A slip of the finger keeps the length more often than not.
            int rank = 100 * distance + Math.abs(wanted.length() - candidate.length());
            if (distance <= limit && !sharesNothing && rank < least) {
                best = Optional.of(word);
                least = rank;
            }
        }
        return best;
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("[-_\\s.·]", "");
    }

    /** Insertions, deletions, replacements and swaps of neighbors needed to turn one word into the other. */
    @Source("Damerau 1964, Communications of the ACM 7(3):171-176, restricted form")
    public static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int cost = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + cost);
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
