package planewright.app.calc;

import java.nio.file.Path;

/**
 * A plugin, or a calculator of one, that cannot be used; all others can.
 *
 * @param file where the plugin lies
 * @param reason why, in words that name what is wrong
 */
public record PluginProblem(Path file, String reason) {}
