import { type BetaShapes, betaDensity, betaShare, logBetaScale } from "./beta-share";

/** Cells of the table; they are narrow at both ends, where the share may rise steeply. */
const cells = 1024;

/**
 * The beta quantile as a function that can be asked a hundred thousand times: shares and densities are tabled once, a
 * cubic is put between neighbours, and its crossing is found. Good to about 1e-8 of the whole width. It never
 * falls by more than rounding.
 * @param shapes both 1 or more
 * @source cubic Hermite interpolation of the regularised incomplete beta function, derived
 */
export function betaQuantile(shapes: BetaShapes): (chance: number) => number {
  const logScale = logBetaScale(shapes);
  const places = new Float64Array(cells + 1);
  const shares = new Float64Array(cells + 1);
  const slopes = new Float64Array(cells + 1);
  for (let index = 0; index <= cells; index += 1) {
    const along = index / cells;
    // narrow at the ends, without a cosine, whose last bits differ between machines
    const at = along * along * along * (along * (6 * along - 15) + 10);
    places[index] = at;
    shares[index] = betaShare(at, shapes, logScale);
    slopes[index] = betaDensity(at, shapes, logScale);
  }
  // for each 1024th of the chances the cell it starts in, so that the search is short
  const starts = new Int32Array(cells + 1);
  for (let index = 0, from = 0; index <= cells; index += 1) {
    while (from < cells - 1 && (shares[from + 1] as number) <= index / cells) from += 1;
    starts[index] = from;
  }

  return (chance) => {
    if (chance <= 0) return 0;
    if (chance >= 1) return 1;
    let at = starts[Math.floor(chance * cells)] as number;
    while (at < cells - 1 && (shares[at + 1] as number) < chance) at += 1;
    const left = places[at] as number;
    const width = (places[at + 1] as number) - left;
    const start = shares[at] as number;
    const rise = (shares[at + 1] as number) - start;
    const m0 = (slopes[at] as number) * width;
    const m1 = (slopes[at + 1] as number) * width;
    const square = 3 * rise - 2 * m0 - m1;
    const cube = m0 + m1 - 2 * rise;
    const wanted = chance - start;
    let low = 0;
    let high = 1;
    let t = rise > 0 ? wanted / rise : 0.5;
    for (let step = 0; step < 30; step += 1) {
      const off = t * (m0 + t * (square + t * cube)) - wanted;
      if (off < 0) low = t;
      else high = t;
      const slope = m0 + t * (2 * square + 3 * t * cube);
      const next = slope > 0 ? t - off / slope : low - 1;
      // looked at before it is kept between the two: at the crossing itself the step is nought, and halving would leave it
      if (Math.abs(next - t) <= 1e-13 * t) break;
      t = next > low && next < high ? next : (low + high) / 2;
    }
    return left + t * width;
  };
}
