package evenhand.window.question;

import evenhand.answers.Answers;
import evenhand.answers.LinkCriteria;
import evenhand.chart.Chart;
import evenhand.chart.CurveCharts.Curve;
import evenhand.chart.CurveCharts.Quantity;
import evenhand.chart.TravelCharts;
import evenhand.drawing.Detail;
import evenhand.drawing.Drawing;
import evenhand.drawing.LinksView;
import evenhand.drawing.Stance;
import evenhand.linkage.AxleMotion;
import evenhand.linkage.AxleState;
import evenhand.look.SetupStyle;
import evenhand.quantity.Dimension;
import evenhand.scenario.Setup;
import evenhand.window.desk.Question.Asked;
import evenhand.window.desk.Reply;
import evenhand.words.JudgedWords;
import evenhand.words.Units;
import evenhand.words.travel.PlaceWords;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Charts and drawings of an axle on its links. */
final class LinkPictures {
    private LinkPictures() {}

    /** A figure over the motion, of each set-up, and where the travel ends. */
    static Chart chart(Asked asked, LinkFigure figure, Moved moved, List<Posed> all, Posed leading) {
        Units units = asked.units();
        List<Curve> curves = new ArrayList<>();
        List<TravelCharts.Stop> stops = new ArrayList<>();
        for (Posed one : all) {
            double track = one.travel().linked().stance().track();
            SetupStyle style = new SetupStyle(SideBySide.look(asked, one.setup().name()));
            List<AxleState> rows = moved.motion.rows(one.travel().followed()).stream()
                    .filter(row -> figure.left().si(row).isPresent())
                    .toList();
            if (rows.isEmpty()) {
                continue;
            }
            double[] x = rows.stream()
                    .mapToDouble(row -> moved.motion.place(row, track))
                    .toArray();
            curves.add(new Curve(
                    one.setup().name(),
                    "",
                    style,
                    x,
                    rows.stream()
                            .mapToDouble(row -> figure.left().si(row).orElse(0))
                            .toArray()));
            for (PlaceWords.Together limit :
                    PlaceWords.together(moved.motion.limits(one.travel().followed()))) {
                double at = Math.max(x[0], Math.min(x[x.length - 1], AxleMotion.place(limit.first())));
                stops.add(new TravelCharts.Stop(one.setup().name(), style, at, one.is(leading) ? limit.words() : ""));
            }
        }
        String words = figure.ofLeft();
        Chart chart = TravelCharts.of(
                words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + " over " + moved.words,
                new Quantity(moved.axis, units.of(moved.dimension()), units == Units.METRIC ? 1 : 2),
                new Quantity(words, LinkFigure.unit(figure.left(), units), units.digits(figure.left())),
                curves,
                stops,
                leading.place());
        return curves.isEmpty() ? chart.noting("This axle has no such figure by its points.") : chart;
    }

    /** From behind, the left and above; its points can be pulled. */
    static List<Reply.Drawn> drawings(Asked asked, Posed leading, Moved moved) {
        Setup setup = leading.setup();
        Detail detail = Detail.usual(asked.units());
        Set<String> stopped = new LinkedHashSet<>();
        leading.passed(moved.motion).forEach(limit -> stopped.add(limit.part()));
        if (stopped.contains("lateralLocator")) {
            stopped.add("crank");
        }
        String height = leading.state().rollCentreHeight().isPresent()
                ? "roll centre "
                        + asked.units()
                                .show(
                                        leading.state().rollCentreHeight().getAsDouble(),
                                        Dimension.LENGTH,
                                        asked.units() == Units.METRIC ? 0 : 2)
                : "";
        LinksView.Axle axle = new LinksView.Axle(
                Stance.laden(
                        setup.name(),
                        setup.look(),
                        setup.car(),
                        asked.work().trial().load(),
                        setup.entries()),
                leading.travel().end(),
                leading.rest(),
                leading.lines(),
                PlaceWords.of(moved.motion, leading.place(), asked.units()),
                height,
                stopped,
                setup.values(),
                readings(asked, leading),
                detail);
        return Stream.of(LinksView.behind(axle), LinksView.side(axle), LinksView.above(axle))
                .map(drawing -> new Reply.Drawn(drawing, detail))
                .toList();
    }

    /** What the links of the axle say at rest: told at the hand where a point is pulled. */
    private static List<Drawing.Reading> readings(Asked asked, Posed leading) {
        Answers answers = asked.work().usualTrial().ask(leading.setup().car(), LinkCriteria.JUDGED);
        return LinkCriteria.JUDGED.stream()
                .filter(judged -> judged.criterion()
                        .links()
                        .flatMap(reading -> reading.axle(answers.links()))
                        .equals(Optional.of(leading.travel().end())))
                .filter(judged -> judged.si(answers).isPresent())
                .map(judged -> new Drawing.Reading(
                        JudgedWords.figure(judged),
                        JudgedWords.cell(judged.criterion(), judged.si(answers).getAsDouble(), asked.units()),
                        asked.units().of(judged.criterion()).symbol()))
                .toList();
    }
}
