import type { CellStyle } from "hucre/xlsx";

const line = { style: "thin", color: { rgb: "B8B2A6" } } as const;
const border = { top: line, right: line, bottom: line, left: line };
const top = { vertical: "top" } as const;
const wrapped = { vertical: "top", wrapText: true } as const;
const shade = (rgb: string) => ({ type: "pattern", pattern: "solid", fgColor: { rgb } }) as const;

/** What may be changed stands on this ground; what is worked out has none. */
const input = { fill: shade("FFF6D6"), border, alignment: top };
const worked = { border, alignment: top };

export const openEnd = 1_000_000_000_000;

const money = "#,##0.00;-#,##0.00";
const flow = "#,##0.00;-#,##0.00;–";
const figure = `[>=${openEnd}]"open";[<=-${openEnd}]"open";General`;

/** How cells look. “Input” is for what may be changed, “worked” for what a formula gives, “given” for what the app said. */
export const styles = {
  title: { font: { bold: true, size: 16 } },
  section: { font: { bold: true, size: 13 } },
  heading: { font: { bold: true }, fill: shade("DDD8CC"), border, alignment: wrapped, numFmt: "@" },
  headingYear: { font: { bold: true }, fill: shade("DDD8CC"), border, alignment: top, numFmt: "0" },
  asked: { font: { bold: true }, alignment: wrapped, numFmt: "@" },
  note: { font: { italic: true }, alignment: top, numFmt: "@" },
  plain: { alignment: wrapped, numFmt: "@" },
  text: { border, alignment: wrapped, numFmt: "@" },
  inputText: { ...input, alignment: wrapped, numFmt: "@" },
  inputNumber: { ...input, numFmt: "General" },
  inputMoney: { ...input, numFmt: "#,##0.00####;-#,##0.00####" },
  inputShare: { ...input, numFmt: "0.00####%" },
  inputYear: { ...input, numFmt: "0" },
  inputFigure: { ...input, numFmt: figure },
  workedNumber: { ...worked, numFmt: "General" },
  workedMoney: { ...worked, numFmt: money },
  workedFlow: { ...worked, numFmt: flow },
  workedShare: { ...worked, numFmt: "0.00####%" },
  workedYear: { ...worked, numFmt: "0" },
  workedFactor: { ...worked, numFmt: "0.000000" },
  workedValue: { ...worked, numFmt: "0.0000" },
  workedPoints: { ...worked, numFmt: "0.00" },
  workedFigure: { ...worked, numFmt: figure },
  workedText: { ...worked, alignment: wrapped },
  sum: { font: { bold: true }, border, alignment: top, numFmt: money },
  givenMoney: { fill: shade("F1EEE7"), border, alignment: top, numFmt: money },
} as const satisfies Record<string, CellStyle>;

export type Style = keyof typeof styles;
