package planewright.shared.lattice;

/** Where vortices and control points stand along a chord, and strips along a span; all as shares from 0 to 1. */
public enum Spacing {
    /** Even panels, the vortex at a quarter and the control point at three quarters of each; even strips. */
    EVEN {
        @Override
        double vortex(int panel, int panels) {
            return (panel + 0.25) / panels;
        }

        @Override
        double control(int panel, int panels) {
            return (panel + 0.75) / panels;
        }

        @Override
        double end(int panel, int panels) {
            return (panel + 1.0) / panels;
        }

        @Override
        double across(double strip, int strips) {
            return strip / strips;
        }
    },
    /**
     * Points that even angles on a semicircle throw on its diameter; with one panel a chord the same as {@link #EVEN}.
     * Source: Lan (1974), equations 5 and 6 for the chord; across the span each strip's control point stands at its middle
     * angle.
     */
    SEMICIRCLE {
        @Override
        double vortex(int panel, int panels) {
            return panels == 1 ? EVEN.vortex(0, 1) : half((panel + 0.5) / panels);
        }

        @Override
        double control(int panel, int panels) {
            return panels == 1 ? EVEN.control(0, 1) : half((panel + 1.0) / panels);
        }

        @Override
        double end(int panel, int panels) {
            return half(Math.min(1, (panel + 1.5) / panels));
        }

        @Override
        double across(double strip, int strips) {
            return half(strip / strips);
        }
    };

    /** Where the bound vortex of a panel counted from 0 stands. */
    abstract double vortex(int panel, int panels);

    /** Where no air passes through a panel counted from 0. */
    abstract double control(int panel, int panels);

    /** Where the piece of the chord ends for which the control point of a panel stands. */
    abstract double end(int panel, int panels);

    /** Where the edge before a strip lies, or with half a strip more its middle. */
    abstract double across(double strip, int strips);

    private static double half(double turn) {
        return (1 - Math.cos(Math.PI * turn)) / 2;
    }
}
