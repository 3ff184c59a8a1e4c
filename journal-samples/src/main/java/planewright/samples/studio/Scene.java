package planewright.samples.studio;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is photographed: things, what they stand on, the light. */
public final class Scene {
    private final List<Thing> things = new ArrayList<>();
    private final Light light;
    private final Optional<Floor> floor;

    private Scene(Light light, Optional<Floor> floor) {
        this.light = light;
        this.floor = floor;
    }

    public static Scene on(Floor floor, Light light) {
        return new Scene(light, Optional.of(floor));
    }

    /** Nothing below: in the air. */
    public static Scene inAir(Light light) {
        return new Scene(light, Optional.empty());
    }

    public Scene add(Thing... more) {
        things.addAll(List.of(more));
        return this;
    }

    public Scene add(List<Thing> more) {
        things.addAll(more);
        return this;
    }

    List<Thing> things() {
        return things;
    }

    Light light() {
        return light;
    }

    Optional<Floor> floor() {
        return floor;
    }
}
