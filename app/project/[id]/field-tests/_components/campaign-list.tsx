import Link from "next/link";
import { formatFigure } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import { BidLetter } from "../../../../_components/bid-letter";
import { dateInWords, kindWords } from "../_tests/campaign-words";
import type { ReadCampaign } from "../_tests/read-campaigns";
import { removeCampaign } from "../actions";
import styles from "./campaign-list.module.css";
import { Verdict } from "./verdict";

export type ListedCampaign = ReadCampaign &
  Readonly<{ version: number; drafted: boolean; bid: Readonly<{ letter: string; index: number }> | null }>;

/** The rounds of tests so far, the oldest first, each with its verdict. */
export function CampaignList({
  project,
  campaigns,
  units,
}: {
  project: string;
  campaigns: readonly ListedCampaign[];
  units: UnitSystem;
}) {
  return (
    <ol className={styles.campaigns}>
      {campaigns.map(({ reduced, notComparable, version, drafted, bid }) => {
        const { id, kind, date, laboratory } = reduced.campaign;
        const name = `${kindWords[kind]}, ${dateInWords(date)}`;
        return (
          <li key={id} id={id}>
            <h3>
              <Link href={`/project/${project}/field-tests/${id}`}>{name}</Link>
            </h3>
            <p>
              <Verdict of={notComparable === null ? reduced.verdict : "not-comparable"} />
            </p>
            {reduced.mean.kind === "unknown" ? null : (
              <p>
                Mean {formatFigure(reduced.mean, units)}, worst of {reduced.locations.length} locations{" "}
                {formatFigure(reduced.worst, units)}.
              </p>
            )}
            {notComparable === null ? null : <p>{notComparable}</p>}
            <p className="soft">
              {bid === null ? (
                "The bid that was installed is not named."
              ) : (
                <>
                  Installed: bid <BidLetter letter={bid.letter} index={bid.index} />
                </>
              )}
              {laboratory === "" ? null : ` Tested by ${laboratory}.`}
            </p>
            {drafted ? (
              <p className={styles.draft}>
                A draft of this campaign holds entries that can’t be read yet and don’t count.
              </p>
            ) : null}
            <div className="row screen-only">
              <Link href={`/project/${project}/field-tests/${id}/on-the-field`}>
                Enter on the field<span className="visually-hidden">: {name}</span>
              </Link>
              <form action={removeCampaign}>
                <input type="hidden" name="project" value={project} />
                <input type="hidden" name="campaign" value={id} />
                <input type="hidden" name="version" value={version} />
                <button type="submit" className="plain">
                  Remove<span className="visually-hidden"> {name}</span>
                </button>
              </form>
            </div>
          </li>
        );
      })}
    </ol>
  );
}
