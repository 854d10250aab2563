import { type PhraseList, phraseList, placesOf } from "./phrase";
import type { Sentence } from "./sentences";
import { numberAt } from "./written-count";

/** One figure of a carpet's recipe and how it is usually given. @source common practice, no source */
type RecipeKind = Readonly<{
  name: string;
  method: string;
  /** The unit as it is shown, and as it may be written. */
  unit: string;
  written: readonly string[];
  /** Words of which one has to stand in the sentence; none where the unit says enough. */
  cues: readonly string[];
  /** Data sheets and specifications usually move in steps of this. */
  step: number;
  /** Whether an exact figure is unusual in a neutral text. */
  isUsuallyARange: boolean;
}>;

const ounces = [
  "oz|ounce|ounces / yd|yd² ²?",
  "oz|ounce|ounces per|/ square|sq .? yard|yards|yd|yd²",
  "oz|ounce|ounces osy?",
  "osy",
];
const carpetMass = {
  method: "ASTM D5848, current edition",
  unit: "oz/yd²",
  written: ounces,
  step: 1,
  isUsuallyARange: true,
};

const pileCues = ["pile|fibre|fiber|blade|tuft ~1 height|length", "pile ~4 tall|high"];

const recipeKinds: readonly RecipeKind[] = [
  {
    ...{ name: "Pile height", method: "ASTM D5823, current edition", cues: pileCues },
    ...{ unit: "in", written: ["in", "inch|inches", "″", '"'], step: 0.125, isUsuallyARange: true },
  },
  {
    ...{ name: "Pile height", method: "ASTM D5823, current edition", cues: pileCues },
    ...{ unit: "mm", written: ["mm"], step: 1, isUsuallyARange: true },
  },
  { ...carpetMass, name: "Secondary backing mass", cues: ["secondary backing"] },
  { ...carpetMass, name: "Primary backing mass", cues: ["primary backing"] },
  { ...carpetMass, name: "Total carpet mass", cues: ["total"] },
  { ...carpetMass, name: "Pile mass", cues: [] },
  {
    ...{
      name: "Carpet mass",
      method: "ASTM D5848, current edition",
      cues: ["pile|face|backing|carpet ~2 weight|mass|weigh*"],
    },
    ...{
      unit: "g/m²",
      written: ["g / m|m² ²?", "grams per square metre|meter", "gsm"],
      step: 10,
      isUsuallyARange: true,
    },
  },
  {
    ...{ name: "Yarn linear density", method: "ASTM D1577, current edition", cues: [] },
    ...{ unit: "denier", written: ["denier", "den"], step: 100, isUsuallyARange: true },
  },
  {
    ...{ name: "Yarn linear density", method: "ASTM D1577, current edition", cues: [] },
    ...{ unit: "dtex", written: ["dtex"], step: 100, isUsuallyARange: true },
  },
  {
    ...{
      name: "Gauge",
      method: "ASTM D5793, current edition",
      cues: ["tuft*|stitch|machine ~2 gauge", "gauge :|shall|is|of", "tufted at"],
    },
    ...{ unit: "in", written: ["in", "inch|inches"], step: 0.0625, isUsuallyARange: true },
  },
  {
    ...{ name: "Stitch rate", method: "ASTM D5793, current edition", cues: ["stitch ~1 rate", "stitches"] },
    ...{
      unit: "stitches per 3 in",
      written: ["stitches|stitch per # in|inch|inches", "stitches|stitch per|/ in|inch"],
      step: 0.5,
      isUsuallyARange: true,
    },
  },
  {
    ...{ name: "Fibre thickness", method: "the method that the bid names", cues: [] },
    ...{
      unit: "microns",
      written: ["micron|microns|µm|μm", "micrometre|micrometres|micrometers"],
      step: 10,
      isUsuallyARange: true,
    },
  },
  {
    ...{ name: "Shock layer thickness", method: "the method that the bid names", cues: ["pad|layer|underlay"] },
    ...{ unit: "mm", written: ["mm"], step: 1, isUsuallyARange: false },
  },
];

/** A figure of the recipe as a sentence states it. */
export type StatedValue = Readonly<{ first: number; last: number; value: number; kind: RecipeKind }>;

type CompiledKind = Readonly<{ kind: RecipeKind; cues: PhraseList; unit: PhraseList }>;

const compiled: readonly CompiledKind[] = recipeKinds.map((kind) => ({
  kind,
  cues: phraseList(kind.cues),
  unit: phraseList(kind.written),
}));

/** A figure in brackets behind another is its conversion, which need not be round. */
const isConversion = ({ words }: Sentence, at: number) => words[at - 1]?.text === "(" && at > 1;

/** Figures of the recipe in a sentence, each by the first kind whose unit and cue stand there. */
export function statedValues(sentence: Sentence, count: () => void): readonly StatedValue[] {
  const { words } = sentence;
  if (!words.some(({ kind }) => kind === "number")) return [];
  const possible = compiled
    .filter(({ kind, cues }) => kind.cues.length === 0 || placesOf(cues, sentence, count).length > 0)
    .map(({ kind, unit }) => ({
      kind,
      units: new Map(placesOf(unit, sentence, count).map(({ first, last }) => [first, last])),
    }));
  const stated: StatedValue[] = [];
  for (let at = 0; at < words.length; at++) {
    const number = numberAt(words, at);
    if (number === null) continue;
    const unitAt = at + number.length;
    const found = possible.find(({ units }) => units.has(unitAt));
    if (found !== undefined && !isConversion(sentence, at))
      stated.push({ first: at, last: found.units.get(unitAt) ?? unitAt, value: number.value, kind: found.kind });
    at += number.length - 1;
  }
  return stated;
}
