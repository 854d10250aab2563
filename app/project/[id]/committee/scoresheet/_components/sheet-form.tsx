"use client";
import Link from "next/link";
import { useState, useTransition } from "react";
import { useFormContext, useWatch } from "react-hook-form";
import { isExcused, isExtreme, levelsOf, type Statement, sheetSchema } from "#lib/committee";
import type { Criterion } from "#lib/criteria";
import actStyles from "../../../../../_components/act-form.module.css";
import { AutosaveForm } from "../../../../../_components/form/autosave-form";
import { ChoiceField } from "../../../../../_components/form/choice-field";
import { KindField } from "../../../../../_components/form/kind-field";
import { LongTextField } from "../../../../../_components/form/long-text-field";
import type { DocumentAddress } from "../../../../../_components/form/save-outcome";
import type { Draft } from "../../../../../_components/form/start-of";
import { handIn, keepSheet } from "../../actions";
import type { SheetValues } from "./filled-sheet";
import styles from "./sheet-form.module.css";

type NamedBid = Readonly<{ id: string; letter: string; bidder: string; system: string }>;
type RatedCriterion = Readonly<{ criterion: Criterion; levels: React.ReactNode }>;

/** An evaluator's own sheet: the statement first, then a level for each bid, kept as typed until it is handed in. */
export function SheetForm({
  project,
  where,
  version,
  values,
  draft,
  criteria,
  bids,
}: {
  project: string;
  where: DocumentAddress;
  version: number;
  values: SheetValues;
  draft: Draft<SheetValues> | null;
  criteria: readonly RatedCriterion[];
  bids: readonly NamedBid[];
}) {
  return (
    <AutosaveForm<SheetValues>
      schema={sheetSchema as never}
      where={where}
      version={version}
      values={values}
      draft={draft}
      save={keepSheet}
      label="Scoresheet"
    >
      <StatementFields bids={bids} />
      <Ratings project={project} criteria={criteria} bids={bids} />
      <HandIn project={project} />
    </AutosaveForm>
  );
}

const statements = [
  { value: "not-stated", label: "Not stated yet" },
  { value: "none", label: "I have no interest in any of the bids" },
  { value: "some-bids", label: "I have an interest in some of the bids" },
  { value: "all-bids", label: "I have an interest that keeps me from rating any bid" },
];
const templates = {
  "not-stated": {},
  none: {},
  "some-bids": { bids: [], words: "" },
  "all-bids": { words: "" },
};

function StatementFields({ bids }: { bids: readonly NamedBid[] }) {
  return (
    <section aria-labelledby="statement">
      <h2 id="statement">Conflict of interest</h2>
      <p>
        Say first whether you, somebody close to you or somebody you work for would gain or lose by the choice. A stated
        interest excuses you from those bids; it blames nobody.
      </p>
      <KindField<keyof typeof templates>
        name="statement"
        label="Your statement"
        choices={statements}
        templates={templates}
        className={styles.wide}
        fields={(kind) => (
          <>
            {kind === "some-bids" ? <BidsOfInterest bids={bids} /> : null}
            {kind === "some-bids" || kind === "all-bids" ? (
              <LongTextField name="statement.words" label="What the interest is" rows={2} className={styles.wide} />
            ) : null}
          </>
        )}
      />
    </section>
  );
}

function BidsOfInterest({ bids }: { bids: readonly NamedBid[] }) {
  const { setValue } = useFormContext();
  const marked: readonly string[] = useWatch({ name: "statement.bids" }) ?? [];
  return (
    <fieldset className={styles.bids}>
      <legend>Bids that it is in</legend>
      {bids.map(({ id, letter, bidder }) => (
        <label key={id}>
          <input
            type="checkbox"
            checked={marked.includes(id)}
            onChange={({ target }) =>
              setValue(
                "statement.bids",
                bids.map((bid) => bid.id).filter((bid) => (bid === id ? target.checked : marked.includes(bid))),
              )
            }
          />{" "}
          Bid {letter}, {bidder}
        </label>
      ))}
    </fieldset>
  );
}

/** What a statement as typed excuses from; nothing is rated before one is made. */
function useStatement(): Statement | null {
  const typed: SheetValues["statement"] = useWatch({ name: "statement" });
  const { kind, bids = [], words = "" } = typed;
  if (kind === "none") return { kind };
  if (kind === "some-bids") return { kind, bids, words };
  return kind === "all-bids" ? { kind, words } : null;
}

function Ratings({
  project,
  criteria,
  bids,
}: {
  project: string;
  criteria: readonly RatedCriterion[];
  bids: readonly NamedBid[];
}) {
  const statement = useStatement();
  if (statement === null) return <p role="note">The bids can be rated once you have made your statement.</p>;
  return criteria.map(({ criterion, levels }, row) => (
    <section key={criterion.id} aria-labelledby={`rate-${criterion.id}`}>
      <h2 id={`rate-${criterion.id}`}>{criterion.label}</h2>
      <p>{criterion.reason}</p>
      {levels}
      {bids.map((bid, column) => (
        <div key={bid.id} className={styles.bid}>
          <h3>
            Bid {bid.letter},{" "}
            <Link href={`/project/${project}/bids/${bid.id}`} prefetch={false}>
              {bid.bidder}
            </Link>
          </h3>
          {isExcused(statement, bid.id) ? (
            <p>You are excused from this bid.</p>
          ) : (
            <RatingFields criterion={criterion} letter={bid.letter} index={row * bids.length + column} />
          )}
        </div>
      ))}
    </section>
  ));
}

function RatingFields({ criterion, letter, index }: { criterion: Criterion; letter: string; index: number }) {
  const at = `ratings.${index}`;
  const level: string = useWatch({ name: `${at}.level` }) ?? "";
  const levels = levelsOf(criterion);
  const of = `“${criterion.label}”, bid ${letter}`;
  return (
    <>
      <ChoiceField
        name={`${at}.level`}
        label={`Level, ${of}`}
        choices={[{ value: "", label: "Not rated yet" }, ...levels.map(({ id, label }) => ({ value: id, label }))]}
        className={styles.wide}
      />
      <LongTextField
        name={`${at}.comment`}
        label={`Comment, ${of}`}
        rows={2}
        className={styles.wide}
        hint={
          isExtreme(criterion, level)
            ? "Needed at this level: say what it rests on, with document and page."
            : "What it rests on, with document and page."
        }
      />
    </>
  );
}

/** Hands in what stands in the form, and says what is lacking. */
function HandIn({ project }: { project: string }) {
  const { getValues } = useFormContext<SheetValues>();
  const [sentences, setSentences] = useState<readonly string[]>([]);
  const [done, setDone] = useState(false);
  const [pending, start] = useTransition();
  const hand = () =>
    start(async () => {
      const lacking = await handIn(project, getValues()).catch(() => [
        "The server can’t be reached, so nothing was handed in. Try it again.",
      ]);
      setSentences(lacking);
      setDone(lacking.length === 0);
    });
  return (
    <section aria-labelledby="hand-in" className="screen-only">
      <h2 id="hand-in">Hand it in</h2>
      <p>
        The sheet is sealed when you hand it in. You may change it and hand it in again until all sheets are opened
        together.
      </p>
      <button type="button" className="primary" aria-disabled={pending} onClick={() => (pending ? undefined : hand())}>
        Hand in the scoresheet
      </button>
      <p role="status">{done ? "Your scoresheet is handed in and sealed." : ""}</p>
      {sentences.length === 0 ? null : (
        <div role="alert" className={actStyles.problem}>
          <p>Not handed in:</p>
          <ul>
            {sentences.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </div>
      )}
    </section>
  );
}
