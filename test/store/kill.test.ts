import { killTrial } from "../faults/kill-trial";

// The short variant of test/faults/kill.test.ts.
killTrial({ sqliteWriting: 5, sqliteOpening: 3, postgresWriting: 2 });
