import { type Phrase, say, type WorkingInput } from "#lib/figure";
import { type GrainSize, parseGrainSize } from "#lib/material";
import { constantInput, inBoth } from "../inputs";
import type { CheckedBid, DescribedComponent, Found, Rule, Severity } from "../model";
import { beside, type Span, spanInPhrase, widened } from "../span";

/** Room for openings that are rounded where people write them: 20 to 40 mesh as 0.8 to 0.4 mm. */
const openingShare = 0.15;

const sieves = "from memory: nominal openings of ASTM E11";

/** Grain sizes in millimetres and in mesh numbers of one component name the same grains, and those that are usual. */
export const particleSizeAgainstMesh: Rule = {
  id: "particle-size-against-mesh",
  title: "Grain size and mesh numbers do not agree",
  holds: "the stated grain size of each infill component against the sizes in its words, and against what is usual",
  tolerance: "15 % of each opening for rounding (common practice, no source)",
  check: (bid) =>
    bid.described.flatMap((component) => {
      const { particleSize, words } = component;
      const quoted = sizesIn(words);
      const sizes = particleSize === null ? quoted : [particleSize, ...quoted];
      return [
        ...againstEachOther(bid, component, sizes),
        ...sizes.slice(0, 1).flatMap((size) => againstUsual(bid, component, size)),
        ...sizes
          .filter(isFineFirst)
          .slice(0, 1)
          .flatMap((size) => fineFirst(bid, component, size)),
      ];
    }),
};

const number = String.raw`\d*\.?\d+`;
const dash = String.raw`\s*(?:-|–|/|x|to)\s*`;
const written = [
  new RegExp(String.raw`\b\d{1,3}${dash}\d{1,3}\s*mesh\b`, "gi"),
  new RegExp(String.raw`(?<![\d.])${number}\s*(?:mm)?${dash}${number}\s*mm\b`, "gi"),
];

/** Sizes that words name as a pair of sieves or a range of millimetres. */
const sizesIn = (words: string): readonly GrainSize[] =>
  written.flatMap((pattern) =>
    [...words.matchAll(pattern)].flatMap(([text]) => {
      const parsed = parseGrainSize(text);
      return parsed.ok && parsed.value !== null ? [parsed.value] : [];
    }),
  );

/** The first size and the first of the others that differs from it at either end. */
function againstEachOther(
  bid: CheckedBid,
  component: DescribedComponent,
  [first, ...others]: readonly GrainSize[],
): readonly Found[] {
  const other = others.find((candidate) => first !== undefined && !areAlike(first.size, candidate.size));
  if (first === undefined || other === undefined) return [];
  const apart = beside(first.size, other.size) !== "in common";
  const [firstShown, otherShown] = [first, other].map(shown);
  return [
    finding(bid, component, {
      severity: apart ? "can't be true" : "needs an answer",
      about: "sizes",
      sizes: [first, other],
      sentence: say`The bid states grains of ${firstShown ?? ""} and of ${otherShown ?? ""} for “${component.material.label}”. The bigger the mesh number, the smaller the grain.`,
      formula: "both ranges of grain size alike, within 15 % of each opening",
      source: sieves,
    }),
  ];
}

function againstUsual(bid: CheckedBid, component: DescribedComponent, size: GrainSize): readonly Found[] {
  const usual = component.material.usualGrain;
  if (usual === null || beside(size.size, widened(usual, openingShare)) === "in common") return [];
  return [
    finding(bid, component, {
      severity: "note",
      about: "usual",
      sizes: [size],
      sentence: say`The bid states grains of ${shown(size)} for “${component.material.label}”; usual is ${spanInPhrase("length", usual)}, a rule of thumb (${usual.source}).`,
      formula: "grain size within what is usual for the material, within 15 % of each opening",
      source: usual.source,
    }),
  ];
}

const fineFirst = (bid: CheckedBid, component: DescribedComponent, size: GrainSize): readonly Found[] => [
  finding(bid, component, {
    severity: "note",
    about: "order",
    sizes: [size],
    sentence: say`The bid writes “${size.text}” for “${component.material.label}”, with the finer sieve first. The trade writes the coarser one first; read so, the grains are ${spanInPhrase("length", size.size)}.`,
    formula: "the bigger the mesh number, the smaller the grain",
    source: sieves,
  }),
];

/** Whether two mesh numbers stand with the bigger one, the finer sieve, first. Millimetres have no such order. */
function isFineFirst({ text }: GrainSize): boolean {
  if (/mm/i.test(text)) return false;
  const [first, second] = (text.match(/\d+/g) ?? []).map(Number);
  return first !== undefined && second !== undefined && first > second;
}

const areAlike = (one: Span, other: Span): boolean =>
  (["low", "high"] as const).every(
    (end) =>
      beside(widened({ low: one[end], high: one[end] }, openingShare), { low: other[end], high: other[end] }) ===
      "in common",
  );

const shown = ({ text, size }: GrainSize): Phrase => say`“${text}” (${spanInPhrase("length", size)})`;

type Told = Readonly<{
  severity: Severity;
  about: "sizes" | "usual" | "order";
  sizes: readonly GrainSize[];
  sentence: Phrase;
  formula: string;
  source: string;
}>;

function finding(bid: CheckedBid, { id, material }: DescribedComponent, told: Told): Found {
  const { severity, about, sizes, sentence, formula, source } = told;
  const stated = sizes.map(
    ({ text, size }): WorkingInput => ({
      label: "Stated grain size",
      text: `${text} = ${inBoth("length", size)}`,
      from: { kind: "infill-component", bid: bid.id, component: id },
    }),
  );
  const usual = material.usualGrain;
  return {
    severity,
    claims: [],
    keyedBy: [id, about],
    told: () => ({
      sentence,
      question: say`Your bid gives ${sizes.map(({ text }) => `“${text}”`).join(" and ")} for “${material.label}”. Between which two sieves do the grains lie, by which test, and where is the sieve analysis?`,
      working: {
        formula,
        inputs: [...stated, ...(usual === null ? [] : [constantInput("Usual grain size", inBoth("length", usual))])],
        assumptions: ["Openings are nominal; 15 % to either side is for rounding (common practice, no source)."],
        source,
      },
    }),
  };
}
