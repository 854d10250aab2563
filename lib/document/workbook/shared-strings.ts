import { failed, type Result, succeeded } from "#lib/quantity";
import type { WorkbookProblem } from "./problem";
import { readXml } from "./xml";

/** "_x000D_" → the character it stands for. @source ECMA-376 part 1, 22.9.2.19 */
export const unescaped = (text: string): string =>
  text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));

/** The texts that cells point to, in order. Runs in different fonts are one text; reading aids (rPh) are left out. */
export function sharedStrings(part: string, bytes: Uint8Array): Result<readonly string[], WorkbookProblem> {
  const texts: string[] = [];
  let text = "";
  let inText = false;
  let inAid = false;
  const problem = readXml(part, bytes, {
    open: (name) => {
      if (name === "si") text = "";
      if (name === "rPh") inAid = true;
      inText = name === "t" && !inAid;
      return null;
    },
    text: (read) => {
      if (inText) text += read;
    },
    close: (name) => {
      if (name === "t") inText = false;
      if (name === "rPh") inAid = false;
      if (name === "si") texts.push(unescaped(text));
      return null;
    },
  });
  return problem === null ? succeeded(texts) : failed(problem);
}
