package evenhand.words.travel;

import evenhand.car.End;
import evenhand.car.links.LinkedAxle;
import evenhand.linkage.AxleState;
import evenhand.linkage.TravelAnswer;
import java.util.List;

/** An axle of a car, followed through its travel. */
public record AxleTravel(End end, LinkedAxle linked, TravelAnswer.Followed followed) {
    /** Furthest place of heave in bump. */
    AxleState bump() {
        List<AxleState> heave = followed.heave();
        return heave.get(heave.size() - 1);
    }

    /** Furthest place of heave in droop. */
    AxleState droop() {
        return followed.heave().get(0);
    }
}
