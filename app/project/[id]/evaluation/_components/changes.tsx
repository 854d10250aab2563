import Link from "next/link";
import { type BidOpenings, formatPoints } from "#lib/evaluation";
import { BidLetter } from "../../../../_components/bid-letter";
import styles from "./changes.module.css";

const worthInWords = ({ worth, atGate }: BidOpenings["open"][number]): string => {
  const points = worth > 0 ? [`worth up to ${formatPoints(worth)} points`] : [];
  return [...(atGate === "decides a gate" ? ["decides a gate"] : []), ...points].join(", ");
};

type Open = BidOpenings["open"];

const first = (open: Open): Open => open.filter(({ when }) => when === "before deciding");
const later = (open: Open): Open => open.filter(({ when }) => when === "any time");

function Questions({ project, head, open }: { project: string; head: string; open: Open }) {
  if (open.length === 0) return null;
  return (
    <>
      <p>{head}</p>
      <ul>
        {open.map((figure) => (
          <li key={figure.criterion.id}>
            {figure.question}{" "}
            <span className="soft">
              <Link href={`/project/${project}/requirements#${figure.criterion.id}`} prefetch={false}>
                {figure.criterion.label}
              </Link>
              {worthInWords(figure) === "" ? "" : `, ${worthInWords(figure)}`}.
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

/** For each bid what its open figures can still do to the order, and what to ask. */
export function Changes({
  project,
  openings,
  indexOf,
}: {
  project: string;
  openings: readonly BidOpenings[];
  indexOf: (bid: string) => number;
}) {
  return openings.map(({ bid, letter, sentence, open, inRanges }) => (
    <section key={bid} className={styles.bid} aria-labelledby={`changes-${bid}`}>
      <h3 id={`changes-${bid}`}>
        <span className="visually-hidden">Bid </span>
        <BidLetter letter={letter} index={indexOf(bid)} />
      </h3>
      <div>
        <p>{sentence}</p>
        {open.length === 0 ? (
          <p>Every figure that counts is shown with the evidence asked for.</p>
        ) : (
          <>
            <Questions project={project} head="Ask before deciding anything:" open={first(open)} />
            <Questions project={project} head={first(open).length === 0 ? "Ask:" : "Ask as well:"} open={later(open)} />
          </>
        )}
        {inRanges > 0 ? (
          <p className="soft">
            {open.length === 0 ? "" : "Another "}
            {formatPoints(inRanges)} points lie in the ranges of figures that do count.
          </p>
        ) : null}
      </div>
    </section>
  ));
}
