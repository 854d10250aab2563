import { z } from "zod";
import { textField } from "#lib/entry";
import { explainQuantity, parseQuantity } from "#lib/quantity";
import { type BlankId, type FilledIn, sectionBlanks } from "./drafting/blanks";
import { type ChoiceId, type Choices, sectionChoices } from "./drafting/choices";
import type { RequirementSubject } from "./model";
import {
  type OtherSystem,
  type Specification,
  type SystemOrigin,
  startingSpecification,
  systemOrigins,
} from "./specification";

const keysOf = <K extends string>(record: Readonly<Record<K, unknown>>) => Object.keys(record) as [K, ...K[]];

const choicesSchema = z.partialRecord(
  z.enum(keysOf(sectionChoices), { error: "Expected an id of the list of choices." }),
  z.boolean(),
) satisfies z.ZodType<Choices, Partial<Record<ChoiceId, boolean>>>;

const filledInSchema = z.partialRecord(
  z.enum(keysOf(sectionBlanks), { error: "Expected an id of the list of blanks." }),
  textField("what is filled in", 300),
) satisfies z.ZodType<FilledIn, Partial<Record<BlankId, string>>>;

const origin = z.enum(keysOf(systemOrigins), {
  error: "Expected where the system is known from.",
}) satisfies z.ZodType<SystemOrigin>;

type SystemFigures = OtherSystem["figures"];

/** Figures of a system: the measure by its id, the figure as the source writes it; an empty figure is not known. */
const figuresSchema = (subjects: readonly RequirementSubject[]) =>
  z
    .array(z.strictObject({ measure: z.string(), figure: z.string() }))
    .max(200, "Expected at most 200 figures.")
    .transform(
      (texts, context): SystemFigures =>
        texts.flatMap(({ measure, figure }, index): SystemFigures => {
          if (figure.trim() === "") return [];
          const tell = (field: string, message: string) => {
            context.addIssue({ code: "custom", path: [index, field], message });
            return [];
          };
          const subject = subjects.find(({ id }) => id === measure);
          if (subject === undefined)
            return tell("measure", `The measure reads “${measure}”. Expected one of the list of measures.`);
          const read = parseQuantity(subject.dimension, figure);
          return read.ok ? [{ measure, figure: read.value }] : tell("figure", explainQuantity(read.problem));
        }),
    );

/** Whether a system does what a clause in words asks. What nobody knows says nothing. */
const answer = z.enum(["yes", "no", "not-known"]);

const known = <T extends { meets: z.output<typeof answer> }>(answers: readonly T[]) =>
  answers.flatMap(({ meets, ...rest }) => (meets === "not-known" ? [] : [{ ...rest, meets: meets === "yes" }]));

const answersSchema = z
  .array(z.strictObject({ clause: z.string().max(100), meets: answer }))
  .max(200, "Expected at most 200 answers.")
  .transform(known);

/** Systems of a project, its bids included, that the competition check takes up. */
const mostSystems = 60;

const systemSchema = (subjects: readonly RequirementSubject[]) =>
  z.strictObject({
    id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, "Expected an id of small letters, digits and single hyphens."),
    label: textField("a label", 100).min(1, "Give the system a neutral label, such as “System 1”."),
    origin,
    source: textField("the source", 300).default(""),
    figures: figuresSchema(subjects).default([]),
    answers: answersSchema.default([]),
  });

/** What the owner decides about the section. Everything may be left out: it is then as usual. */
export const specificationSchema = (subjects: readonly RequirementSubject[]) =>
  z.strictObject({
    number: textField("the number of the section", 40)
      .min(1, "Give the section its number, for instance 32 18 13.")
      .default(startingSpecification.number),
    related: z
      .array(textField("a related section", 200))
      .max(40, "Expected at most 40 related sections.")
      .default([...startingSpecification.related]),
    choices: choicesSchema.default({}),
    filledIn: filledInSchema.default({}),
    names: z.array(textField("a name", 100)).max(200, "Expected at most 200 names.").default([]),
    systems: z
      .array(systemSchema(subjects))
      .max(mostSystems, `Expected at most ${mostSystems} systems.`)
      .superRefine((systems, context) => {
        for (const [index, { id }] of systems.entries())
          if (systems.findIndex((other) => other.id === id) !== index)
            context.addIssue({
              code: "custom",
              path: [index, "id"],
              message: `Another system has the id “${id}” as well.`,
            });
      })
      .default([]),
    bidAnswers: z
      .array(z.strictObject({ bid: z.string().max(64), clause: z.string().max(100), meets: answer }))
      .max(4800, "Expected at most 4,800 answers.")
      .transform(known)
      .default([]),
  }) satisfies z.ZodType<Specification, unknown>;

export type SpecificationText = z.input<ReturnType<typeof specificationSchema>>;
