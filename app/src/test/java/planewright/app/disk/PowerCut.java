package planewright.app.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Writes down what a program asks of a disk, and what would be left of it if the power went after any step. By POSIX (IEEE
 * 1003.1, fsync) a file's content is sure to be there once the file was forced, and a name once its folder was: of all else,
 * chance decides.
 */
public final class PowerCut implements Happening {
    private static final byte[] NOTHING = {};

    private final Path root;
    private final List<Step> steps = new ArrayList<>();
    private final int begun;

    /** A disk below a folder, all that is there by now being safe. */
    public PowerCut(Path root) throws IOException {
        this.root = root;
        try (Stream<Path> all = Files.walk(root)) {
            for (var place : all.toList()) {
                if (Files.isDirectory(place)) {
                    steps.add(new Step(What.FOLDER, place, place, NOTHING));
                } else {
                    steps.add(new Step(What.MADE, place, place, NOTHING));
                    steps.add(new Step(What.WROTE, place, place, Files.readAllBytes(place)));
                    steps.add(new Step(What.FORCED_FILE, place, place, NOTHING));
                }
                steps.add(new Step(What.FORCED_FOLDER, place.getParent(), place, NOTHING));
            }
        }
        begun = steps.size();
    }

    private enum What {
        FOLDER,
        MADE,
        WROTE,
        FORCED_FILE,
        FORCED_FOLDER,
        MOVED,
        DELETED
    }

    private record Step(What what, Path place, Path to, byte[] content) {}

    /** What a program could leave out when it saves. */
    public enum Carelessness {
        NONE,
        FILES_NOT_FORCED,
        FOLDERS_NOT_FORCED,
        WRITTEN_IN_PLACE
    }

    /** How many steps were made by now. */
    public synchronized int steps() {
        return steps.size();
    }

    @Override
    public synchronized void making(Path file) {
        steps.add(new Step(What.MADE, file, file, NOTHING));
    }

    @Override
    public synchronized void madeFolder(Path folder) {
        steps.add(new Step(What.FOLDER, folder, folder, NOTHING));
    }

    @Override
    public synchronized void wrote(Path file) throws IOException {
        steps.add(new Step(What.WROTE, file, file, Files.readAllBytes(file)));
    }

    @Override
    public synchronized void forced(Path place) {
        steps.add(new Step(Files.isDirectory(place) ? What.FORCED_FOLDER : What.FORCED_FILE, place, place, NOTHING));
    }

    @Override
    public synchronized void moved(Path from, Path to) throws IOException {
        steps.add(new Step(What.MOVED, from, to, Files.readAllBytes(to)));
    }

    @Override
    public synchronized void deleted(Path place) {
        steps.add(new Step(What.DELETED, place, place, NOTHING));
    }

    /**
     * Writes into an empty folder what could be left when the power went.
     *
     * @param count how many steps were made before that
     * @param carelessness what the program is thought to have left out
     */
    public synchronized void leave(int count, Carelessness carelessness, Random chance, Path folder)
            throws IOException {
        var disk = new Left();
        steps.subList(0, begun).forEach(disk::make);
        disk.careless = carelessness;
        steps.subList(begun, count).forEach(disk::make);
        disk.write(chance, folder);
    }

    /** A file, whatever it is called. */
    private static final class Content {
        private byte[] now = NOTHING;
        private byte[] safe = NOTHING;

        byte[] left(Random chance) {
            if (Arrays.equals(now, safe)) {
                return safe;
            }
            return switch (chance.nextInt(4)) {
                case 0 -> now;
                case 1 -> Arrays.copyOf(now, chance.nextInt(now.length + 1));
                default -> safe;
            };
        }
    }

    /** What is on the disk, and what of it is sure to be. */
    private final class Left {
        private final Set<Path> folders = new TreeSet<>();
        private final Set<Path> safeFolders = new TreeSet<>();
        private final Map<Path, Content> names = new TreeMap<>();
        private final Map<Path, Content> safeNames = new TreeMap<>();
        private Carelessness careless = Carelessness.NONE;

        void make(Step step) {
            switch (step.what()) {
                case FOLDER -> folders.add(step.place());
                case MADE -> content(step.place()).now = NOTHING;
                case WROTE -> content(step.place()).now = step.content();
                case FORCED_FILE -> forceFile(step.place());
                case FORCED_FOLDER -> forceFolder(step.place());
                case MOVED -> move(step);
                default -> names.remove(step.place());
            }
        }

        private Content content(Path file) {
            return names.computeIfAbsent(file, made -> new Content());
        }

        private void forceFile(Path file) {
            if (careless != Carelessness.FILES_NOT_FORCED) {
                content(file).safe = content(file).now;
            }
        }

        private void forceFolder(Path folder) {
            if (careless == Carelessness.FOLDERS_NOT_FORCED) {
                return;
            }
            safeNames.keySet().removeIf(name -> folder.equals(name.getParent()) && !names.containsKey(name));
            names.forEach((name, content) -> {
                if (folder.equals(name.getParent())) {
                    safeNames.put(name, content);
                    if (careless == Carelessness.WRITTEN_IN_PLACE) {
                        content.safe = content.now;
                    }
                }
            });
            folders.stream().filter(each -> folder.equals(each.getParent())).forEach(safeFolders::add);
        }

        private void move(Step step) {
            if (careless == Carelessness.WRITTEN_IN_PLACE) {
                content(step.to()).now = step.content();
                names.remove(step.place());
            } else {
                names.put(step.to(), names.remove(step.place()));
            }
        }

        void write(Random chance, Path target) throws IOException {
            var there = new TreeSet<Path>(Set.of(root));
            for (var folder : folders) {
                if (there.contains(folder.getParent()) && (safeFolders.contains(folder) || chance.nextBoolean())) {
                    there.add(folder);
                    Files.createDirectories(target.resolve(root.relativize(folder)));
                }
            }
            var all = new TreeSet<>(names.keySet());
            all.addAll(safeNames.keySet());
            for (var name : all) {
                var content = names.get(name);
                var safe = safeNames.get(name);
                var left = content == safe || chance.nextBoolean() ? safe : content;
                if (left != null && there.contains(name.getParent())) {
                    Files.write(target.resolve(root.relativize(name)), left.left(chance));
                }
            }
        }
    }
}
