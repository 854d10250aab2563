import { databaseKillTrial } from "./database-kill-trial";
import { share } from "./places";

databaseKillTrial(share(70));
