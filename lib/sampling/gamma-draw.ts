import type { Generator } from "./generator";
import { normalQuantile } from "./normal-share";
import { portableExp, portableLog } from "./portable";

/**
 * Draws from a gamma distribution of scale 1.
 * @param shape above 0
 * @source Marsaglia and Tsang, ACM TOMS 26(3), 2000; below a shape of 1 by their boost, U^(1/shape)
 */
export function gammaDraw(shape: number): (generator: Generator) => number {
  const boosted = shape < 1 ? shape + 1 : shape;
  const d = boosted - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  return (generator) => {
    let drawn = 0;
    for (;;) {
      const x = normalQuantile(generator.nextShare());
      const root = 1 + c * x;
      if (root <= 0) continue;
      const v = root * root * root;
      const u = generator.nextShare();
      const square = x * x;
      if (u < 1 - 0.0331 * square * square || portableLog(u) < 0.5 * square + d * (1 - v + portableLog(v))) {
        drawn = d * v;
        break;
      }
    }
    return shape < 1 ? drawn * portableExp(portableLog(generator.nextShare()) / shape) : drawn;
  };
}
