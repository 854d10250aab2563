import { propertyOf } from "#lib/claim";
import { claimDetails, claimedInWords, type SubstitutionEffects, silentSentence } from "#lib/evaluation";
import { limitInWords } from "#lib/requirement";
import { Scroller } from "../../../../../../_components/scroller";
import { Status } from "../../../../../../_components/status";
import { AgainstBidWord } from "../../../_components/against-bid";
import { specificationWord } from "../../../_register/outcome-words";
import styles from "./effects-section.module.css";

/** Side by side on every characteristic, and what the substitution moves in the evaluation. */
export function EffectsSection({ effects }: { effects: SubstitutionEffects }) {
  const { bid, rows } = effects;
  const silent = silentSentence(effects);
  return (
    <>
      <section aria-labelledby="side-by-side">
        <h2 id="side-by-side">Side by side</h2>
        {silent === "" ? null : <p>{silent}</p>}
        {rows.length === 0 ? (
          <p>The request claims nothing yet.</p>
        ) : (
          <Scroller label="Substitute beside bid">
            <table className={styles.beside}>
              <caption className="visually-hidden">Substitute beside bid {bid.letter}</caption>
              <thead>
                <tr>
                  <th scope="col">Characteristic</th>
                  <th scope="col">Against the specification</th>
                  <th scope="col">Against the bid</th>
                  <th scope="col">Specified</th>
                  <th scope="col">Bid {bid.letter}</th>
                  <th scope="col">Substitute</th>
                </tr>
              </thead>
              <tbody>
                {rows.map(({ key, requirement, submitted, bid: promised, review }) => {
                  const word = specificationWord(review.specification);
                  const limit = requirement?.limit ?? null;
                  return (
                    <tr key={key}>
                      <th scope="row">
                        {requirement?.label ?? (submitted === null ? "" : propertyOf(submitted.property).label)}
                      </th>
                      <td>{word === null ? "no limit" : <Status word={word} />}</td>
                      <td>
                        <AgainstBidWord of={review.bid.kind} />
                      </td>
                      <td>{limit === null ? "no limit" : limitInWords(limit)}</td>
                      <td>{promised === null ? "–" : `${claimedInWords(promised)}, ${claimDetails(promised)}`}</td>
                      <td>{submitted === null ? "–" : `${claimedInWords(submitted)}, ${claimDetails(submitted)}`}</td>
                    </tr>
                  );
                })}
              </tbody>
            </table>
          </Scroller>
        )}
      </section>
      <section aria-labelledby="effects">
        <h2 id="effects">What it would change</h2>
        <p>
          The same evaluation is made of a copy of the project in which bid {bid.letter} holds the substitute. The bid
          itself stays as it is.
        </p>
        <Scroller label="Effect of the substitution">
          <table className={styles.effects}>
            <caption className="visually-hidden">Effect of the substitution</caption>
            <thead>
              <tr>
                <th scope="col">Figure</th>
                <th scope="col">As bid</th>
                <th scope="col">With the substitute</th>
              </tr>
            </thead>
            <tbody>
              {effects.effects.map(({ what, asBid, substituted, isSame }) => (
                <tr key={what}>
                  <th scope="row">{what}</th>
                  <td>{asBid}</td>
                  <td>{isSame ? <span className="soft">the same</span> : <strong>{substituted}</strong>}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      </section>
    </>
  );
}
