import { failed, type Interval, intervalOf, measured, parseQuantity, type Result, succeeded } from "#lib/quantity";
import { grainOfMesh, sieveNumbers, sieveOpening } from "./sieve";

/** The range of grain sizes as written, and in m between the openings of two sieves. */
export type GrainSize = Readonly<{ text: string; size: Interval<"m"> }>;

export type GrainSizeProblem = Readonly<
  | { kind: "not-a-size"; read: string }
  | { kind: "unit-unclear"; read: string }
  | { kind: "one-sieve"; read: string }
  | { kind: "unknown-sieve"; read: string; sieve: number }
  | { kind: "not-a-grain"; read: string }
>;

const longest = 60; // characters
const largestGrain = measured("length", 12, "mm");

const between = "\\s*(?:-|–|—|/|x|×|to|by)\\s*";
const sieves = new RegExp(
  `^(?:(?:us |astm )?(?:mesh|sieves?) )?(?:no\\.? ?|# ?)?(\\d{1,3})(?:${between}(?:no\\.? ?|# ?)?(\\d{1,3}))? ?(mesh|us mesh|sieves?)?$`,
);

/**
 * Reads "20–40 mesh", "20/40", "0.425–0.85 mm"; an empty text is no size. The bigger the mesh number, the smaller the
 * grain. A pair of numbers without a word or unit is taken for sieves only where a slash stands between them.
 * @source ASTM E11, nominal openings, from memory
 */
export function parseGrainSize(text: string): Result<GrainSize | null, GrainSizeProblem> {
  const written = text.trim();
  if (written === "") return succeeded(null);
  if (written.length > longest) return failed({ kind: "not-a-size", read: written.slice(0, longest) });
  const read = written.toLowerCase().replace(/\s+/g, " ");
  const mesh = sieves.exec(read);
  return mesh === null ? byLength(written) : byMesh(written, read, mesh);
}

function byMesh(written: string, read: string, mesh: RegExpExecArray): Result<GrainSize, GrainSizeProblem> {
  const [first, second] = [Number(mesh[1]), mesh[2] === undefined ? null : Number(mesh[2])];
  if (!/mesh|sieve|no|#|\//.test(read)) return failed({ kind: "unit-unclear", read: written });
  if (second === null) return failed({ kind: "one-sieve", read: written });
  const unknown = [first, second].find((sieve) => sieveOpening(sieve) === undefined);
  if (unknown !== undefined) return failed({ kind: "unknown-sieve", read: written, sieve: unknown });
  const size = grainOfMesh(first, second);
  return size === undefined ? failed({ kind: "not-a-size", read: written }) : succeeded({ text: written, size });
}

function byLength(written: string): Result<GrainSize, GrainSizeProblem> {
  const parsed = parseQuantity("length", written);
  if (!parsed.ok) return failed({ kind: "not-a-size", read: written });
  const { low, high } = intervalOf(parsed.value.reading);
  if (!(high > 0 && high <= largestGrain)) return failed({ kind: "not-a-grain", read: written });
  return succeeded({ text: written, size: { low: measured("length", Math.max(0, low)), high } });
}

const examples = "“20–40 mesh” or “0.425–0.85 mm”";

export function explainGrainSize(problem: GrainSizeProblem): string {
  switch (problem.kind) {
    case "not-a-size":
      return `“${problem.read}” was not read as a range of grain sizes. Expected ${examples}.`;
    case "unit-unclear":
      return `“${problem.read}” does not say whether sieves or millimetres are meant. Expected ${examples}.`;
    case "one-sieve":
      return `“${problem.read}” names one sieve, and a range lies between two. Expected ${examples}.`;
    case "unknown-sieve":
      return `Sieve ${problem.sieve} in “${problem.read}” is not in the table, which holds ${sieveNumbers.join(", ")}. Expected ${examples}.`;
    case "not-a-grain":
      return `“${problem.read}” is not a size that grains of infill have. Expected ${examples}.`;
  }
}
