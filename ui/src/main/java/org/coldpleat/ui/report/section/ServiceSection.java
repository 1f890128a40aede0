package org.coldpleat.ui.report.section;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.model.verdict.service.ServiceResult.Candidate;
import org.coldpleat.model.verdict.service.ServiceResult.Event;
import org.coldpleat.model.verdict.service.ServiceResult.Moment;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.ServiceCharts;
import org.coldpleat.ui.chart.file.Picture;
import org.coldpleat.ui.report.input.ReportInput;
import org.jsoup.nodes.Element;

/** Service life, if the case has a duty. */
public final class ServiceSection implements ReportSection {
    private static final double HOUR = 3600;

    @Override
    public Optional<Element> of(ReportInput input, Amounts amounts) {
        return input.service().map(service -> section(service, amounts, input.units()));
    }

    /** All charts of a service life, one line a kind. */
    static List<Picture> pictures(ServiceResult service, UnitSystem units) {
        return ServiceCharts.all(service, units).stream()
                .map(one -> Picture.of(one.chart(), one.description()))
                .toList();
    }

    private static Element section(ServiceResult service, Amounts amounts, UnitSystem units) {
        Element section = Tags.of("section", "").id("service");
        section.appendChild(Tags.text("h2", "", ReportTexts.get("service.title")));
        Element body = Tags.of("tbody", "");
        for (Candidate one : service.candidates()) {
            Element ratio = one.isComputed() ? ratio(one.last(), amounts) : Tags.text("span", "", "");
            body.appendChild(Tags.row(
                    Tags.said(one.name()),
                    event(one, one.hotBypass(), amounts),
                    event(one, one.winterBypass(), amounts),
                    ratio));
        }
        section.appendChild(Tags.of("table", "")
                .appendChild(Tags.text("caption", "", ReportTexts.get("service.caption")))
                .appendChild(Tags.head(
                        ReportTexts.get("column.candidate"),
                        ReportTexts.get("service.hot"),
                        ReportTexts.get("service.winter"),
                        ReportTexts.get("service.ratio")))
                .appendChild(body));
        int number = 0;
        for (Picture picture : pictures(service, units)) {
            section.appendChild(Figure.of(picture, "service-" + ++number));
        }
        section.appendChild(SentenceFold.plain(service.verdicts(), amounts));
        return section.appendChild(BasisSection.notices(service.notices(), amounts));
    }

    private static Element ratio(Moment last, Amounts amounts) {
        Element cell = Tags.of("span", "");
        cell.appendChild(amounts.interval(last.resistanceRatio(), last.ratioLow(), last.ratioHigh(), Kind.RATIO));
        cell.appendText(" " + ReportTexts.get("service.after") + " ");
        return cell.appendChild(amounts.words(hours(last.time()), ReportTexts.get("band.stated"), "stated"));
    }

    private static Element event(Candidate one, Optional<Event> event, Amounts amounts) {
        if (!one.isComputed()) {
            return Tags.text("span", "", ReportTexts.get("service.notComputed"));
        }
        if (event.isEmpty()) {
            return Tags.text("span", "", ReportTexts.get("start.noValve"));
        }
        if (!event.get().happens()) {
            return amounts.words(
                    ReportTexts.get("service.never", hours(one.last().time())),
                    ReportTexts.get("band.open"),
                    "computed");
        }
        if (event.get().time() == 0) {
            return Tags.text("span", "", ReportTexts.get("service.clean"));
        }
        String band = ReportTexts.get(
                "service.band", hours(event.get().low()), hours(event.get().high()));
        return amounts.words(hours(event.get().time()), band, "computed");
    }

    private static String hours(double seconds) {
        return Double.isFinite(seconds)
                ? ReportTexts.get("service.hours", Long.toString(Math.round(seconds / HOUR)))
                : ReportTexts.get("amount.never");
    }
}
