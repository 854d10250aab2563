import { failed, intervalOf, measured, parseQuantity, type Quantity, type Result, succeeded } from "#lib/quantity";
import { type Age, type AgeProblem, explainAge, formatAge, parseAge } from "./age";
import { formatInfillState, type InfillState, parseInfillState } from "./infill-state";

export type Moisture = "wet" | "dry" | "not-stated";

/** The state in which a property was measured or is promised. */
export type Condition = Readonly<{
  age: Age;
  moisture: Moisture;
  /** Of the surface or sample when it was tested, as written. Null where it is not stated. */
  temperature: Quantity<"temperature"> | null;
  /** How much infill was in place; null where nothing is said, which is taken as the full depth. */
  infill: InfillState | null;
}>;

export type ConditionProblem = Readonly<
  AgeProblem | { kind: "too-long"; length: number } | { kind: "temperature-out-of-range"; read: string }
>;

const longestCondition = 200; // characters
const coldest = measured("temperature", -60, "°C");
const hottest = measured("temperature", 120, "°C");

/** A condition that states an age and no more. */
export const ofAge = (age: Age): Condition => ({ age, moisture: "not-stated", temperature: null, infill: null });

/** Whether anything at all is said of the surface. */
export const isConditionStated = ({ age, moisture, temperature, infill }: Condition): boolean =>
  age.kind !== "not-stated" || moisture !== "not-stated" || temperature !== null || infill !== null;

const moistureWords = /^(?:(?:when|tested|surface) )?(wet|dry)(?: (?:surface|conditions?|sample))?$/i;
const temperatureWords =
  /^(?:(?:tested )?at )?((?:about |approx\.? |~ ?)?[-–−+]?\d.*(?:°|deg|[cfk]$|celsius|fahrenheit|kelvin).*)$/i;

type Part = Readonly<
  | { kind: "moisture"; moisture: Moisture }
  | { kind: "temperature"; temperature: Quantity<"temperature"> }
  | { kind: "infill"; infill: InfillState }
  | { kind: "words"; words: string }
>;

function partOf(text: string): Part {
  const moisture = moistureWords.exec(text)?.[1]?.toLowerCase();
  if (moisture === "wet" || moisture === "dry") return { kind: "moisture", moisture };
  const degrees = temperatureWords.exec(text)?.[1];
  const parsed = degrees === undefined ? null : parseQuantity("temperature", degrees);
  if (parsed?.ok) return { kind: "temperature", temperature: parsed.value };
  const infill = parseInfillState(text);
  return infill === null ? { kind: "words", words: text } : { kind: "infill", infill };
}

/**
 * Reads "new", "year 5, wet", "new, 40 °F", "new, 0.5 in less infill", "after 2,000 h of use", "dry", "not stated", in any
 * order of the parts; what it does not know it keeps as written.
 */
export function parseCondition(text: string): Result<Condition, ConditionProblem> {
  const words = text.trim();
  if (words.length > longestCondition) return failed({ kind: "too-long", length: words.length });
  const asList = fromParts(words, words.split(/[,;]\s+/));
  if (!asList.ok || asList.value.age.kind !== "other") return asList;
  const asPhrase = fromParts(words, words.split(/[,;]\s+|\s+and\s+|\s+at\s+/i));
  return asPhrase.ok && asPhrase.value.age.kind !== "other" ? asPhrase : asList;
}

/** Words that say two things of one kind, such as "wet, dry", stay as they are written. */
function fromParts(written: string, texts: readonly string[]): Result<Condition, ConditionProblem> {
  const parts = texts.map((text) => partOf(text.trim()));
  const moistures = parts.flatMap((part) => (part.kind === "moisture" ? part.moisture : []));
  const temperatures = parts.flatMap((part) => (part.kind === "temperature" ? part.temperature : []));
  const infills = parts.flatMap((part) => (part.kind === "infill" ? part.infill : []));
  const rest = parts.flatMap((part) => (part.kind === "words" && part.words !== "" ? part.words : []));
  if (Math.max(moistures.length, temperatures.length, infills.length) > 1)
    return succeeded(ofAge({ kind: "other", words: written }));
  const [moisture = "not-stated"] = moistures;
  const [temperature = null] = temperatures;
  const [infill = null] = infills;
  if (temperature !== null && isOutOfRange(temperature))
    return failed({ kind: "temperature-out-of-range", read: temperature.asEntered });
  const nothingElse = moisture === "not-stated" && temperature === null && infill === null;
  const age = parseAge(nothingElse ? written : rest.join(", "));
  return age.ok ? succeeded({ age: age.value, moisture, temperature, infill }) : age;
}

function isOutOfRange({ reading }: Quantity<"temperature">): boolean {
  const { low, high } = intervalOf(reading);
  return (Number.isFinite(low) && low < coldest) || (Number.isFinite(high) && high > hottest);
}

export function explainCondition(problem: ConditionProblem): string {
  switch (problem.kind) {
    case "too-long":
      return `The condition has ${problem.length} characters; at most ${longestCondition} are read. Put the rest in the note.`;
    case "temperature-out-of-range":
      return `“${problem.read}” lies outside −60 °C to 120 °C. Expected the temperature of a surface, for instance “40 °F”.`;
    case "number-unclear":
    case "years-out-of-range":
    case "hours-out-of-range":
    case "cycles-out-of-range":
      return explainAge(problem);
  }
}

/** As people write it; `parseCondition` reads it back to the same condition. */
export function formatCondition({ age, moisture, temperature, infill }: Condition): string {
  const parts = [
    age.kind === "not-stated" ? "" : formatAge(age),
    moisture === "not-stated" ? "" : moisture,
    temperature?.asEntered ?? "",
    infill === null ? "" : formatInfillState(infill),
  ].filter((part) => part !== "");
  return parts.length === 0 ? "not stated" : parts.join(", ");
}
