package org.coldpleat.ui.chart;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.function.BiConsumer;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.util.SVGConstants;
import org.coldpleat.ui.chart.cutaway.CutawayDrawing;
import org.coldpleat.ui.chart.cutaway.CutawayPainter;
import org.jfree.chart.JFreeChart;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Writes charts as SVG and PNG. A file appears whole or not at all, and the same chart gives the same SVG bytes. */
public final class ChartFiles {
    /** Width of a chart [px]. */
    public static final int WIDTH = 1200;

    /** Height of a chart [px]. */
    public static final int HEIGHT = 820;

    private static final int PNG_SCALE = 2;

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
        String svg = svg(picture(chart), title(chart), description);
        put(file, part -> Files.writeString(part, svg, StandardCharsets.UTF_8));
    }

    /**
     * Writes a picture in pixels, two to a point.
     *
     * @param chart what to draw
     * @param file target; replaced if there
     * @throws IOException if the file cannot be written
     */
    public static void writePng(JFreeChart chart, Path file) throws IOException {
        png(picture(chart), file);
    }

    /**
     * Writes a cutaway drawing as a scalable picture.
     *
     * @throws IOException if the file cannot be written
     */
    public static void writeSvg(CutawayDrawing drawing, Path file) throws IOException {
        String svg = svg(picture(drawing), drawing.title(), CutawayPainter.description(drawing));
        put(file, part -> Files.writeString(part, svg, StandardCharsets.UTF_8));
    }

    /**
     * Writes a cutaway drawing in pixels, two to a point.
     *
     * @throws IOException if the file cannot be written
     */
    public static void writePng(CutawayDrawing drawing, Path file) throws IOException {
        png(picture(drawing), file);
    }

    private static BiConsumer<Graphics2D, Rectangle2D> picture(JFreeChart chart) {
        return chart::draw;
    }

    private static BiConsumer<Graphics2D, Rectangle2D> picture(CutawayDrawing drawing) {
        return (g2, area) -> CutawayPainter.paint(drawing, g2, area);
    }

    private static String title(JFreeChart chart) {
        return chart.getTitle() == null ? "" : chart.getTitle().getText();
    }

    private static void png(BiConsumer<Graphics2D, Rectangle2D> picture, Path file) throws IOException {
        BufferedImage image = new BufferedImage(PNG_SCALE * WIDTH, PNG_SCALE * HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D g2 = image.createGraphics();
        try {
            g2.scale(PNG_SCALE, PNG_SCALE);
            picture.accept(g2, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
        } finally {
            g2.dispose();
        }
        put(file, part -> {
            if (!ImageIO.write(image, "png", part.toFile())) {
                throw new IOException("no PNG writer");
            }
        });
    }

    /** The chart as SVG text with title and description. */
    static String svg(JFreeChart chart, String description) throws IOException {
        return svg(picture(chart), title(chart), description);
    }

    /** The drawing as SVG text with title and description. */
    static String svg(CutawayDrawing drawing) throws IOException {
        return svg(picture(drawing), drawing.title(), CutawayPainter.description(drawing));
    }

    private static String svg(BiConsumer<Graphics2D, Rectangle2D> picture, String title, String description)
            throws IOException {
        Document document = emptyDocument();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(" ");
        SVGGraphics2D g2 = new SVGGraphics2D(context, false);
        g2.setSVGCanvasSize(new Dimension(WIDTH, HEIGHT));
        picture.accept(g2, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
        Element root = g2.getRoot();
        root.setAttributeNS(null, SVGConstants.SVG_VIEW_BOX_ATTRIBUTE, "0 0 " + WIDTH + " " + HEIGHT);
        root.setAttributeNS(null, "role", "img");
        prepend(root, SVGConstants.SVG_DESC_TAG, description);
        prepend(root, SVGConstants.SVG_TITLE_TAG, title);
        StringWriter text = new StringWriter();
        g2.stream(root, text, true, false);
        return text.toString();
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

    private static void put(Path file, Writing writing) throws IOException {
        Path target = file.toAbsolutePath();
        Path part = target.resolveSibling(
                "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            writing.write(part);
            try {
                Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private interface Writing {
        void write(Path part) throws IOException;
    }
}
