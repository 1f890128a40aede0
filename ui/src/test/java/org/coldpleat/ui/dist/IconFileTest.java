package org.coldpleat.ui.dist;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URL;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.PNGTranscoder;
import org.junit.jupiter.api.Test;

class IconFileTest {
    private static final String FOLDER = "/org/coldpleat/ui/desktop/view/";

    private static byte[] png() throws IOException {
        return IconFileTest.class.getResourceAsStream(FOLDER + "icon.png").readAllBytes();
    }

    @Test
    void pictureIsTheDrawingInPixels() throws IOException, TranscoderException {
        URL drawing = IconFileTest.class.getResource(FOLDER + "icon.svg");
        ByteArrayOutputStream drawn = new ByteArrayOutputStream();
        new PNGTranscoder().transcode(new TranscoderInput(drawing.toString()), new TranscoderOutput(drawn));
        assertArrayEquals(pixels(drawn.toByteArray()), pixels(png()));
    }

    private static int[] pixels(byte[] png) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        assertEquals(256, image.getWidth());
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    @Test
    void wrappingsSayWhereThePictureIsAndHoldItWhole() throws IOException {
        byte[] png = png();
        byte[] ico = IconFile.ico(png);
        assertArrayEquals(png, Arrays.copyOfRange(ico, ico[18], ico.length));
        byte[] icns = IconFile.icns(png);
        assertArrayEquals(png, Arrays.copyOfRange(icns, 16, icns.length));
        assertEquals(icns.length, new java.math.BigInteger(icns, 4, 4).intValueExact());
    }
}
