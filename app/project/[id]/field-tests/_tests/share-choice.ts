import type { ShareQuestion } from "#lib/fieldtest";
import { explainQuantity, failed, type In, measured, parseExact, type Result, succeeded } from "#lib/quantity";
import { type Asked, textOf } from "./plan-choice";

/** The question on the number of locations as typed. */
export type ShareChoice = Readonly<{
  share: string;
  confidence: string;
  allowed: string;
  mean: string;
  deviation: string;
}>;

/** What the normal form needs beside the question. */
export type ExpectedLevels = Readonly<{ mean: In<"g">; deviation: In<"g"> }>;

export type ShareAsked = Readonly<{ question: ShareQuestion; allowed: number; expected: ExpectedLevels | null }>;

/** @source common practice, no source: a tenth of the field, 95 % */
const usual = { share: "10 %", confidence: "95 %", allowed: "0" } as const;
const mostAllowed = 50;

export function shareChoice(asked: Asked, expected: Readonly<{ mean: string; deviation: string }>): ShareChoice {
  const given = (name: keyof ShareChoice, otherwise: string) => (textOf(asked, name) ?? otherwise).trim();
  return {
    share: given("share", usual.share),
    confidence: given("confidence", usual.confidence),
    allowed: given("allowed", usual.allowed),
    mean: given("mean", expected.mean),
    deviation: given("deviation", expected.deviation),
  };
}

/** A share between nothing and all; a bare number above 1 is a percentage. */
function shareOf(what: string, text: string): Result<In<"1">, string> {
  const parsed = parseExact("fraction", /^\d+(\.\d+)?$/.test(text) && Number(text) >= 1 ? `${text} %` : text);
  if (!parsed.ok) return failed(`${what}: ${explainQuantity(parsed.problem)}`);
  const { value } = parsed.value;
  return value > 0 && value < 1
    ? succeeded(value)
    : failed(`${what}: “${text}” was read. Expected a share above 0 % and below 100 %.`);
}

function levelOf(what: string, text: string): Result<In<"g">, string> {
  const parsed = parseExact("impactLevel", text);
  if (!parsed.ok) return failed(`${what}: ${explainQuantity(parsed.problem)}`);
  return parsed.value.value > 0
    ? succeeded(parsed.value.value)
    : failed(`${what}: “${text}” was read. Expected a level above 0 g.`);
}

/** The question as the rules take it, or a sentence about each thing that does not read. */
export function shareAsked(choice: ShareChoice): Result<ShareAsked, readonly string[]> {
  const share = shareOf("Share of the field", choice.share);
  const confidence = shareOf("Confidence", choice.confidence);
  const allowed =
    /^\d{1,2}$/.test(choice.allowed) && Number(choice.allowed) <= mostAllowed ? Number(choice.allowed) : null;
  const stated = choice.mean !== "" || choice.deviation !== "";
  const mean = stated ? levelOf("Expected mean", choice.mean) : succeeded(measured("impactLevel", 0));
  const deviation = stated ? levelOf("Expected spread", choice.deviation) : succeeded(measured("impactLevel", 0));
  if (share.ok && confidence.ok && allowed !== null && mean.ok && deviation.ok)
    return succeeded({
      question: { share: share.value, confidence: confidence.value },
      allowed,
      expected: stated ? { mean: mean.value, deviation: deviation.value } : null,
    });
  return failed([
    ...[share, confidence, mean, deviation].flatMap((read) => (read.ok ? [] : [read.problem])),
    ...(allowed === null
      ? [`“${choice.allowed}” locations allowed was read. Expected a whole number from 0 to ${mostAllowed}.`]
      : []),
  ]);
}
