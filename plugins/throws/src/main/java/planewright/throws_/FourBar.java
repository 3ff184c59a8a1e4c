package planewright.throws_;

import java.util.ArrayList;
import java.util.List;

/**
 * A four-bar linkage in a plane: the ground runs from the crank's shaft at the origin to the rocker's at (ground, 0), the
 * coupler joins crank and rocker. Angles in radians, counter-clockwise from the ground; lengths in any one unit, above 0.
 *
 * <p>Positions close the loop exactly, by the law of cosines on coupler, rocker and the diagonal between them. That solves
 * Freudenstein's equation K1 cos ψ − K2 cos θ + K3 = cos(θ − ψ) (F. Freudenstein, Transactions of the ASME 77 (1955) 853-861,
 * from memory), with K1 = ground / crank, K2 = ground / rocker, K3 = (crank² − coupler² + rocker² + ground²) / (2 crank
 * rocker). Speeds: R. L. Norton, Design of Machinery, chapter 6 (from memory), ω4/ω2 = (a/c) sin(θ2 − θ3) / sin(θ4 − θ3).
 *
 * @param ground between the two shafts; greater than the crank, so that the crank never reaches the rocker's shaft
 * @param crank what is turned
 * @param coupler what joins both
 * @param rocker what follows
 */
record FourBar(double ground, double crank, double coupler, double rocker) {
    /** Of the two ways in which the same links close at one angle of the crank. */
    enum Branch {
        OPEN(-1),
        CROSSED(1);

        private final int sign;

        Branch(int sign) {
            this.sign = sign;
        }
    }

    /** Angles of the crank between which the loop closes; infinite where it goes all round. */
    record Range(double from, double to) {}

    /** The way in which the links close where both angles are known. */
    Branch branch(double crankAngle, double rockerAngle) {
        return Math.sin(bearing(crankAngle) - rockerAngle) > 0 ? Branch.OPEN : Branch.CROSSED;
    }

    /** Whether the links reach each other at an angle of the crank. */
    boolean closes(double crankAngle) {
        return Math.abs(opening(crankAngle)) <= 1;
    }

    /** The rocker's angle, continuous in the crank's; where the loop does not close, that of the nearest dead point. */
    double rockerAngle(double crankAngle, Branch branch) {
        double opening = Math.max(-1, Math.min(1, opening(crankAngle)));
        return bearing(crankAngle) + branch.sign * Math.acos(opening);
    }

    /** The coupler's direction, from crank to rocker. */
    double couplerAngle(double crankAngle, Branch branch) {
        double angle = rockerAngle(crankAngle, branch);
        return Math.atan2(
                rocker * Math.sin(angle) - crank * Math.sin(crankAngle),
                ground + rocker * Math.cos(angle) - crank * Math.cos(crankAngle));
    }

    /** How much the rocker turns for a small turn of the crank; infinite where the rocker is at a dead point. */
    double ratio(double crankAngle, Branch branch) {
        double along = couplerAngle(crankAngle, branch);
        double follows = rockerAngle(crankAngle, branch);
        return crank * Math.sin(crankAngle - along) / (rocker * Math.sin(follows - along));
    }

    /** The angle between coupler and rocker, from 0 where they are in line to a right angle: the transmission angle. */
    double couplerToRocker(double crankAngle, Branch branch) {
        return acute(rockerAngle(crankAngle, branch) - couplerAngle(crankAngle, branch));
    }

    /** The angle between coupler and crank, from 0 where they are in line to a right angle. */
    double couplerToCrank(double crankAngle, Branch branch) {
        return acute(crankAngle - couplerAngle(crankAngle, branch));
    }

    /** How far the crank turns either way from an angle at which the loop closes, until coupler and rocker are in line. */
    Range range(double crankAngle) {
        double from = Math.IEEEremainder(crankAngle, 2 * Math.PI);
        double nearest = crankAngleAtDiagonal(Math.abs(coupler - rocker));
        double farthest = crankAngleAtDiagonal(coupler + rocker);
        double turns = crankAngle - from;
        if (Double.isNaN(nearest)) {
            return Double.isNaN(farthest)
                    ? new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)
                    : new Range(turns - farthest, turns + farthest);
        }
        double to = Double.isNaN(farthest) ? 2 * Math.PI - nearest : farthest;
        return from > 0 ? new Range(turns + nearest, turns + to) : new Range(turns - to, turns - nearest);
    }

    /** Angles of the crank, from −π to π, at which coupler and crank are in line on a branch: there the rocker turns back. */
    List<Double> turningPoints(Branch branch) {
        var angles = new ArrayList<Double>();
        turningPoints(coupler + crank, false, branch, angles);
        turningPoints(Math.abs(coupler - crank), coupler > crank, branch, angles);
        return angles;
    }

    /** Where the rocker's end is so far from the crank's shaft; folded where the crank points away from it. */
    private void turningPoints(double distance, boolean folded, Branch branch, List<Double> angles) {
        double cosine = (distance * distance - ground * ground - rocker * rocker) / (2 * ground * rocker);
        if (!(Math.abs(cosine) <= 1) || distance == 0) {
            return;
        }
        for (double rockerAngle : new double[] {Math.acos(cosine), -Math.acos(cosine)}) {
            double towards = Math.atan2(rocker * Math.sin(rockerAngle), ground + rocker * Math.cos(rockerAngle));
            double crankAngle = Math.IEEEremainder(folded ? towards + Math.PI : towards, 2 * Math.PI);
            if (branch(crankAngle, rockerAngle) == branch) {
                angles.add(crankAngle);
            }
        }
    }

    /** From 0 to π; NaN where the diagonal is never so long. */
    private double crankAngleAtDiagonal(double length) {
        double cosine = (crank * crank + ground * ground - length * length) / (2 * crank * ground);
        return Math.abs(cosine) < 1 ? Math.acos(cosine) : Double.NaN;
    }

    /** From the crank's end to the rocker's shaft. */
    private double diagonal(double crankAngle) {
        return Math.hypot(ground - crank * Math.cos(crankAngle), crank * Math.sin(crankAngle));
    }

    /** The direction of the crank's end from the rocker's shaft; continuous, for the crank never reaches that shaft. */
    private double bearing(double crankAngle) {
        return Math.PI - Math.atan2(crank * Math.sin(crankAngle), ground - crank * Math.cos(crankAngle));
    }

    /** Cosine of the angle between rocker and diagonal. */
    private double opening(double crankAngle) {
        double diagonal = diagonal(crankAngle);
        return (rocker * rocker + diagonal * diagonal - coupler * coupler) / (2 * rocker * diagonal);
    }

    private static double acute(double angle) {
        return Math.asin(Math.min(1, Math.abs(Math.sin(angle))));
    }
}
