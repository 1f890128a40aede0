package org.coldpleat.validation.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class ReliabilityPictureTest {
    @Test
    void aChanceThatIsRightLiesOnTheDiagonalAndEmptyTenthsAreLeftOut() throws Exception {
        String svg = ReliabilityPicture.of(
                List.of(
                        new Coverage.Tenth(0.25, 0.25, 40),
                        new Coverage.Tenth(Double.NaN, Double.NaN, 0),
                        new Coverage.Tenth(0.75, 0.5, 40)),
                7);
        NodeList points = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
                .getElementsByTagName("circle");
        assertEquals(2, points.getLength());
        double across = place(points, 1, "cx") - place(points, 0, "cx");
        double up = place(points, 0, "cy") - place(points, 1, "cy");
        // stated rises by a half, found by a quarter, on axes of the same scale
        assertEquals(0.5, up / across, 1e-9);
    }

    private static double place(NodeList points, int i, String key) {
        return Double.parseDouble(((Element) points.item(i)).getAttribute(key));
    }
}
