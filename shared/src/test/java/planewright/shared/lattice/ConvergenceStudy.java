package planewright.shared.lattice;

import java.util.Locale;

/** Prints the tables of docs/convergence.md. */
final class ConvergenceStudy {
    private ConvergenceStudy() {}

    public static void main(String[] args) {
        Shapes.study().forEach((name, planform) -> {
            double chord = Shapes.chord(planform);
            var all = NeutralPoint.of(planform, 0, 4600, step -> {});
            System.out.printf(Locale.ROOT, "%n## %s%n%n", name);
            System.out.printf(
                    Locale.ROOT,
                    "Settled at %.5f c̄ behind the datum, ± %.5f c̄ claimed, %d panels.%n%n",
                    all.x() / chord,
                    all.error() / chord,
                    all.finest().panels());
            System.out.println(
                    "| panels | error of the lattice, % c̄ | observed order | error refined, % c̄ | claimed, % c̄ |");
            System.out.println("|--:|--:|--:|--:|--:|");
            for (int i = 0; i < all.steps().size(); i++) {
                var step = all.steps().get(i);
                double error = (step.x() - all.x()) / chord;
                var order = "";
                if (i > 0 && error != 0) {
                    var before = all.steps().get(i - 1);
                    order = String.format(
                            Locale.ROOT,
                            "%.2f",
                            Math.log(Math.abs((before.x() - all.x()) / (step.x() - all.x())))
                                    / Math.log((double) step.fineness() / before.fineness()));
                }
                var refined = "";
                var claimed = "";
                if (i >= 2 && i + 1 < all.steps().size()) {
                    var settled = NeutralPoint.of(planform, 0, step.panels() + 1, each -> {});
                    refined = String.format(Locale.ROOT, "%.4f", 100 * (settled.x() - all.x()) / chord);
                    claimed = String.format(Locale.ROOT, "%.4f", 100 * settled.error() / chord);
                }
                System.out.printf(
                        Locale.ROOT,
                        "| %d | %.4f | %s | %s | %s |%n",
                        step.panels(),
                        100 * error,
                        order,
                        refined,
                        claimed);
            }
        });
    }
}
