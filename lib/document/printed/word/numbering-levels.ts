import { AlignmentType, type ILevelsOptions, LevelFormat, LevelSuffix } from "docx";
import { depthOf } from "../numbering";
import { headingLevels, type NumberingLevel, type NumberingSchemeId, numberingSchemes } from "../numbering-schemes";
import { twips } from "./styles";

const formats = {
  decimal: LevelFormat.DECIMAL,
  "upper-letter": LevelFormat.UPPER_LETTER,
  "lower-letter": LevelFormat.LOWER_LETTER,
} as const;

const isHeadingLevel = (scheme: NumberingSchemeId, level: number) => level < headingLevels[scheme];

/** Inches that a paragraph of a level is set in; headings start at the margin. */
const setIn = (scheme: NumberingSchemeId, level: number) =>
  isHeadingLevel(scheme, level) ? 0 : 0.4 * (depthOf({ scheme, level }) + 1);

const levelOptions = (
  scheme: NumberingSchemeId,
  { format, pattern }: NumberingLevel,
  level: number,
): ILevelsOptions => {
  const left = setIn(scheme, level);
  return {
    level,
    format: formats[format],
    text: pattern,
    alignment: AlignmentType.START,
    suffix: isHeadingLevel(scheme, level) ? LevelSuffix.SPACE : LevelSuffix.TAB,
    style: { paragraph: { indent: { left: twips(left), hanging: twips(left === 0 ? 0 : 0.4) } } },
  };
};

const list = (level: Omit<ILevelsOptions, "level" | "alignment" | "style">): readonly ILevelsOptions[] => [
  {
    level: 0,
    alignment: AlignmentType.START,
    style: { paragraph: { indent: { left: twips(0.4), hanging: twips(0.25) } } },
    ...level,
  },
];

/** References of the two kinds of plain list. */
export const bulletList = "bullet-list";
export const orderedList = "ordered-list";

/** Every scheme of numbers as the word processor counts by itself. */
export const numberingConfig = [
  ...(Object.keys(numberingSchemes) as NumberingSchemeId[]).map((scheme) => ({
    reference: scheme,
    levels: numberingSchemes[scheme].map((level, index) => levelOptions(scheme, level, index)),
  })),
  { reference: bulletList, levels: list({ format: LevelFormat.BULLET, text: "•" }) },
  { reference: orderedList, levels: list({ format: LevelFormat.DECIMAL, text: "%1." }) },
];
