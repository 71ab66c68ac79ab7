package evenhand.window.question;

import evenhand.answers.Answers;
import evenhand.answers.Criterion;
import evenhand.answers.Judged;
import evenhand.answers.LinkCriteria;
import evenhand.answers.Progress;
import evenhand.answers.Trial;
import evenhand.car.Car;
import evenhand.car.End;
import evenhand.linkage.LinkPlaces.Where;
import evenhand.quantity.InvalidValue;
import evenhand.scenario.Setup;
import evenhand.window.desk.Asking;
import evenhand.window.desk.Question;
import evenhand.window.desk.Reply;
import evenhand.window.question.SearchFields.Wanted;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** Which length, shim or bracket of measured links gives a figure that is wanted, and what it does to the others. */
final class WhichBracket implements Question {
    private static final SearchAnswer ANSWER = new SearchAnswer(new SearchAnswer.Besides() {
        @Override
        public Answers ask(Trial trial, Car car, Set<Judged> asked) {
            return trial.ask(
                    car,
                    Stream.concat(asked.stream(), LinkCriteria.JUDGED.stream()).toList());
        }

        /** The same figure elsewhere in the travel, then what else the links of its axle say. */
        @Override
        public List<Judged> told(Wanted wanted, Car car, Answers before) {
            Criterion aimed = wanted.aim().judged().criterion();
            Optional<End> axle = LinkCriteria.axle(aimed, car);
            List<Criterion> told = new ArrayList<>();
            for (Where where : Where.values()) {
                atRest(aimed).map(plain -> LinkCriteria.in(where, plain)).ifPresent(told::add);
            }
            LinkCriteria.AT_REST.stream()
                    .filter(one -> LinkCriteria.axle(one, car).equals(axle))
                    .forEach(told::add);
            return told.stream()
                    .distinct()
                    .map(one -> new Judged(one, OptionalDouble.empty()))
                    .filter(one -> one.si(before).isPresent())
                    .toList();
        }
    });

    private static Optional<Criterion> atRest(Criterion criterion) {
        String where = criterion.links().orElseThrow().where().words();
        String name = criterion.name();
        String plain = where.isEmpty() ? name : name.substring(0, name.length() - where.length() - 1);
        return LinkCriteria.ALL.stream().filter(one -> one.name().equals(plain)).findFirst();
    }

    @Override
    public String key() {
        return "brackets";
    }

    @Override
    public Group group() {
        return Group.LINKS;
    }

    @Override
    public String words() {
        return "Which bracket, which length?";
    }

    @Override
    public List<Field> fields(Asking asking) {
        return new BracketFields(asking).all();
    }

    @Override
    public List<String> adjustments(Setup active) {
        return Knobs.ofLinks(active);
    }

    @Override
    public Reply answer(Asked asked, Progress progress) {
        BracketFields fields = new BracketFields(asked.asking());
        if (!fields.isMeasured()) {
            return NotMeasured.reply(asked.active().setup().car(), List.of(End.REAR, End.FRONT));
        }
        Wanted wanted;
        try {
            wanted = fields.read();
        } catch (InvalidValue wrong) {
            return Reply.only(String.valueOf(wrong.getMessage()));
        }
        return ANSWER.to(asked, wanted, progress);
    }
}
