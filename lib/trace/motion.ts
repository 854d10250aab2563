import { type In, measured } from "#lib/quantity";
import { type Pulse, standardGravity, type Trace } from "./model";
import { levelAt } from "./running-integral";

/** A moment of the contact: time since the onset in s, slowing-down in m/s². */
type Moment = Readonly<{ time: number; slowing: number }>;

/**
 * What the pulse does to the speed. A sensor reads 1 g more than the change of speed it goes through, because gravity
 * goes on pulling: the missile slows down by (level − 1 g).
 */
export type SpeedChange = Readonly<{
  /** Speed before plus speed of the rebound, in m/s. */
  change: In<"m/s">;
  /** Distance in m that the change of speed accounts for: the way at the speed of impact would be longer by it. */
  heldBack: number;
  duration: In<"s">;
}>;

function momentsOf({ levels, interval }: Trace, { onset, end }: Pulse): readonly Moment[] {
  const inside = levels.flatMap((_, index) => (index > onset && index < end ? [index] : []));
  return [onset, ...inside, end].map((place) => ({
    time: (place - onset) * interval,
    slowing: (levelAt(levels, place) - 1) * standardGravity,
  }));
}

/** Speed lost and way held back over one step in which the slowing-down changes evenly. */
function overStep(here: Moment, next: Moment) {
  const step = next.time - here.time;
  return {
    step,
    lost: ((here.slowing + next.slowing) / 2) * step,
    heldBack: ((2 * here.slowing + next.slowing) / 6) * step ** 2,
  };
}

/** Change of speed over the pulse by integration, and its second integral. */
export function speedChange(trace: Trace, pulse: Pulse): SpeedChange {
  const moments = momentsOf(trace, pulse);
  let [change, heldBack] = [0, 0];
  for (const [index, next] of moments.entries()) {
    const here = moments[index - 1];
    if (here === undefined) continue;
    const over = overStep(here, next);
    heldBack += change * over.step + over.heldBack;
    change += over.lost;
  }
  return {
    change: measured("velocity", change),
    heldBack,
    duration: measured("time", moments.at(-1)?.time ?? 0),
  };
}

/** Where a missile that arrives at a given speed comes to a stop. */
export type Stop = Readonly<{ depth: In<"m">; afterOnset: In<"s"> }>;

/**
 * Deepest way into the surface of a missile that arrives at `impactSpeed`, by double integration. Null where the pulse
 * does not stop it: then speed and trace do not belong together.
 */
export function penetration(trace: Trace, pulse: Pulse, impactSpeed: In<"m/s">): Stop | null {
  const moments = momentsOf(trace, pulse);
  let [speed, way]: [number, number] = [impactSpeed, 0];
  for (const [index, next] of moments.entries()) {
    const here = moments[index - 1];
    if (here === undefined) continue;
    const whole = overStep(here, next);
    if (speed - whole.lost <= 0) {
      const time = here.time + whole.step * stoppingShare(speed, here.slowing * whole.step, whole.lost);
      const share = (time - here.time) / whole.step;
      const part = overStep(here, { time, slowing: here.slowing + (next.slowing - here.slowing) * share });
      return {
        depth: measured("length", way + speed * part.step - part.heldBack),
        afterOnset: measured("time", time),
      };
    }
    way += speed * whole.step - whole.heldBack;
    speed -= whole.lost;
  }
  return null;
}

/** Share of a step after which the speed is used up: the root of speed − first·s − (lost − first)·s² between 0 and 1. */
function stoppingShare(speed: number, first: number, lost: number): number {
  const bend = lost - first;
  const root = Math.sqrt(Math.max(0, first ** 2 + 4 * bend * speed));
  return Math.min(1, Math.max(0, (2 * speed) / (first + root)));
}
