package evenhand.advice;

import evenhand.catalogue.Slot;
import evenhand.choice.Effect;
import java.util.List;
import java.util.Optional;

/**
 * A step that helps and that a shop can answer for.
 *
 * <p>What it is worth decides which comes first:
 *
 * <pre>  worth = gain · work · way back / (1 + harm/2)  </pre>
 * gain and harm in the least differences that a driver notices; work 1 for what is set or bolted on, 1/2 where the car is rebuilt;
 * way back 1 for what is turned back, 0.8 for an old part that goes in again, 0.6 for what cannot be undone. The weights are common
 * practice: what is quick and can be undone is tried before what is cut and welded.
 *
 * @param effects of the step in each bend, in the trial's order; where the car does not turn as it stands, without its figures
 * @param gain by how much the worst value gets better, SI
 * @param worst the bend that has it as the car stands
 * @param felt the gain in what is noticeable
 * @param harm the largest that gets worse, in what is noticeable; 0 where nothing noticeable does
 * @param tooSmall whether a driver would not feel the gain by itself
 * @param price what it takes of the room to the stops
 * @param upTo the largest of the usual sizes that may be taken as well, of a part that comes in sizes
 */
public record Remedy(
        Effect.Step step,
        List<Effect> effects,
        double gain,
        int worst,
        double felt,
        double harm,
        boolean tooSmall,
        Price price,
        Optional<Remedy> upTo) {
    private static final double REBUILDING = 0.5;
    private static final double OLD_PART = 0.8;
    private static final double NO_WAY_BACK = 0.6;

    public Remedy {
        effects = List.copyOf(effects);
    }

    /** What it does where the figure is the worst now. */
    public Effect whereWorst() {
        return effects.get(worst);
    }

    /** What decides the order. */
    public double worth() {
        double work = step.work() == Slot.Work.SETTING ? 1 : REBUILDING;
        double back = switch (step.wayBack()) {
            case TURNED_BACK -> 1;
            case OLD_PART -> OLD_PART;
            case NONE -> NO_WAY_BACK;
        };
        return felt * work * back / (1 + harm / 2);
    }

    Remedy upTo(Remedy largest) {
        return new Remedy(step, effects, gain, worst, felt, harm, tooSmall, price, Optional.of(largest));
    }
}
