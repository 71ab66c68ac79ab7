package evenhand.words.brakes;

import evenhand.car.Brakes;
import evenhand.car.Car;
import java.util.List;

/** What a car whose brakes nobody knows has to give before it can be asked how it brakes. */
public final class BrakesToGive {
    public static final String LEAD = "Nothing is known of the brakes of this car: give what it has first.";

    public static final List<String> WHAT = List.of(
            "Either the share of the brake force at the front wheels alone, brakes.frontShare: that answers which end locks"
                    + " first.",
            "Or the parts from the pedal on, which also answer how hard the foot presses and how far it takes to stop:"
                    + " the pedal's ratio, the bore of the master cylinder, of front and rear the bore and number of the"
                    + " pistons, the radius, the friction of the pads or the factor of the drum; booster and rear valve where"
                    + " there are any.");

    public static final List<String> WHERE = List.of(
            "Under \"The car itself\", Brakes; or in the file, as \"brakes\" in car.",
            "The demo car Harbour saloon has all of the parts: File, new from a demo car, to look at them.");

    private BrakesToGive() {}

    /** Whether something of its brakes was given. */
    public static boolean given(Car car) {
        Brakes brakes = car.brakes();
        return brakes.frontShare().isPresent() || brakes.parts().isPresent();
    }
}
