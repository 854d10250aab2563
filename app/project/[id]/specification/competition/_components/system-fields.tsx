"use client";
import { useState, useTransition } from "react";
import { get, useFieldArray, useFormContext, useWatch } from "react-hook-form";
import { measures } from "#lib/evaluation";
import { systemOrigins } from "#lib/requirement";
import { ChoiceField, options } from "../../../../../_components/form/choice-field";
import { freshId } from "../../../../../_components/form/fresh-id";
import { TextField } from "../../../../../_components/form/text-field";
import { counted } from "../../../../../_components/in-words";
import { useUndo } from "../../../_components/use-undo";
import { filledSystem, type SpecificationValues, type SystemValues } from "../../_components/specification-values";
import { bidsOfProject, otherProjects } from "../actions";
import { answers } from "./answers";
import { askedOf, type SystemQuestions } from "./asked-of";
import styles from "./competition.module.css";
import type { OtherProjects } from "./other-projects";

const origins = Object.entries(systemOrigins).map(([value, label]) => ({ value, label }));

/** Each system with a figure for every limit of the text and an answer for every clause in words. */
export function SystemFields({
  questions,
  others,
  project,
}: {
  questions: SystemQuestions;
  others: OtherProjects;
  project: string;
}) {
  const { control, getValues } = useFormContext<SpecificationValues>();
  const { fields, append, insert, remove } = useFieldArray({ control, name: "systems", keyName: "key" });
  const { keep, notice } = useUndo<SystemValues>(insert);
  const [added, setAdded] = useState<string | null>(null);
  const taken = () => getValues("systems").map(({ id }) => id);
  const add = () => {
    const id = freshId("system", taken());
    append(filledSystem({ id, label: "", origin: "public-data" }, askedOf(questions)), {
      focusName: `systems.${fields.length}.label`,
    });
    setAdded(id);
  };
  return (
    <>
      {fields.length === 0 ? <p>No system is entered yet.</p> : null}
      {fields.map(({ key, id }, index) => (
        <details key={key} open={id === added} className={styles.system}>
          <SystemSummary index={index} />
          <SystemEntry index={index} questions={questions} />
          <button
            type="button"
            className="plain screen-only"
            onClick={() => {
              const value = structuredClone(getValues(`systems.${index}`));
              remove(index);
              keep({ index, value, words: `“${value.label || "the system"}”` });
            }}
          >
            Remove this system
          </button>
        </details>
      ))}
      {notice}
      <p className="screen-only">
        <button type="button" onClick={add}>
          Add a system
        </button>
      </p>
      {others.projects.length === 0 ? null : (
        <EarlierBids
          project={project}
          others={others}
          take={(systems) => {
            const known = new Set(taken());
            const fresh = systems
              .filter(({ id }) => !known.has(id))
              .map((system) => filledSystem(system, askedOf(questions)));
            append(fresh, { shouldFocus: false });
            return fresh.length;
          }}
        />
      )}
    </>
  );
}

function SystemSummary({ index }: { index: number }) {
  const { control, formState } = useFormContext<SpecificationValues>();
  const system = useWatch({ control, name: `systems.${index}` }) as SystemValues | undefined;
  if (system === undefined) return <summary>Removed</summary>; // for a moment, while it is removed
  const figures = system.figures.filter(({ figure }) => figure.trim() !== "").length;
  return (
    <summary>
      <strong>{system.label === "" ? "A system without a label" : system.label}</strong>{" "}
      <span className={styles.note}>
        {systemOrigins[system.origin].toLowerCase()}, {counted(figures, "figure", "figures")}
      </span>
      {get(formState.errors, `systems.${index}`) === undefined ? null : (
        <span className={styles.problem}> something here can’t be read yet</span>
      )}
    </summary>
  );
}

