import { killTrial } from "./kill-trial";
import { share } from "./places";

killTrial({
  sqliteWriting: share(260),
  sqliteTwoWriting: share(160),
  sqliteOpening: share(150),
  sqliteClockShifted: share(50),
  postgresWriting: share(140),
  postgresTwoWriting: share(110),
  postgresOpening: share(40),
});
