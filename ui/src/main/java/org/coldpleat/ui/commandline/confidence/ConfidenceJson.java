package org.coldpleat.ui.commandline.confidence;

import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.numerics.Quantiles;
import org.coldpleat.ui.commandline.output.JsonText;
import org.coldpleat.ui.commandline.output.NoticeJson;
import org.coldpleat.ui.text.ProgramVersion;

/** Confidence as JSON described by {@code confidence-v1.schema.json}. */
final class ConfidenceJson {
    private final JsonText json = new JsonText();

    private ConfidenceJson() {}

    static String of(ConfidenceResult result) {
        ConfidenceJson writer = new ConfidenceJson();
        writer.write(result);
        return writer.json.finished();
    }

    private void write(ConfidenceResult result) {
        json.element()
                .text("schemaVersion", "confidence-v1")
                .text("programVersion", ProgramVersion.text())
                .text("title", result.title())
                .text("inputDigest", result.digest())
                .whole("draws", result.draws())
                .whole("seed", result.seed())
                .numbers("temperature_K", result.temperature())
                .array("outcomes");
        result.outcomes().forEach(this::outcome);
        json.endArray().array("pairs");
        for (ConfidenceResult.Warmer pair : result.pairs()) {
            json.element()
                    .text("state", pair.state())
                    .text("first", pair.first())
                    .text("second", pair.second())
                    .number("firstWarmer", pair.firstWarmer())
                    .number("equal", pair.equal())
                    .number("secondWarmer", pair.secondWarmer())
                    .endObject();
        }
        json.endArray();
        focus(result.focus());
        json.object("verified")
                .whole("compared", result.verified().compared())
                .whole("differing", result.verified().differing())
                .endObject()
                .array("notices");
        result.notices().forEach(notice -> NoticeJson.write(json, notice));
        json.endArray().endObject();
    }

    private void outcome(ConfidenceResult.StateOutcome one) {
        json.element().text("candidate", one.candidate()).text("state", one.state());
        json.object("opening");
        end("median", one.opening().median());
        end("low", one.opening().low());
        end("high", one.opening().high());
        json.endObject()
                .number("chanceOpen", one.chanceOpen())
                .whole("impossible", one.impossible())
                .whole("unanswered", one.unanswered())
                .numbers("openProbability", one.openProbability())
                .array("ratios");
        one.ratios().forEach(band -> quantiles("", band));
        json.endArray().array("shares");
        one.shares().forEach(band -> quantiles("", band));
        json.endArray();
        quantiles("hotDrop_Pa", one.hotDrop());
        quantiles("mediumResistance_1_m", one.mediumResistance());
        json.endObject();
    }

    private void end(String name, double kelvin) {
        if (Double.isInfinite(kelvin)) {
            json.text(name + "_K", kelvin > 0 ? "always" : "never");
        } else {
            json.number(name + "_K", kelvin);
        }
    }

    private void quantiles(String name, Quantiles band) {
        json.numbers(name, band.median(), band.low(), band.high());
    }

    private void focus(ConfidenceResult.Focus focus) {
        json.object("closestCall")
                .text("candidate", focus.candidate())
                .text("state", focus.state())
                .array("contributions");
        for (ConfidenceResult.Contribution share : focus.contributions()) {
            json.element()
                    .text("group", share.group())
                    .number("first", share.first())
                    .number("firstError", share.firstError())
                    .number("total", share.total())
                    .number("totalError", share.totalError())
                    .endObject();
        }
        json.endArray().array("measurements");
        for (ConfidenceResult.Measurement gain : focus.measurements()) {
            json.element()
                    .text("group", gain.group())
                    .number("remaining", gain.remaining())
                    .number("spreadNow_K", gain.spreadNow())
                    .number("spreadAfter_K", gain.spreadAfter())
                    .number("error_K", gain.error())
                    .endObject();
        }
        json.endArray().endObject();
    }
}
