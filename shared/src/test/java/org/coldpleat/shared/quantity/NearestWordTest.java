package org.coldpleat.shared.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestWordTest {
    @ParameterizedTest
    @CsvSource({
        "thicknes, thickness",
        "Thickness, thickness",
        "thikcness, thickness",
        "pleat-count, pleatCount",
        "xyz, ''",
        "dpeth, depth",
    })
    void findsTheWordThatWasMeant(String typed, String meant) {
        List<String> known = List.of("depth", "thickness", "pleatCount", "width");
        assertEquals(meant.isEmpty() ? Optional.empty() : Optional.of(meant), NearestWord.to(typed, known));
    }

    @Test
    void countsSwapsOfNeighborsAsOneStep() {
        // Damerau 1964 counts one swap as one error; kitten/sitting is the usual example of three.
        assertEquals(1, NearestWord.distance("dpeth", "depth"));
        assertEquals(3, NearestWord.distance("kitten", "sitting"));
        assertEquals(4, NearestWord.distance("", "four"));
    }

    @Test
    void leavingOutPuttingInAndChangingALetterAreOneStepEach() {
        assertEquals(1, NearestWord.distance("dept", "depth"));
        assertEquals(1, NearestWord.distance("deepth", "depth"));
        assertEquals(1, NearestWord.distance("dexth", "depth"));
        assertEquals(0, NearestWord.distance("depth", "depth"));
        assertEquals(5, NearestWord.distance("depth", ""));
    }

    @Test
    void swapAtTheVeryBeginningIsOneStepToo() {
        assertEquals(1, NearestWord.distance("ab", "ba"));
        assertEquals(2, NearestWord.distance("abc", "cab"));
    }

    @Test
    void ofEquallyNearWordsTheOneOfTheSameLengthIsMeant() {
        assertEquals(Optional.of("wile"), NearestWord.to("wide", List.of("wider", "wid", "wile")));
        assertEquals(Optional.of("bar"), NearestWord.to("baz", List.of("bar", "bat")));
    }

    @Test
    void nearerWordIsMeantBeforeOneOfTheSameLength() {
        assertEquals(Optional.of("dept"), NearestWord.to("depth", List.of("dexxh", "dept")));
    }

    @Test
    void aWordMayBeAThirdWrongButNoMore() {
        // nine letters: three steps; six letters and fewer: two; two letters: one
        assertEquals(Optional.of("thickness"), NearestWord.to("thiXXXess", List.of("thickness")));
        assertEquals(Optional.empty(), NearestWord.to("thiXXXXss", List.of("thickness")));
        assertEquals(Optional.of("width"), NearestWord.to("wiXXh", List.of("width")));
        assertEquals(Optional.empty(), NearestWord.to("wXXXh", List.of("width")));
        assertEquals(Optional.of("mm"), NearestWord.to("mn", List.of("mm")));
        assertEquals(Optional.empty(), NearestWord.to("m", List.of("mmm")));
        assertEquals(Optional.of("abc"), NearestWord.to("xyc", List.of("abc")));
    }

    @Test
    void wordsThatShareNoLetterAreNotMeant() {
        assertEquals(Optional.empty(), NearestWord.to("x", List.of("m")));
        assertEquals(Optional.empty(), NearestWord.to("xy", List.of("m")));
    }
}
