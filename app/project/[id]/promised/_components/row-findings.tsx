import { propertyOf } from "#lib/claim";
import { methodsInWords, type ToldRow } from "#lib/document";
import styles from "./row-findings.module.css";

const nameOf = ({ row }: ToldRow): string => {
  const methods = methodsInWords(row);
  return methods === "" ? propertyOf(row.property).label : `${propertyOf(row.property).label}, ${methods}`;
};

/** Deviations in words, then what nobody has shown yet. */
export function FindingsSection({ told }: { told: readonly ToldRow[] }) {
  const deviating = told.filter(({ findings }) => findings.deviations.length > 0);
  const noted = told.filter(({ findings }) => findings.notes.length > 0);
  const gaps = told.filter(({ findings }) => findings.gaps.length > 0);
  return (
    <>
      <section aria-labelledby="deviations">
        <h2 id="deviations">Deviations</h2>
        {deviating.length === 0 ? (
          <p>No figure that was entered falls short of what was specified, promised or guaranteed.</p>
        ) : (
          <Told told={deviating} sentences={({ findings }) => findings.deviations} />
        )}
      </section>
      {noted.length === 0 ? null : (
        <section aria-labelledby="worth-knowing">
          <h2 id="worth-knowing">Worth knowing</h2>
          <Told told={noted} sentences={({ findings }) => findings.notes} />
        </section>
      )}
      {gaps.length === 0 ? null : (
        <section aria-labelledby="gaps">
          <h2 id="gaps">Not shown yet</h2>
          <Told told={gaps} sentences={({ findings }) => findings.gaps} />
        </section>
      )}
    </>
  );
}

function Told({ told, sentences }: { told: readonly ToldRow[]; sentences: (row: ToldRow) => readonly string[] }) {
  return (
    <dl className={styles.findings}>
      {told.map((each) => (
        <div key={nameOf(each)}>
          <dt>{nameOf(each)}</dt>
          {sentences(each).map((sentence) => (
            <dd key={sentence}>{sentence}</dd>
          ))}
        </div>
      ))}
    </dl>
  );
}
