package planewright.app.exchange;

/**
 * What an archive may grow to; the disk must have room for it as well.
 *
 * @param entries files and folders
 * @param bytes of all files together, unpacked
 * @param freely bytes up to which any archive may grow
 * @param ratio of unpacked to packed bytes above that
 */
record Limits(int entries, long bytes, long freely, int ratio) {
    static final Limits USUAL = new Limits(250_000, 256L << 30, 64L << 20, 100);
}
