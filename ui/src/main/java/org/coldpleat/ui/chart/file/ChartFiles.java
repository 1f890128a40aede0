package org.coldpleat.ui.chart.file;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.apache.batik.util.SVGConstants;
import org.coldpleat.shared.casefile.writing.WholeFile;
import org.coldpleat.ui.chart.cutaway.CutawayDrawing;
import org.jfree.chart.JFreeChart;
import org.w3c.dom.CharacterData;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Writes charts as SVG and PNG. A file appears whole or not at all, and the same chart gives the same SVG bytes. */
public final class ChartFiles {
    /** Decimals of a coordinate: a hundredth of a point is finer than any screen. */
    private static final int DECIMALS = 2;

    private ChartFiles() {}

    /**
     * Writes a scalable picture.
     *
     * @param chart what to draw
     * @param file target; replaced if there
     * @param description what the picture shows, for readers who cannot see it
     * @throws IOException if the file cannot be written
     */
    public static void writeSvg(JFreeChart chart, Path file, String description) throws IOException {
        writeSvg(Picture.of(chart, description), Canvas.SVG, file);
    }

    /**
     * Writes a picture in pixels, two to a point.
     *
     * @param chart what to draw
     * @param file target; replaced if there
     * @throws IOException if the file cannot be written
     */
    public static void writePng(JFreeChart chart, Path file) throws IOException {
        writePng(Picture.of(chart, ""), Canvas.PNG, file);
    }

    /**
     * Writes a cutaway drawing as a scalable picture.
     *
     * @throws IOException if the file cannot be written
     */
    public static void writeSvg(CutawayDrawing drawing, Path file) throws IOException {
        writeSvg(Picture.of(drawing), Canvas.SVG, file);
    }

    /**
     * Writes a cutaway drawing in pixels, two to a point.
     *
     * @throws IOException if the file cannot be written
     */
    public static void writePng(CutawayDrawing drawing, Path file) throws IOException {
        writePng(Picture.of(drawing), Canvas.PNG, file);
    }

    /**
     * Writes a scalable picture.
     *
     * @throws IOException if the file cannot be written
     */
    public static void writeSvg(Picture picture, Canvas canvas, Path file) throws IOException {
        String svg = svg(picture, canvas, "");
        WholeFile.write(file, part -> Files.writeString(part, svg, StandardCharsets.UTF_8));
    }

    /**
     * Writes a picture in pixels.
     *
     * @throws IOException if the file cannot be written
     */
    public static void writePng(Picture picture, Canvas canvas, Path file) throws IOException {
        BufferedImage image = image(picture, canvas);
        WholeFile.write(file, part -> {
            if (!ImageIO.write(image, "png", part.toFile())) {
                throw new IOException("no PNG writer");
            }
        });
    }

    /** The picture in pixels. */
    public static BufferedImage image(Picture picture, Canvas canvas) {
        BufferedImage image = new BufferedImage(
                canvas.width(),
                canvas.height(),
                canvas.transparent() ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
        Graphics2D g2 = image.createGraphics();
        try {
            g2.scale(canvas.zoom(), canvas.zoom());
            picture.painter().accept(g2, new Rectangle2D.Double(0, 0, canvas.pointWidth(), canvas.pointHeight()));
        } finally {
            g2.dispose();
        }
        return image;
    }

    /** The chart as SVG text with title and description. */
    public static String svg(JFreeChart chart, String description) throws IOException {
        return svg(Picture.of(chart, description), Canvas.SVG, "");
    }

    /** The drawing as SVG text with title and description. */
    public static String svg(CutawayDrawing drawing) throws IOException {
        return svg(Picture.of(drawing), Canvas.SVG, "");
    }

    /**
     * The picture as SVG text with title and description.
     *
     * @param mark begins every name inside, so that several pictures can stand in one document
     * @throws IOException if the drawing cannot be written as text
     */
    public static String svg(Picture picture, Canvas canvas, String mark) throws IOException {
        Document document = emptyDocument();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(" ");
        context.setPrecision(DECIMALS);
        context.setIDGenerator(new MarkedNames(mark));
        SVGGraphics2D g2 = new SVGGraphics2D(context, false);
        g2.setSVGCanvasSize(new Dimension(canvas.width(), canvas.height()));
        picture.painter().accept(g2, new Rectangle2D.Double(0, 0, canvas.pointWidth(), canvas.pointHeight()));
        Element root = g2.getRoot();
        String box = String.format(Locale.ROOT, "0 0 %.6g %.6g", canvas.pointWidth(), canvas.pointHeight());
        root.setAttributeNS(null, SVGConstants.SVG_VIEW_BOX_ATTRIBUTE, box.replaceAll("\\.0+(?= |$)", ""));
        root.setAttributeNS(null, "role", "img");
        prepend(root, SVGConstants.SVG_DESC_TAG, picture.description());
        prepend(root, SVGConstants.SVG_TITLE_TAG, picture.title());
        clean(root);
        StringWriter text = new StringWriter();
        g2.stream(root, text, true, false);
        return text.toString();
    }

    private static void clean(Node node) {
        if (node instanceof CharacterData words) {
            words.setData(PlainText.of(words.getData()));
        }
        for (Node below = node.getFirstChild(); below != null; below = below.getNextSibling()) {
            clean(below);
        }
    }

    /** Names of clips and the like inside a picture. */
    private static final class MarkedNames extends SVGIDGenerator {
        private final String mark;

        MarkedNames(String mark) {
            this.mark = mark;
        }

        @Override
        public String generateID(String prefix) {
            return mark + super.generateID(prefix);
        }
    }

    private static Document emptyDocument() {
        try {
            return DocumentBuilderFactory.newDefaultInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(SVGConstants.SVG_NAMESPACE_URI, SVGConstants.SVG_SVG_TAG, null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("every Java platform has an XML document builder", e);
        }
    }

    private static void prepend(Element root, String tag, String words) {
        Document document = root.getOwnerDocument();
        Element element = document.createElementNS(SVGConstants.SVG_NAMESPACE_URI, tag);
        element.appendChild(document.createTextNode(words));
        root.insertBefore(element, root.getFirstChild());
    }

    /** A name for a file on any system: letters, digits and hyphens. */
    public static String fileName(String name) {
        String plain = name.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-+|-+$", "");
        return plain.isEmpty() ? "unnamed" : plain;
    }
}
