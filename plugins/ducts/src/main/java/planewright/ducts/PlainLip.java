package planewright.ducts;

/**
 * The edge of a skin of even thickness, rounded to a half circle: common practice, no source.
 *
 * @param thickness of the skin, m
 * @param depth of the entrance, m
 */
record PlainLip(double thickness, double depth) implements Lip {
    @Override
    public double noseRadius() {
        return thickness / 2;
    }

    @Override
    public double throatBehind() {
        return thickness / 2;
    }

    @Override
    public double throatBelow() {
        return thickness;
    }

    @Override
    public double length() {
        return thickness + depth;
    }

    @Override
    public double below(double behindNose) {
        return thickness - above(behindNose);
    }
}
