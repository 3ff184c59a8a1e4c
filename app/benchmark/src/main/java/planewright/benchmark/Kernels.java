package planewright.benchmark;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** The pieces of {@link planewright.benchmark.kernel}, one forked Java virtual machine for each; none where a single round only shows that all works. */
final class Kernels implements Section {
    private static final TimeValue AN_ITERATION = TimeValue.milliseconds(200);

    @Override
    public void measure(Run run) throws IOException {
        var options = new OptionsBuilder()
                .include("^planewright\\.benchmark\\.kernel\\.")
                .mode(Mode.AverageTime)
                .timeUnit(TimeUnit.MICROSECONDS)
                .forks(run.rounds() > 1 ? 1 : 0)
                .jvmArgsAppend(
                        "-XX:+UseSerialGC",
                        "-Djava.awt.headless=true",
                        "-Djava.util.logging.config.class=planewright.app.QuietLibraries")
                .warmupIterations(run.rounds())
                .warmupTime(AN_ITERATION)
                .measurementIterations(run.rounds())
                .measurementTime(AN_ITERATION)
                .shouldFailOnError(true)
                .verbosity(VerboseMode.SILENT)
                .build();
        try {
            for (var result : new Runner(options).run()) {
                var name = result.getParams().getBenchmark().replaceFirst(".*\\.kernel\\.", "");
                run.report()
                        .figure("kernels, µs", name, result.getPrimaryResult().getScore());
            }
        } catch (RunnerException failure) {
            throw new IOException("the kernels were not measured: " + failure.getMessage(), failure);
        }
    }
}
