import Link from "next/link";
import { notFound } from "next/navigation";
import { z } from "zod";
import { localEditor } from "#lib/access";
import { isPlainDate } from "#lib/quantity";
import { explainRecordFault, explainSetBack, type RecordedKind } from "#lib/store";
import { PageHead } from "../../../_components/page-head";
import { loadProject } from "../../../_data/load-project";
import { projectStore } from "../../../_data/store";
import { readersNames } from "../../../_names";
import { pageOf } from "../_contents";
import { kindLabels } from "./_history/kind-labels";
import { type ToldEntry, toldEntry } from "./_history/told-entry";
import styles from "./page.module.css";

export const metadata = { title: "Record" };

const pageSize = 50;

const one = (value: unknown): string => (typeof value === "string" ? value : "");

/** A name that stands for everybody who gave none. */
const nameOf = (who: string): string => (who === localEditor.name ? "no name given" : who);

export default async function RecordPage({ params, searchParams }: PageProps<"/project/[id]/record">) {
  const { id } = await params;
  const asked = await searchParams;
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  const store = await projectStore();
  const people = await store.record.people(id);
  const who = people.includes(one(asked.who)) ? one(asked.who) : "";
  const kind = Object.hasOwn(kindLabels, one(asked.what)) ? (one(asked.what) as RecordedKind) : null;
  const [from, to] = [one(asked.from), one(asked.to)].map((day) => (isPlainDate(day) ? day : ""));
  const before = z.coerce.number().int().positive().safeParse(one(asked.before));
  const wish = {
    ...(who === "" ? {} : { who }),
    ...(kind === null ? {} : { kinds: [kind] }),
    ...(from === "" || from === undefined ? {} : { from }),
    ...(to === "" || to === undefined ? {} : { to }),
  };
  const { entries, more } = await store.record.page(id, {
    ...wish,
    ...(before.success ? { before: before.data } : {}),
    limit: pageSize,
  });
  const names = await readersNames();
  const verdict = await store.record.verify(id);
  const last = entries.at(-1);
  const older = new URLSearchParams({
    ...{ who, what: kind ?? "", from: from ?? "", to: to ?? "" },
    before: String(last?.seq ?? 0),
  });
  return (
    <>
      <PageHead {...pageOf("record")} />
      <p>
        {verdict === null || verdict.kind === "intact"
          ? `The record holds ${verdict?.entries ?? 0} entries, and every one of them is as it was written. Its last hash is `
          : `The record does not hold: ${explainRecordFault(verdict.fault)}`}
        {verdict?.kind === "intact" ? <code className={styles.hash}>{verdict.head}</code> : null}
        {verdict?.kind === "intact"
          ? ". Write it into the minutes: a record that is verified and holds this hash was not changed up to here."
          : null}
      </p>
      {verdict?.kind === "intact" && verdict.setBack.length > 0 ? <p>{explainSetBack(verdict.setBack)}</p> : null}
      <p className="screen-only">
        <a href={`/project/${id}/record/export`} className="button" download>
          Save the record as a file
        </a>
      </p>
      <p className="soft screen-only">
        The file has one entry a line. Anybody can verify it with the command that the README names, or with a script of
        their own; DEVELOPERS.md describes the format. What is sealed is unreadable in it as well.
      </p>
      <h2 id="history">History</h2>
      <form className={`${styles.filters} screen-only`} aria-label="Filter the history">
        <label>
          Who
          <select name="who" defaultValue={who}>
            <option value="">Everybody</option>
            {people.map((name) => (
              <option key={name} value={name}>
                {nameOf(name)}
              </option>
            ))}
          </select>
        </label>
        <label>
          What
          <select name="what" defaultValue={kind ?? ""}>
            <option value="">Everything</option>
            {Object.entries(kindLabels).map(([value, label]) => (
              <option key={value} value={value}>
                {label}
              </option>
            ))}
          </select>
        </label>
        <label>
          From
          <input type="date" name="from" defaultValue={from} />
        </label>
        <label>
          Up to
          <input type="date" name="to" defaultValue={to} />
        </label>
        <button type="submit">Show these</button>
      </form>
      {entries.length === 0 ? <p>No entry fits.</p> : null}
      {names === "hidden" ? (
        <p className="soft">Bidders’ names are hidden, so what changed in texts that may name one is not shown.</p>
      ) : null}
      <ol className={styles.entries}>
        {entries.map((entry) => (
          <Entry key={entry.seq} told={toldEntry(entry, names)} />
        ))}
      </ol>
      {more ? (
        <p className="screen-only">
          <Link href={`/project/${id}/record?${older}`} prefetch={false}>
            Older entries
          </Link>
        </p>
      ) : null}
    </>
  );
}

const moment = new Intl.DateTimeFormat("en-US", { dateStyle: "medium", timeStyle: "medium", timeZone: "UTC" });

const markWords = { refused: "refused", amendment: "amendment", stage: "stage", sealed: "sealed" } as const;

function Entry({ told: { seq, at, who, mark, sentence, changes, more } }: { told: ToldEntry }) {
  return (
    <li id={`entry-${seq}`} className={mark === "refused" ? styles.refused : undefined}>
      <p className={styles.when}>
        {seq} · <time dateTime={at}>{moment.format(new Date(at))} UTC</time> · {nameOf(who)}
      </p>
      <p className={styles.sentence}>
        {mark === null ? null : <span className={styles.mark}>{markWords[mark]}</span>} {sentence}
      </p>
      {changes.length === 0 ? null : (
        <details>
          <summary>
            {changes.length + more === 1 ? "1 entry" : `${changes.length + more} entries`} changed
            <span className="visually-hidden"> in number {seq}</span>
          </summary>
          <ul>
            {changes.map(({ field, from, to }) => (
              <li key={field}>
                {field}: <del>{from}</del> → <ins>{to}</ins>
              </li>
            ))}
            {more === 0 ? null : <li>and {more} more</li>}
          </ul>
        </details>
      )}
    </li>
  );
}
