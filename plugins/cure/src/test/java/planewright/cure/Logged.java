package planewright.cure;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import planewright.api.journal.Build;
import planewright.api.journal.Entry;
import planewright.api.journal.Joint;
import planewright.api.journal.Life;
import planewright.api.journal.Measurement;
import planewright.api.journal.Part;
import planewright.api.journal.Picture;
import planewright.api.journal.Planform;
import planewright.api.journal.SetUpValue;
import planewright.api.quantity.Measured;

/** An entry that holds one measurement, and nothing else. */
record Logged(String build, LocalDateTime at, String what, Measured<?> value) implements Entry, Measurement {
    static Build aircraft(String id) {
        return new Aircraft(id);
    }

    @Override
    public String id() {
        return build + at;
    }

    @Override
    public Kind kind() {
        return Kind.NOTE;
    }

    @Override
    public String title() {
        return "";
    }

    @Override
    public List<String> text() {
        return List.of();
    }

    @Override
    public List<String> tags() {
        return List.of();
    }

    @Override
    public List<Measurement> measurements() {
        return List.of(this);
    }

    @Override
    public List<Joint> joints() {
        return List.of();
    }

    @Override
    public List<Picture> pictures() {
        return List.of();
    }

    @Override
    public List<SetUpValue> setUp() {
        return List.of();
    }

    @Override
    public String name() {
        return what;
    }

    @Override
    public String written() {
        return value.value().getValue().toString();
    }

    @Override
    public String method() {
        return "";
    }

    private record Aircraft(String id) implements Build {
        @Override
        public String name() {
            return id;
        }

        @Override
        public Life life() {
            return Life.ON_THE_BENCH;
        }

        @Override
        public String layout() {
            return "";
        }

        @Override
        public String datum() {
            return "";
        }

        @Override
        public LocalDate begun() {
            return LocalDate.of(2025, 1, 1);
        }

        @Override
        public List<String> notes() {
            return List.of();
        }

        @Override
        public List<Part> parts() {
            return List.of();
        }

        @Override
        public Optional<Planform> planform() {
            return Optional.empty();
        }
    }
}
