import Link from "next/link";
import type { Recommendation } from "#lib/document";
import { Scroller } from "../../../../_components/scroller";
import styles from "../page.module.css";

/** The figures of all bids on the criteria of most weight, and the ways to every other figure. */
export function DecidingTable({
  project,
  text,
  plate,
}: {
  project: string;
  text: Recommendation;
  plate: (letter: string) => React.ReactNode;
}) {
  return (
    <>
      <Scroller label="The figures that weigh most">
        <table className={styles.deciding}>
          <thead>
            <tr>
              <th scope="col">What counts, and why</th>
              {text.bids.map(({ letter }) => (
                <th key={letter} scope="col">
                  <span className="visually-hidden">Bid </span>
                  {plate(letter)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {text.deciding.map(({ label, reason, bids }) => (
              <tr key={label}>
                <th scope="row">
                  {label}
                  <span className={styles.reason}>{reason}</span>
                </th>
                {bids.map(({ letter, text: figure }) => (
                  <td key={letter}>{figure}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroller>
      <p className="soft screen-only">
        Every figure with its working: <Link href={`/project/${project}/side-by-side`}>Side by side</Link>,{" "}
        <Link href={`/project/${project}/evaluation`}>Evaluation</Link>.
      </p>
    </>
  );
}
