package org.coldpleat.ui.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.coldpleat.ui.report.input.ReportInput;
import org.coldpleat.ui.report.section.ChainFold;
import org.coldpleat.ui.report.section.ReportTexts;
import org.coldpleat.ui.report.section.Tags;
import org.jsoup.helper.W3CDom;
import org.jsoup.nodes.Document;

/** Writes the report as PDF. Folds cannot be opened on paper: the numbers behind a sentence are printed, the chains are not. */
public final class ReportPdf {
    private static final String FONTS = "/net/sf/jasperreports/fonts/dejavu/";

    /** Speaks of fonts that the report does not use; held, or its level would be forgotten. */
    private static final Logger LIBRARY = Logger.getLogger("org.apache.pdfbox");

    private ReportPdf() {}

    /**
     * The report as PDF.
     *
     * @throws IOException if it cannot be made
     */
    public static byte[] of(ReportInput input) throws IOException {
        Document document = Report.document(input);
        document.body().addClass("paper");
        document.select("details." + ChainFold.CHAIN).remove();
        document.select("details.behind").remove();
        document.selectFirst("header").appendChild(Tags.text("p", "hint", ReportTexts.get("pdf.folds")));
        XRLog.setLoggingEnabled(false);
        LIBRARY.setLevel(Level.SEVERE);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.useFastMode();
            builder.useSVGDrawer(drawer);
            builder.useFont(() -> font("DejaVuSans.ttf"), "DejaVu Sans", 400, FontStyle.NORMAL, true);
            builder.useFont(() -> font("DejaVuSans-Bold.ttf"), "DejaVu Sans", 700, FontStyle.NORMAL, true);
            builder.useUriResolver((base, uri) -> null);
            builder.withW3cDocument(new W3CDom().fromJsoup(document), null);
            builder.toStream(bytes);
            builder.run();
        }
        return bytes.toByteArray();
    }

    private static InputStream font(String name) {
        InputStream font = ReportPdf.class.getResourceAsStream(FONTS + name);
        if (font == null) {
            throw new UncheckedIOException(new IOException("no font " + name));
        }
        return font;
    }
}
