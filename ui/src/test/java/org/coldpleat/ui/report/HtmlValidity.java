package org.coldpleat.ui.report;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import nu.validator.client.EmbeddedValidator;
import org.xml.sax.SAXException;

/** Asks the validator of HTML documents. */
final class HtmlValidity {
    private HtmlValidity() {}

    /** Errors and fatal errors, one a line; the validator also warns, which is no matter here. */
    static List<String> errors(String html) throws IOException {
        EmbeddedValidator validator = new EmbeddedValidator();
        validator.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
        try {
            String report = validator.validate(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
            return report.lines().filter(line -> line.contains("error")).toList();
        } catch (SAXException e) {
            throw new IOException(e);
        }
    }
}
