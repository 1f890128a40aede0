package org.coldpleat.ui.report.section;

import org.coldpleat.ui.chart.file.PlainText;
import org.jsoup.nodes.Element;

/** Makes elements. Text goes in as text nodes, so that nothing in it can become markup. */
public final class Tags {
    /** Class of text that is quoted: names, notes, places, equations, sources. Numbers in it belong to it. */
    public static final String QUOTED = "quoted";

    private Tags() {}

    public static Element of(String tag, String cssClass) {
        Element element = new Element(tag);
        return cssClass.isEmpty() ? element : element.addClass(cssClass);
    }

    public static Element text(String tag, String cssClass, String text) {
        return of(tag, cssClass).appendText(PlainText.of(text));
    }

    /** Text of the case: isolated, so that its direction does not leak. */
    static Element said(String text) {
        return of("bdi", QUOTED).attr("dir", "auto").appendText(PlainText.of(text));
    }

    static Element quoted(String text) {
        return text("span", QUOTED, text);
    }

    static Element add(Element parent, Element... children) {
        for (Element child : children) {
            parent.appendChild(child);
        }
        return parent;
    }

    /** A fold with its heading. */
    static Element fold(String cssClass, String heading) {
        return of("details", cssClass).appendChild(text("summary", "", heading));
    }

    /** A row of a table. */
    static Element row(Element... cells) {
        Element row = of("tr", "");
        for (Element cell : cells) {
            row.appendChild(of("td", "").appendChild(cell));
        }
        return row;
    }

    static Element head(String... words) {
        Element row = of("tr", "");
        for (String word : words) {
            row.appendChild(text("th", "", word).attr("scope", "col"));
        }
        return of("thead", "").appendChild(row);
    }
}
