import type { SealReply } from "../actions";
import styles from "./sealed.module.css";

/** What became of prices that were sent: how many lines were sealed, or what is in the way. */
export function SealOutcome({ reply }: { reply: SealReply }) {
  if (reply.kind === "not-sealed")
    return (
      <div role="alert" className={styles.problem}>
        <p>Nothing was sealed:</p>
        <ul>
          {reply.problems.map(({ field, message }) => (
            <li key={`${field} ${message}`}>{message}</li>
          ))}
        </ul>
      </div>
    );
  return (
    <p role="status">
      {reply.kind === "sealed" ? `Sealed: ${reply.lines} price line${reply.lines === 1 ? "" : "s"}.` : ""}
    </p>
  );
}