function SystemEntry({ index, questions }: { index: number; questions: SystemQuestions }) {
  const { getValues } = useFormContext<SpecificationValues>();
  const at = `systems.${index}`;
  const { figures, answers: given } = getValues(`systems.${index}`);
  const asked = figures.flatMap(({ measure }, place) => {
    const question = questions.measures.find(({ id }) => id === measure);
    return question === undefined ? [] : [{ ...question, place }];
  });
  const inWords = given.flatMap(({ clause }, place) => {
    const question = questions.clauses.find(({ id }) => id === clause);
    return question === undefined ? [] : [{ ...question, place }];
  });
  return (
    <fieldset>
      <legend className="visually-hidden">System {index + 1}</legend>
      <div className={styles.group}>
        <TextField name={`${at}.label`} label="Label" hint="Neutral: what it is, not whose it is." />
        <ChoiceField name={`${at}.origin`} label="Known from" choices={origins} />
        <TextField name={`${at}.source`} label="Source" hint="Document, page and date." />
      </div>
      <div className={styles.group}>
        {asked.map(({ id, label, limit, place }) => {
          const dimension = measures.find((measure) => measure.id === id)?.dimension;
          return (
            <TextField
              key={id}
              name={`${at}.figures.${place}.figure`}
              label={label}
              hint={`Asked: ${limit}. Empty: not known.`}
              {...(dimension === undefined ? {} : { dimension })}
            />
          );
        })}
        {inWords.map(({ id, label, asked: words, place }) => (
          <ChoiceField key={id} name={`${at}.answers.${place}.meets`} label={`${label}: ${words}?`} choices={answers} />
        ))}
      </div>
    </fieldset>
  );
}

/** Takes the bids of another project here as systems, with their figures as they are now. */
function EarlierBids({
  project,
  others,
  take,
}: {
  project: string;
  others: OtherProjects;
  take: (systems: Awaited<ReturnType<typeof bidsOfProject>>) => number;
}) {
  const [other, setOther] = useState("");
  const [said, setSaid] = useState("");
  const [isWaiting, start] = useTransition();
  const [search, setSearch] = useState("");
  const [offered, setOffered] = useState(others.projects);
  const choices = [
    { value: "", label: "Choose a project" },
    ...offered.map(({ id, name }) => ({ value: id, label: name })),
  ];
  const find = () =>
    start(async () => {
      try {
        const found = await otherProjects(project, search);
        setOffered(found.projects);
        setOther("");
        setSaid(
          `${found.more ? "The last changed of many" : counted(found.projects.length, "project", "projects")} to choose from.`,
        );
      } catch {
        setSaid("The server could not be reached. Nothing was searched; try again.");
      }
    });
  const bring = () =>
    start(async () => {
      try {
        const count = take(await bidsOfProject(project, other));
        setSaid(
          count === 0 ? "No bid there is new here." : `${counted(count, "bid", "bids")} taken in as they are now.`,
        );
      } catch {
        setSaid("The server could not be reached. Nothing was taken in; try again.");
      }
    });
  return (
    <div className={`${styles.add} screen-only`}>
      {others.more ? (
        <>
          <label htmlFor="other-project-search">Find another project by its name or owner</label>
          <input
            id="other-project-search"
            type="search"
            maxLength={200}
            value={search}
            onChange={({ target }) => setSearch(target.value)}
            onKeyDown={(event) => {
              if (event.key !== "Enter") return;
              event.preventDefault(); // the form around it saves itself and is not sent
              find();
            }}
          />
          <button type="button" aria-disabled={isWaiting} onClick={find}>
            Find
          </button>
        </>
      ) : null}
      <label htmlFor="other-project">Take in the bids of another project here</label>
      <select id="other-project" value={other} onChange={({ target }) => setOther(target.value)}>
        {options(choices)}
      </select>
      <button
        type="button"
        aria-disabled={other === "" || isWaiting}
        onClick={() => (other === "" ? undefined : bring())}
      >
        Take them in
      </button>
      <span role="status">{said}</span>
    </div>
  );
}
