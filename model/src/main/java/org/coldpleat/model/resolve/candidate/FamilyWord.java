package org.coldpleat.model.resolve.candidate;

import org.coldpleat.model.loading.TypicalCapacity;
import org.coldpleat.model.medium.FiberFamily;

/** What the words of a bench for a sheet mean: a paper is of cellulose, a synthetic sheet of glass micro-fibers. */
final class FamilyWord {
    private FamilyWord() {}

    /** The family of a word of the catalog. */
    static FiberFamily family(String word) {
        return switch (word) {
            case "cellulose", "paper" -> FiberFamily.CELLULOSE;
            case "blend" -> FiberFamily.BLEND;
            case "glass", "synthetic", "wireBackedSynthetic" -> FiberFamily.GLASS_MICROFIBER;
            default -> throw new IllegalArgumentException("unknown fiber family " + word);
        };
    }

    /** Dirt that the family of a word commonly holds. */
    static TypicalCapacity capacity(String word) {
        return switch (family(word)) {
            case CELLULOSE -> TypicalCapacity.CELLULOSE;
            case BLEND -> TypicalCapacity.BLEND;
            case GLASS_MICROFIBER -> TypicalCapacity.GLASS;
        };
    }

    /** Row of the typical table with the size of which the family of a word catches half. */
    static String halfCaught(String word) {
        return switch (family(word)) {
            case CELLULOSE -> "medium.halfCaught.cellulose";
            case BLEND -> "medium.halfCaught.blend";
            case GLASS_MICROFIBER -> "medium.halfCaught.glass";
        };
    }
}
