package org.coldpleat.ui.report.section;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.coldpleat.ui.chart.file.Canvas;
import org.coldpleat.ui.chart.file.ChartFiles;
import org.coldpleat.ui.chart.file.Picture;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.parser.Parser;

/** A picture inside the document. */
final class Figure {
    private Figure() {}

    /**
     * A figure.
     *
     * @param name unique in the document: letters, digits and hyphens
     */
    static Element of(Picture picture, String name) {
        Element figure = Tags.of("figure", "").id(name);
        String svg;
        try {
            svg = ChartFiles.svg(picture, Canvas.SVG, name + "-");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String plain = svg.substring(svg.indexOf("<svg"))
                .replaceFirst("<svg[^>]*viewBox=\"([^\"]*)\"[^>]*>", "<svg viewBox=\"$1\" role=\"img\">")
                .replaceAll("<defs id=\"genericDefs\"\\s*/>", "")
                .replaceAll(" xml:space=\"preserve\"", "")
                .replaceAll("<!--.*?-->", "");
        for (Node node : Parser.parseFragment(plain, Tags.of("div", ""), "")) {
            figure.appendChild(node);
        }
        return figure.appendChild(Tags.text("figcaption", Tags.QUOTED, picture.description()));
    }
}
