import Link from "next/link";
import type { Origin, OwnersAlternative, Working } from "#lib/figure";
import styles from "./working.module.css";

// a type and no value of the room, so that pages with workings in the browser do not load it
const ownersAlternative: OwnersAlternative = "base-alternative";

/** The page and place where an input of a working was entered; null where there is nothing to open. */
export function originAddress(project: string, from: Origin): string | null {
  const base = `/project/${project}`;
  switch (from.kind) {
    case "brief":
      return `${base}/brief#${from.field}`;
    case "requirements":
      return `${base}/requirements#${from.field}`;
    case "claim":
      return `${base}/bids/${from.bid}#${from.claim}`;
    case "infill-component":
      return `${base}/bids/${from.bid}#${from.component}`;
    case "price-line":
      return from.bid === ownersAlternative
        ? `${base}/cost/owners-figures#alternative-${from.line}`
        : `${base}/bids/${from.bid}#${from.line}`;
    case "material":
      return `${base}/brief#materials`;
    case "costing":
      return `${base}${costingPlace(from.field)}`;
    case "committee":
      return `${base}/committee`;
    case "figure":
    case "constant":
    case "given-here":
      return null;
  }
}

/** Levelling has a page of its own; the rest of the owner’s side of the money shares one. */
function costingPlace(field: string): string {
  const [part, , item] = field.split(".");
  return part === "levelling" ? `/levelling#item-${item ?? ""}` : `/cost/owners-figures#${field}`;
}

/** Lets a reader redo a figure by hand: formula, what went in, what was assumed, and where the rule comes from. */
export function ShowWorking({ project, of, working }: { project: string; of: string; working: Working }) {
  return (
    <details className={styles.working}>
      <summary>
        Show working<span className="visually-hidden"> of {of}</span>
      </summary>
      <WorkingText project={project} working={working} />
    </details>
  );
}

/** The working itself, for places that open it in a way of their own. */
export function WorkingText({ project, working }: { project: string; working: Working }) {
  return (
    <div className={styles.body}>
      <p className={styles.formula}>{working.formula}</p>
      {working.inputs.length === 0 ? null : (
        <dl className={styles.inputs}>
          {working.inputs.map(({ label, text, from }) => {
            const address = originAddress(project, from);
            return (
              <div key={`${label} ${text}`}>
                <dt>{label}</dt>
                <dd>
                  {text}
                  {address === null ? null : (
                    <>
                      {" "}
                      <Link href={address} className="screen-only" prefetch={false}>
                        where entered<span className="visually-hidden">: {label}</span>
                      </Link>
                    </>
                  )}
                </dd>
              </div>
            );
          })}
        </dl>
      )}
      {working.assumptions.length === 0 ? null : (
        <ul>
          {working.assumptions.map((assumption) => (
            <li key={assumption}>{assumption}</li>
          ))}
        </ul>
      )}
      <p className="soft">Source: {working.source}</p>
    </div>
  );
}
