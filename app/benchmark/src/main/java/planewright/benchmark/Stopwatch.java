package planewright.benchmark;

/** Milliseconds since it was made. */
final class Stopwatch {
    private final long began = System.nanoTime();

    double milliseconds() {
        return (System.nanoTime() - began) / 1e6;
    }
}
