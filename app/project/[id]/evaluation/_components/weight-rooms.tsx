import { scaleLinear } from "d3-scale";
import Link from "next/link";
import type { WeightRoom } from "#lib/criteria";
import { formatShare } from "#lib/evaluation";
import { Scroller } from "../../../../_components/scroller";
import styles from "./weight-rooms.module.css";

const x = scaleLinear([0, 1], [6, 194]);

/** How far one weight may move, with a mark at where it stands. The numbers stand beside it. */
function Strip({ share, low, high }: WeightRoom) {
  return (
    <svg viewBox="0 0 200 22" width="200" height="22" aria-hidden="true" className={styles.strip}>
      <path className={styles.track} d={`M${x(0)} 11H${x(1)}M${x(0)} 6v10M${x(1)} 6v10`} />
      <rect className={styles.room} x={x(low)} y="7" width={Math.max(x(high) - x(low), 1)} height="8" />
      <path className={styles.now} d={`M${x(share)} 2v18`} />
    </svg>
  );
}

/** For each weight the room it has before another bid leads. */
export function WeightRooms({ project, rooms }: { project: string; rooms: readonly WeightRoom[] }) {
  return (
    <Scroller label="Room of each weight, table">
      <table className={styles.rooms}>
        <caption>How far each weight can move before another bid leads</caption>
        <thead>
          <tr>
            <th scope="col">Criterion</th>
            <th scope="col" className="number">
              Share now
            </th>
            <th scope="col" className="number">
              From
            </th>
            <th scope="col" className="number">
              To
            </th>
            <th scope="col">0 % to 100 % of all weights</th>
          </tr>
        </thead>
        <tbody>
          {rooms.map((room) => (
            <tr key={room.criterion.id}>
              <th scope="row">
                <Link href={`/project/${project}/requirements#${room.criterion.id}`} prefetch={false}>
                  {room.criterion.label}
                </Link>
              </th>
              <td className="number">{formatShare(room.share)}</td>
              <td className="number">{formatShare(room.low)}</td>
              <td className="number">{formatShare(room.high)}</td>
              <td>
                <Strip {...room} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
