package planewright.cure;

/**
 * Where a joint cures: the air around it and how thick it is.
 *
 * @param air the shop's temperature
 * @param airSpread ± of the temperatures, K
 * @param humidity relative, 0 to 1
 * @param humiditySpread its ±
 * @param millimetres thickness of the joint
 * @param thicknessSpread its ±, mm
 */
record Bench(
        ShopAir air,
        double airSpread,
        double humidity,
        double humiditySpread,
        double millimetres,
        double thicknessSpread) {}
