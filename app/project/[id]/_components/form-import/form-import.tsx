"use client";
import { useActionState, useState, useTransition } from "react";
import { addFilledBid } from "../../_actions/add-filled-bid";
import { type FormReading, readForm } from "../../_actions/read-form";
import { saveDocument } from "../../_actions/save-document";
import styles from "./form-import.module.css";
import { FormReport } from "./form-report";

type Where = Readonly<{ project: string; bid: string | null }>;
type Unmentioned = "keep" | "take-out";
type Read = Extract<FormReading, { kind: "read" }>;

/** Chooses a filled form, shows what it would do, and does it only when asked. */
export function FormImport({ where, letter, mostBytes }: { where: Where; letter: string; mostBytes: number }) {
  const [reading, read, isReading] = useActionState<FormReading, FormData>(readForm.bind(null, where), {
    kind: "none",
  });
  const [tooLarge, setTooLarge] = useState("");
  const back = `/project/${where.project}/bids${where.bid === null ? "" : `/${where.bid}`}`;
  return (
    <>
      <form
        action={read}
        className={styles.choose}
        onSubmit={(event) => {
          const file = new FormData(event.currentTarget).get("file");
          const isTooLarge = file instanceof File && file.size > mostBytes;
          setTooLarge(
            isTooLarge
              ? `The file has ${file.size.toLocaleString("en-US")} bytes; at most ${mostBytes.toLocaleString("en-US")} are read. Take pictures out of it, or copy the entries into a fresh blank form.`
              : "",
          );
          if (isTooLarge) event.preventDefault();
        }}
      >
        <label htmlFor="filled-form">Filled bid form</label>
        <input id="filled-form" type="file" name="file" accept=".xlsx" required />
        <p className="row">
          <button type="submit" aria-disabled={isReading}>
            Read the form
          </button>
          <a href={back}>Leave everything as it is</a>
        </p>
      </form>
      <p role="status">{isReading ? "The form is being read." : ""}</p>
      {tooLarge === "" ? null : (
        <p role="alert" className={styles.problem}>
          {tooLarge}
        </p>
      )}
      {reading.kind === "refused" && tooLarge === "" ? (
        <p role="alert" className={styles.problem}>
          {reading.file === "" ? "" : `“${reading.file}” was not imported. `}
          {reading.problem}
        </p>
      ) : null}
      {reading.kind === "read" ? (
        <Confirm key={JSON.stringify(reading.changes)} where={where} reading={reading} letter={letter} back={back} />
      ) : null}
    </>
  );
}

function Confirm({ where, reading, letter, back }: { where: Where; reading: Read; letter: string; back: string }) {
  const [unmentioned, setUnmentioned] = useState<Unmentioned>("keep");
  const [problem, setProblem] = useState("");
  const [isSaving, startSaving] = useTransition();
  const gone = reading.changes.filter(({ kind }) => kind === "gone").length;
  const moves = reading.changes.some(
    ({ kind }) => kind === "added" || kind === "changed" || (kind === "gone" && unmentioned === "take-out"),
  );
  const confirm = () =>
    startSaving(async () => {
      const outcome = await imported(where, reading, unmentioned).catch(() => ({
        kind: "problem" as const,
        sentence: "The server can’t be reached, so nothing was imported. Try it again.",
      }));
      if (outcome.kind === "problem") setProblem(outcome.sentence);
      else location.assign(`/project/${where.project}/bids/${outcome.bid}`);
    });
  return (
    <section aria-labelledby="report">
      <h2 id="report">What “{reading.file}” says</h2>
      <FormReport reading={reading} />
      {gone === 0 ? null : (
        <fieldset className={styles.unmentioned}>
          <legend>
            {gone === 1 ? "1 entry of the bid is" : `${gone} entries of the bid are`} not in the form. What becomes of{" "}
            {gone === 1 ? "it" : "them"}?
          </legend>
          {(
            [
              ["keep", "Keep in the bid"],
              ["take-out", "Take out of the bid"],
            ] as const
          ).map(([value, label]) => (
            <label key={value}>
              <input
                type="radio"
                name="unmentioned"
                value={value}
                checked={unmentioned === value}
                onChange={() => setUnmentioned(value)}
              />{" "}
              {label}
            </label>
          ))}
        </fieldset>
      )}
      {problem === "" ? null : (
        <p role="alert" className={styles.problem}>
          {problem}
        </p>
      )}
      <p className="row">
        {moves || where.bid === null ? (
          <button
            type="button"
            className="primary"
            aria-disabled={isSaving}
            onClick={() => {
              if (!isSaving) confirm();
            }}
          >
            {where.bid === null ? `Add bid ${letter} as the form gives it` : `Import into bid ${letter}`}
          </button>
        ) : (
          "The form says what the bid holds already; there is nothing to import."
        )}
        <a href={back}>Leave everything as it is</a>
      </p>
    </section>
  );
}

type Imported = Readonly<{ kind: "imported"; bid: string } | { kind: "problem"; sentence: string }>;

/** Saves as every form does. Text that does not read yet is kept as the bid's draft, a stale one as well. */
async function imported({ project, bid }: Where, reading: Read, unmentioned: Unmentioned): Promise<Imported> {
  const text = reading.bids[unmentioned];
  if (bid === null || reading.version === null) {
    const added = await addFilledBid(project, text);
    return added.kind === "added" ? { kind: "imported", bid: added.bid } : { kind: "problem", sentence: added.problem };
  }
  const outcome = await saveDocument({ project, kind: "bid", id: bid, version: reading.version }, text);
  switch (outcome.kind) {
    case "saved":
    case "kept":
    case "rejected":
      return { kind: "imported", bid };
    case "conflict":
      return {
        kind: "problem",
        sentence: `${outcome.savedBy} changed the bid after the form was read, so nothing was saved over it. What the form says is kept as a draft of yours. Read the form again to see it against the bid as it is now.`,
      };
    case "refused":
      return { kind: "problem", sentence: `Nothing was imported: ${outcome.reason}` };
    case "gone":
      return { kind: "problem", sentence: "This bid is no longer here, so nothing was imported." };
  }
}
