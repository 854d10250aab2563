import type { ImpactRequirement } from "#lib/impact";
import type { UnitSystem } from "#lib/quantity";
import { BidLetter } from "../../../../_components/bid-letter";
import { OutlookChart, smallChart } from "./outlook-chart";
import type { LevelDomain, OutlookLine } from "./outlook-line";
import { premiseWords } from "./premises";
import styles from "./small-multiples.module.css";

/** The same drawing once for each bid, all to one scale, where there is room for it. */
export function SmallMultiples({
  lines,
  requirement,
  domain,
  units,
}: {
  lines: readonly OutlookLine[];
  requirement: ImpactRequirement;
  domain: LevelDomain;
  units: UnitSystem;
}) {
  if (lines.length < 2) return null;
  return (
    <section className={styles.multiples} aria-label="Each bid by itself, to the same scale">
      {lines.map((line) => (
        <figure key={line.letter}>
          <figcaption>
            <BidLetter letter={line.letter} index={line.index} /> {premiseWords[line.outlook.premise]}
          </figcaption>
          <OutlookChart
            id={`plot-${line.letter}`}
            label={`Impact level of bid ${line.letter} by year, as listed in the table above`}
            lines={[line]}
            requirement={requirement}
            domain={domain}
            size={smallChart}
            units={units}
          />
        </figure>
      ))}
    </section>
  );
}
