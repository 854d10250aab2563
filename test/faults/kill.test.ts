import { killTrial } from "./kill-trial";

const rounds = Number(process.env.ROUNDS ?? 50);

killTrial({ sqliteWriting: rounds, sqliteOpening: Math.ceil(rounds / 2), postgresWriting: Math.ceil(rounds / 4) });
