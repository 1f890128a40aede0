package org.coldpleat.ui.show;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.IntFunction;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** Writes an animated GIF that repeats without end: one palette for all frames, of each frame only what changed. */
public final class GifFile {
    private static final String FORMAT = "javax_imageio_gif_image_1.0";
    private static final int SAMPLES = 9;

    private GifFile() {}

    /**
     * Writes the file.
     *
     * @param frames paints a frame; all of one size
     * @param count how many, at least 1
     * @param delay of a frame [1/100 s]
     * @param rest of the last frame [1/100 s]
     * @throws IOException if the file cannot be written
     */
    public static void write(Path file, IntFunction<BufferedImage> frames, int count, int delay, int rest)
            throws IOException {
        Palette palette = palette(frames, count);
        ImageWriter writer = ImageIO.getImageWritersByFormatName("gif").next();
        Files.deleteIfExists(file);
        try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
            writer.setOutput(out);
            ImageWriteParam settings = writer.getDefaultWriteParam();
            writer.prepareWriteSequence(null);
            int[] before = new int[0];
            for (int i = 0; i < count; i++) {
                BufferedImage frame = frames.apply(i);
                int[] pixels = pixels(frame);
                Rectangle changed = changed(before, pixels, frame.getWidth(), frame.getHeight());
                BufferedImage part = indexed(pixels, frame.getWidth(), changed, palette);
                IIOMetadata about = writer.getDefaultImageMetadata(new ImageTypeSpecifier(part), settings);
                describe(about, changed, i == count - 1 ? rest : delay, i == 0);
                writer.writeToSequence(new IIOImage(part, null, about), settings);
                before = pixels;
            }
            writer.endWriteSequence();
        } finally {
            writer.dispose();
        }
    }

    private static Palette palette(IntFunction<BufferedImage> frames, int count) {
        Palette.Census census = new Palette.Census();
        for (int s = 0; s < Math.min(SAMPLES, count); s++) {
            census.add(pixels(frames.apply(count == 1 ? 0 : s * (count - 1) / (Math.min(SAMPLES, count) - 1))));
        }
        return census.palette();
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    /** The smallest box round all pixels that differ; one pixel if none does. */
    private static Rectangle changed(int[] before, int[] now, int width, int height) {
        if (before.length != now.length) {
            return new Rectangle(width, height);
        }
        int left = width;
        int right = -1;
        int top = height;
        int bottom = -1;
        for (int i = 0; i < now.length; i++) {
            if (before[i] != now[i]) {
                left = Math.min(left, i % width);
                right = Math.max(right, i % width);
                top = Math.min(top, i / width);
                bottom = Math.max(bottom, i / width);
            }
        }
        return right < 0 ? new Rectangle(1, 1) : new Rectangle(left, top, right - left + 1, bottom - top + 1);
    }

    private static BufferedImage indexed(int[] pixels, int width, Rectangle box, Palette palette) {
        IndexColorModel colors = palette.model();
        BufferedImage image = new BufferedImage(box.width, box.height, BufferedImage.TYPE_BYTE_INDEXED, colors);
        byte[] row = new byte[box.width];
        for (int y = 0; y < box.height; y++) {
            for (int x = 0; x < box.width; x++) {
                row[x] = (byte) palette.index(pixels[(box.y + y) * width + box.x + x]);
            }
            image.getRaster().setDataElements(0, y, box.width, 1, row);
        }
        return image;
    }

    private static void describe(IIOMetadata about, Rectangle box, int delay, boolean first) throws IOException {
        IIOMetadataNode root = (IIOMetadataNode) about.getAsTree(FORMAT);
        IIOMetadataNode place = child(root, "ImageDescriptor");
        place.setAttribute("imageLeftPosition", Integer.toString(box.x));
        place.setAttribute("imageTopPosition", Integer.toString(box.y));
        IIOMetadataNode control = child(root, "GraphicControlExtension");
        control.setAttribute("disposalMethod", "doNotDispose");
        control.setAttribute("userInputFlag", "FALSE");
        control.setAttribute("transparentColorFlag", "FALSE");
        control.setAttribute("transparentColorIndex", "0");
        control.setAttribute("delayTime", Integer.toString(delay));
        if (first) {
            IIOMetadataNode repeat = new IIOMetadataNode("ApplicationExtension");
            repeat.setAttribute("applicationID", "NETSCAPE");
            repeat.setAttribute("authenticationCode", "2.0");
            repeat.setUserObject(new byte[] {1, 0, 0});
            child(root, "ApplicationExtensions").appendChild(repeat);
        }
        about.setFromTree(FORMAT, root);
    }

    private static IIOMetadataNode child(IIOMetadataNode root, String name) {
        for (int i = 0; i < root.getLength(); i++) {
            if (root.item(i).getNodeName().equals(name)) {
                return (IIOMetadataNode) root.item(i);
            }
        }
        IIOMetadataNode made = new IIOMetadataNode(name);
        root.appendChild(made);
        return made;
    }
}
