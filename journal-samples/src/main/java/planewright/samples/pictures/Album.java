package planewright.samples.pictures;

import java.util.ArrayList;
import java.util.List;

/** All pictures. */
final class Album {
    private Album() {}

    static List<Picture> all(Hangar hangar) {
        var all = new ArrayList<Picture>();
        all.addAll(PlanViews.all(hangar));
        all.addAll(FoamBench.all());
        all.addAll(RayCloseUps.all());
        all.addAll(Electrics.all(hangar));
        all.addAll(Sketches.all(hangar));
        all.addAll(Flights.all(hangar));
        all.addAll(Repairs.all());
        all.addAll(WoodBench.all(hangar));
        all.addAll(Templates.all());
        return all;
    }
}
