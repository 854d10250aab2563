import type { Bracket, ExploredIn } from "#lib/cost";
import { failed, parseExact, type Result, succeeded } from "#lib/quantity";

type Limits = Bracket & Readonly<{ text: string }>;

/** Between which values a reader may look. */
const limits: Readonly<Record<ExploredIn, Limits>> = {
  share: { from: 0, to: 20, text: "0 % to 2,000 % of the entered price" },
  rate: { from: -0.5, to: 1, text: "−50 % to 100 % a year" },
  years: { from: 1, to: 60, text: "1 to 60 whole years" },
};

function boundOf(toldIn: ExploredIn, text: string): Result<number, string> {
  const { from, to, text: expected } = limits[toldIn];
  const parsed =
    toldIn === "years" ? Number(/^(\d{1,3})\s*(?:years?)?$/i.exec(text.trim())?.[1] ?? Number.NaN) : percentOf(text);
  return parsed >= from && parsed <= to ? succeeded(parsed) : failed(`“${text}” was read; expected ${expected}.`);
}

function percentOf(text: string): number {
  const parsed = parseExact("fraction", /[%]|per cent/i.test(text) ? text : `${text} %`);
  return parsed.ok ? parsed.value.value : Number.NaN;
}

/** The bracket that a reader asks for; null where none is asked for, a sentence where it can't be looked at. */
export function askedBracket(
  toldIn: ExploredIn,
  { from, to }: Readonly<{ from: string; to: string }>,
): Result<Bracket | null, string> {
  if (from.trim() === "" && to.trim() === "") return succeeded(null);
  const [low, high] = [boundOf(toldIn, from), boundOf(toldIn, to)];
  if (!low.ok) return failed(low.problem);
  if (!high.ok) return failed(high.problem);
  return low.value < high.value
    ? succeeded({ from: low.value, to: high.value })
    : failed(`“${from}” to “${to}” was read; expected a lower value first.`);
}
