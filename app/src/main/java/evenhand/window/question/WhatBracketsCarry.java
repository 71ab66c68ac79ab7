package evenhand.window.question;

import evenhand.answers.Progress;
import evenhand.car.End;
import evenhand.car.Side;
import evenhand.car.mounts.HardUse;
import evenhand.chart.Chart;
import evenhand.chart.LoadCharts;
import evenhand.chart.LoadCharts.Carrying;
import evenhand.drawing.Detail;
import evenhand.drawing.ForcesView;
import evenhand.drawing.Stance;
import evenhand.forms.LoadsTable;
import evenhand.forms.Table;
import evenhand.look.SetupStyle;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.desk.TurnedSetup;
import evenhand.words.Alike;
import evenhand.words.loads.LoadedSetup;
import evenhand.words.loads.LoadedSetup.Loaded;
import evenhand.words.loads.LoadsAsked;
import evenhand.words.loads.LoadsWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What links, brackets and mounts carry in all that the car is put through; one case drawn, its forces as arrows. */
final class WhatBracketsCarry implements Question {
    @Override
    public String key() {
        return "loads";
    }

    @Override
    public Group group() {
        return Group.LOADS;
    }

    @Override
    public String words() {
        return "What do the brackets carry?";
    }

    @Override
    public List<Field> fields(Asking asking) {
        return List.of(axleField(asking.work().activeSetup()), caseField(asking));
    }

    /** The axle with links first. */
    private static Field axleField(Setup active) {
        boolean frontOnly = active.car().front().links().isPresent()
                && active.car().rear().links().isEmpty();
        return new Field(
                "axle", "axle", List.of(End.REAR.key(), End.FRONT.key()), (frontOnly ? End.FRONT : End.REAR).key());
    }

    /** The cases, to each hand where they have hands; the first blow that there is at first. */
    private static Field caseField(Asking asking) {
        List<String> titles = titles(asking.work().scenario().hardUse());
        String first = titles.stream()
                .filter(title -> !title.equals(titles.get(0)))
                .findFirst()
                .orElse(titles.get(0));
        return new Field("case", "drawn in", titles, first);
    }

    private static List<String> titles(List<HardUse> uses) {
        return uses.stream()
                .flatMap(use -> use.handed()
                        ? Stream.of(HardUse.handed(use.name(), Side.LEFT), HardUse.handed(use.name(), Side.RIGHT))
                        : Stream.of(use.name()))
                .toList();
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Stream.concat(
                        active.values().stream()
                                .map(value -> value.path())
                                .filter(path -> path.startsWith("mounts.")
                                        && (path.endsWith(".outer")
                                                || path.endsWith(".overhang")
                                                || path.endsWith(".span")
                                                || path.endsWith(".diameter"))),
                        Knobs.here(
                                active,
                                Stream.of(
                                        "rear.lateralLocator.pivot.up",
                                        "rear.lateralLocator.body.up",
                                        "rear.links.lowerLink.body.up",
                                        "rear.links.lowerLink.axle.up",
                                        "rear.links.upperLink.body.up",
                                        "front.links.lowerArm.outer.up",
                                        "front.lowered",
                                        "rear.lowered"))
                                .stream())
                .limit(MOST_KNOBS)
                .toList();
    }

    private static final int MOST_KNOBS = 10;

    @Override
    public boolean drawsTheCar() {
        return false;
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        LoadsAsked question = LoadsAsked.all(asked.work().scenario());
        Map<String, LoadedSetup> answers = new LinkedHashMap<>();
        for (TurnedSetup one : asked.shown()) {
            progress.goOn();
            progress.at((double) answers.size() / asked.shown().size());
            answers.put(
                    one.setup().name(),
                    LoadedSetup.of(one.setup(), asked.work().trial().load(), question));
        }
        return reply(asked, answers);
    }

    private static Reply reply(Asked asked, Map<String, LoadedSetup> answers) {
        List<Loaded> loaded = new ArrayList<>();
        Map<String, List<String>> said = new LinkedHashMap<>();
        answers.forEach((name, answer) -> {
            if (answer instanceof Loaded one) {
                Optional<Loaded> first = loaded.isEmpty() ? Optional.empty() : Optional.of(loaded.get(0));
                loaded.add(one);
                said.put(name, one.words(first, asked.units()));
            } else if (answer instanceof LoadedSetup.NoAnswer none) {
                said.put(name, List.of("No answer: " + none.text() + "."));
            }
        });
        List<Alike> alike = Alike.of(said);
        List<Reply.Paragraph> more = new ArrayList<>(Straight.below(asked, alike));
        more.add(0, new Reply.Paragraph(Straight.MIND, LoadsWords.CAUTIONS));
        List<Carrying> carrying = loaded.stream()
                .map(one -> new Carrying(one.name(), new SetupStyle(SideBySide.look(asked, one.name())), one.loads()))
                .toList();
        Optional<Loaded> leading = loaded.stream()
                .filter(one -> one.name().equals(asked.work().active()))
                .findFirst();
        End end = asked.wish(axleField(asked.work().activeSetup())).equals(End.FRONT.key()) ? End.FRONT : End.REAR;
        List<Reply.Next> next =
                leading.isPresent() && leading.get().rest().car().mounts().isEmpty()
                        ? List.of(
                                Straight.toTheForm(
                                        "give what you make or trust under \"mounts\", and this says what its pins, washers and beams feel"))
                        : List.of();
        List<Reply.Drawn> drawings =
                leading.map(one -> drawings(asked, one, end)).orElse(List.of());
        if (!drawings.isEmpty()) {
            more.add(new Reply.Paragraph("In the drawings", ForcesView.MEANING));
        }
        return new Reply(
                Straight.large(asked, alike),
                more,
                charts(asked, carrying, end),
                drawings,
                loaded.isEmpty() ? Table.NONE : LoadsTable.worst(loaded, asked.units()),
                next);
    }

    private static List<Chart> charts(Asked asked, List<Carrying> carrying, End end) {
        List<Chart> charts = new ArrayList<>();
        if (!carrying.isEmpty()) {
            charts.add(LoadCharts.members(carrying, end, asked.units()));
            charts.add(LoadCharts.mounts(carrying, asked.units()));
            charts.removeIf(Chart::isEmpty);
        }
        return charts;
    }

    private static List<Reply.Drawn> drawings(Asked asked, Loaded leading, End end) {
        String title = asked.wish(caseField(asked.asking()));
        return leading.loads().carried().stream()
                .filter(one -> one.title().equals(title))
                .findFirst()
                .map(one ->
                        ForcesView.of(stance(leading), leading.rest().car(), leading.loads(), one, end, asked.units())
                                .stream()
                                .map(drawing -> new Reply.Drawn(drawing, Detail.usual(asked.units())))
                                .toList())
                .orElse(List.of());
    }

    private static Stance stance(Loaded leading) {
        Setup setup = leading.setup();
        return Stance.laden(setup.name(), setup.look(), setup.car(), leading.load(), setup.entries());
    }
}
