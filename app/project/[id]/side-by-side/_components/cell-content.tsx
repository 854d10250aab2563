import Link from "next/link";
import { Status } from "../../../../_components/status";
import { ShowWorking } from "../../../../_components/working";
import type { Cell, Mark, Statement } from "../_comparison/model";
import styles from "./cell-content.module.css";

type Place = Readonly<{ project: string; of: string; cell: Cell }>;

/** All that stands in a cell, readable without script: what is shown, and what lies behind it in native details. */
export function CellContent({ project, of, cell }: Place) {
  const { bid, text, status, working, statements, lines, marks } = cell;
  return (
    <div className={styles.cell}>
      {status === null ? null : <Status word={status} />}
      {statements.length === 0 ? <CellText text={text} isBare={status === null && marks.length === 0} /> : null}
      {working === null ? null : <ShowWorking project={project} of={of} working={working} />}
      {statements.map((statement) => (
        <StatementText
          key={statement.id}
          of={of}
          address={`/project/${project}/bids/${bid}#${statement.id}`}
          statement={statement}
        />
      ))}
      {lines.length === 0 ? null : <Why of={of} lines={lines} />}
      {marks.map((mark) => (
        <FindingMark key={mark.title} mark={mark} />
      ))}
    </div>
  );
}

function CellText({ text, isBare }: { text: string; isBare: boolean }) {
  if (text !== "") return <span className={styles.value}>{text}</span>;
  return isBare ? (
    <span className={styles.nothing}>
      <span aria-hidden="true">–</span>
      <span className="visually-hidden">nothing here</span>
    </span>
  ) : null;
}

function StatementText({ of, address, statement }: { of: string; address: string; statement: Statement }) {
  const { text, qualifier, evidence, facts, marks } = statement;
  return (
    <div className={styles.statement}>
      <span className={styles.value}>{text}</span>
      {qualifier === "" ? null : <span className={styles.qualifier}> {qualifier}</span>}
      <details className={styles.behind}>
        <summary>
          {evidence}
          <span className="visually-hidden">
            : what stands behind {of}, {text}
          </span>
        </summary>
        <dl className={styles.facts}>
          {facts.map((fact) => (
            <div key={fact.label}>
              <dt>{fact.label}</dt>
              <dd>{fact.text}</dd>
            </div>
          ))}
        </dl>
        <p className="screen-only">
          <Link href={address} prefetch={false}>
            where entered
            <span className="visually-hidden">
              : {of}, {text}
            </span>
          </Link>
        </p>
      </details>
      {marks.map((mark) => (
        <FindingMark key={mark.title} mark={mark} />
      ))}
    </div>
  );
}

function Why({ of, lines }: { of: string; lines: readonly string[] }) {
  return (
    <details className={styles.behind}>
      <summary>
        Why<span className="visually-hidden">: {of}</span>
      </summary>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </details>
  );
}

function FindingMark({ mark: { severity, title, sentence, question } }: { mark: Mark }) {
  return (
    <details className={styles.mark} data-severity={severity}>
      <summary>
        <svg viewBox="0 0 16 16" width="14" height="14" aria-hidden="true">
          <path d="M3.5 15V1.5h9L10 5l2.5 3.5h-9" fill="none" stroke="currentColor" strokeWidth="1.5" />
        </svg>{" "}
        {severity}: {title}
      </summary>
      <p>{sentence}</p>
      <p>Ask: {question}</p>
    </details>
  );
}
