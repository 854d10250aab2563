"use client";
import { useDeferredValue, useMemo, useState } from "react";
import type { UnitSystem } from "#lib/quantity";
import { explainTrace, suggestedMapping, traceFormat } from "#lib/trace";
import styles from "../../_components/ask-form.module.css";
import { startingChoice, type TraceChoice } from "../../_tests/trace-choice";
import { type TraceSettings, traceReading, usualSettings } from "../../_tests/trace-reading";
import { ColumnFields } from "./column-fields";
import { SettingFields } from "./setting-fields";
import { TraceFigures } from "./trace-figures";

type Source = Readonly<{ name: string; text: string }>;

/** Reads an acceleration–time file here in the browser. Nothing of it is sent. */
export function TraceReader({ project, units }: { project: string; units: UnitSystem }) {
  const [source, setSource] = useState<Source>({ name: "", text: "" });
  const [trouble, setTrouble] = useState("");
  const format = useMemo(() => (source.text.trim() === "" ? null : traceFormat(source.text)), [source.text]);
  // what was said of the columns holds for the file it was said of
  const [chosen, setChosen] = useState<Readonly<{ text: string; choice: TraceChoice }> | null>(null);
  const [settings, setSettings] = useState<TraceSettings>(usualSettings);
  const choice =
    chosen !== null && chosen.text === source.text
      ? chosen.choice
      : format?.ok
        ? startingChoice(suggestedMapping(format.value), format.value)
        : null;
  const asked = useDeferredValue(choice === null ? null : JSON.stringify({ choice, settings }));
  const reading = useMemo(() => {
    if (asked === null || source.text === "") return null;
    const { choice: columns, settings: how } = JSON.parse(asked);
    return traceReading(source.text, columns, how);
  }, [asked, source.text]);
  const open = async (file: File | undefined) => {
    if (file === undefined) return;
    try {
      setSource({ name: file.name, text: await file.text() });
      setTrouble("");
    } catch {
      setTrouble(`“${file.name}” could not be read by the browser. Choose it again.`);
    }
  };
  return (
    <>
      <div className={`${styles.form} screen-only`}>
        <div className={styles.field}>
          <label htmlFor="trace-file">Acceleration–time file</label>
          <input
            id="trace-file"
            type="file"
            accept=".csv,.txt,.tsv,.dat,.asc,text/plain,text/csv"
            onChange={({ target }) => void open(target.files?.[0])}
          />
        </div>
        <div className={`${styles.field} ${styles.wide}`}>
          <label htmlFor="trace-text">or its text, pasted</label>
          <textarea
            id="trace-text"
            rows={6}
            spellCheck={false}
            value={source.text.length > mostShown ? "" : source.text}
            placeholder={source.text.length > mostShown ? `${source.name}: too long to be shown here` : undefined}
            onChange={({ target }) => setSource({ name: "Pasted text", text: target.value })}
          />
        </div>
      </div>
      {trouble === "" ? null : (
        <p role="alert" className={styles.problem}>
          {trouble}
        </p>
      )}
      {format !== null && !format.ok ? (
        <p role="alert" className={styles.problem}>
          {explainTrace(format.problem)}
        </p>
      ) : null}
      {format?.ok && choice !== null ? (
        <>
          <ColumnFields
            format={format.value}
            choice={choice}
            choose={(next) => setChosen({ text: source.text, choice: next })}
          />
          <SettingFields settings={settings} change={setSettings} units={units} />
        </>
      ) : null}
      {reading === null ? null : reading.ok ? (
        <TraceFigures project={project} results={reading.value} units={units} />
      ) : (
        <div role="alert" className={styles.problem}>
          {reading.problem.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
      )}
    </>
  );
}

/** Characters beyond which a text field would slow the browser down. */
const mostShown = 200_000;
